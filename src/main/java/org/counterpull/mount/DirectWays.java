package org.counterpull.mount;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The ways that weld straight onto the tube. */
final class DirectWays {
  private final MountBench bench;
  private final MountCase mount;

  DirectWays(MountBench bench) {
    this.bench = bench;
    this.mount = bench.mount();
  }

  WayAnswer asDrawn(HeatFigures heat) {
    return answer(Way.AS_DRAWN, heat, mount.seams(), false, 0, List.of(), List.of());
  }

  WayAnswer smallPasses(HeatFigures heat) {
    return answer(
        Way.SMALL_PASSES,
        heat,
        smallSeams(),
        false,
        0,
        List.of(
            String.format(
                Locale.ROOT,
                "weld one run, wait until the tube beside it is at %.0f C, weld the run opposite",
                ShopValue.of("wait until"))),
        List.of());
  }

  WayAnswer stripped(HeatFigures heat) {
    List<String> before = new ArrayList<>();
    before.add("oil out, ports open, tube cleaned inside and out");
    for (Sensitive s : mount.near()) {
      if (s.removable()) {
        before.add(s.name() + " out");
      }
    }
    return answer(
        Way.STRIPPED,
        heat,
        mount.seams(),
        true,
        ShopValue.of("minutes strip"),
        before,
        List.of("put together with new seals, prove it with liquid at 1.5 times working pressure"));
  }

  WayAnswer heatSink(HeatFigures heat) {
    return answer(
        Way.HEAT_SINK,
        heat,
        mount.seams(),
        false,
        ShopValue.of("minutes chill"),
        List.of(
            String.format(
                Locale.ROOT,
                "copper or aluminium bar of %.1f mm, greased, in the bore under the weld and 20 mm"
                    + " beyond it",
                mount.tube().insideMm() - 0.1),
            "wet rag round the tube between weld and what is near, kept wet; none on the weld"),
        List.of("dry the tube at once"));
  }

  /** The seams in smaller passes: as many as keep a leg of 3 mm each. */
  List<Seam> smallSeams() {
    double least = ShopValue.of("smallest leg of a pass");
    int count = (int) Math.max(1, Math.floor(Math.pow(mount.legMm() / least, 2) + 1e-9));
    int shared = Math.min(3, count);
    return mount.seams().stream()
        .map(
            seam ->
                seam.with(
                    seam.passes().stream()
                        .flatMap(
                            p ->
                                java.util.Collections.nCopies(
                                    shared, p.shared(shared, mount.fastestMmPerS()))
                                    .stream())
                        .toList()))
        .toList();
  }

  private WayAnswer answer(
      Way way,
      HeatFigures heat,
      List<Seam> seams,
      boolean takenOut,
      double benchMin,
      List<String> before,
      List<String> after) {
    List<String> deciding = new ArrayList<>();
    List<BoreFigure> bores = bench.pulled(seams);
    Outcome outcome = bench.byHeat(heat, takenOut, deciding);
    outcome = outcome.and(MountBench.byBores(mount.tube(), bores, deciding));
    List<StrengthUse> uses = bench.strength().lugOn(mount.tube());
    outcome = outcome.and(MountBench.byStrength(uses, deciding));
    List<String> todo = new ArrayList<>(after);
    double scale = ShopValue.of("scale on bore");
    boolean matters =
        mount.sized().stream()
            .filter(s -> s.tolerance().isPresent())
            .anyMatch(s -> s.distanceMm(heat.borePeakZMm()) < mount.legMm());
    if (heat.borePeakC() > scale && matters) {
      deciding.add(
          String.format(
              Locale.ROOT,
              "the bore gets %.0f C under the weld: above %.0f C it scales",
              heat.borePeakC(),
              scale));
      outcome = outcome.and(Outcome.FITS_IF);
    }
    if (heat.borePeakC() > ShopValue.of("burns through")) {
      deciding.add(
          String.format(
              Locale.ROOT,
              "at %.0f C on the inside the wall is about to burn through: smaller passes or a smaller leg",
              heat.borePeakC()));
      outcome = Outcome.DONT;
    }
    if (takenOut && mount.near().stream().anyMatch(Sensitive::removable)) {
      outcome = outcome.and(Outcome.FITS_IF);
    }
    if (!before.isEmpty() && way != Way.STRIPPED) {
      outcome = outcome.and(Outcome.FITS_IF);
    }
    todo.add(gauge());
    return new WayAnswer(
        way,
        outcome,
        Optional.of(heat),
        bores,
        uses,
        List.of(),
        Optional.empty(),
        heat.passes(),
        heat.weldedS() / 60 + benchMin,
        before,
        mount.sized().isEmpty() ? after : todo,
        deciding);
  }

  private String gauge() {
    return String.format(
        Locale.ROOT,
        "when cold, gauge the bore at 0, 45, 90 and 135 degrees, at the weld and %.0f mm to either"
            + " side",
        mount.tube().fadingMm());
  }
}
