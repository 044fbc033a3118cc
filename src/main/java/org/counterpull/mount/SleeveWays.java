package org.counterpull.mount;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.counterpull.arc.WeldingProcess;

/** The ways that weld the lug to a sleeve. */
final class SleeveWays {
  private static final double USUAL_CURRENT_A = 130;

  private final MountBench bench;
  private final MountCase mount;
  private final SleeveSizing sizing;
  private final Optional<SleeveSizing.Sized> loose;
  private final Optional<SleeveSizing.Sized> ringed;

  SleeveWays(MountBench bench, Optional<GivenSleeve> given) {
    this.bench = bench;
    this.mount = bench.mount();
    this.sizing = new SleeveSizing(bench, given);
    this.loose = sizing.around();
    this.ringed = sizing.toRing();
  }

  /** The heat of welding the lug on a sleeve in place. */
  Optional<HeatSetup> looseSetup() {
    return loose.map(
        s ->
            new HeatSetup(
                sizing.onSleeve(s.sleeve()),
                false,
                false,
                mount.inside(),
                Optional.of(s.sleeve()),
                true));
  }

  /** The heat of the ring that ends a sleeve. */
  Optional<HeatSetup> ringSetup() {
    return ringed.map(
        s ->
            new HeatSetup(
                List.of(ring(s)), false, false, mount.inside(), Optional.of(s.sleeve()), false));
  }

  private Seam ring(SleeveSizing.Sized s) {
    double leg = ShopValue.of("ring weld leg");
    List<WeldPass> passes = LegHeat.of(WeldingProcess.MAG, leg, USUAL_CURRENT_A).passes();
    return Seams.round("ring", s.sleeve().ringZMm().orElseThrow(), passes);
  }

  WayAnswer loose(Optional<HeatFigures> heat) {
    if (loose.isEmpty()) {
      return none(
          Way.SLEEVE,
          "no sleeve between the tube's ends carries the load without pressing the bore");
    }
    SleeveSizing.Sized s = loose.get();
    List<String> deciding = new ArrayList<>();
    Outcome outcome = heat.map(h -> bench.byHeat(h, false, deciding)).orElse(Outcome.FITS);
    heat.ifPresent(
        h ->
            deciding.add(
                String.format(
                    Locale.ROOT,
                    "with the lug welded in place the bore reaches %.0f C; welded before the sleeve"
                        + " goes on, nothing",
                    h.borePeakC())));
    grip(s, deciding);
    List<String> parts = new ArrayList<>();
    parts.add(SleeveSizing.words(s.sleeve(), mount.tube()));
    parts.add(
        "4 cone-point screws M8 on a brass pad, two at either end, or bonding: they hold the place, no load");
    List<String> after = new ArrayList<>();
    if (mount.forceN().isPresent()) {
      deciding.add(
          String.format(
              Locale.ROOT,
              "%s along the tube must go through a shoulder or the pins: screws and glue carry none",
              MountStrength.kN(mount.forceN().get())));
      parts.add("a shoulder for the sleeve's end to stand against, outside the swept bore");
      outcome = outcome.and(Outcome.FITS_IF);
      deciding.add(
          String.format(
              Locale.ROOT,
              "the sleeve's ends press with %.1f MPa and the bore by %.3f mm",
              s.bearingMPa(),
              s.squeezeMm()));
    }
    after.add("vent: leave both ends of the sleeve open, or drill 4 mm");
    if (s.squeezeMm() > sizing.allowedMm()) {
      deciding.add(
          String.format(
              Locale.ROOT,
              "that is more than the %.3f mm that the bore bears: a longer sleeve",
              sizing.allowedMm()));
      outcome = Outcome.DONT;
    }
    outcome = outcome.and(MountBench.byStrength(s.uses(), deciding)).and(Outcome.FITS_IF);
    return new WayAnswer(
        Way.SLEEVE,
        outcome,
        heat,
        bench.still(),
        s.uses(),
        parts,
        Optional.of(s.sleeve()),
        heat.map(HeatFigures::passes).orElse(0),
        heat.map(h -> h.weldedS() / 60).orElse(0.0) + ShopValue.of("minutes sleeve"),
        before(s),
        after,
        deciding);
  }

  private List<String> before(SleeveSizing.Sized s) {
    List<String> before = new ArrayList<>();
    before.add("weld the lug to the sleeve off the tube and let it cool");
    if (s.mayGrip()) {
      before.add(
          String.format(
              Locale.ROOT,
              "then ream or bore the sleeve to %.1f mm",
              s.sleeve().boreMm(mount.tube())));
    }
    before.add("slide it on cold");
    return before;
  }

  private void grip(SleeveSizing.Sized s, List<String> deciding) {
    deciding.add(
        String.format(
            Locale.ROOT,
            "the lug draws the sleeve's bore in by %.2f mm (%.2f to %.2f) on diameter, the gap is %.2f mm%s",
            s.inwardMm().value(),
            s.inwardMm().low(),
            s.inwardMm().high(),
            2 * s.sleeve().gapMm(),
            s.grips() ? ": it grips unless it is reamed" : s.mayGrip() ? ": it may grip" : ""));
  }

  WayAnswer ringed(Optional<HeatFigures> heat) {
    double keep = mount.tube().fadingMm();
    if (ringed.isEmpty()) {
      return none(
          Way.SLEEVE_RING,
          String.format(
              Locale.ROOT,
              "no place for a ring weld: it must keep %.0f mm (2.5 sqrt(R t)) from gland, swept bore and"
                  + " tube end",
              keep));
    }
    SleeveSizing.Sized s = ringed.get();
    List<String> deciding = new ArrayList<>();
    Seam ring = ring(s);
    List<BoreFigure> bores =
        mount.sized().stream()
            .map(
                b ->
                    BoreFigure.of(
                        b,
                        mount.tube(),
                        new WeldPull(mount.tube(), asRing(s)).ring(ring, b.fromZMm(), b.toZMm())))
            .toList();
    Outcome outcome = heat.map(h -> bench.byHeat(h, false, deciding)).orElse(Outcome.FITS);
    heat.ifPresent(
        h ->
            deciding.add(
                String.format(
                    Locale.ROOT,
                    "the bore reaches %.0f C under the ring, where nothing slides",
                    h.borePeakC())));
    outcome = outcome.and(MountBench.byBores(mount.tube(), bores, deciding));
    grip(s, deciding);
    List<StrengthUse> uses = new ArrayList<>(s.uses());
    if (mount.forceN().isPresent()) {
      uses.add(bench.strength().ring(ShopValue.of("ring weld leg")));
    }
    outcome = outcome.and(MountBench.byStrength(uses, deciding)).and(Outcome.FITS_IF);
    List<String> before = new ArrayList<>(before(s));
    before.add("oil, piston and seals out before the ring is welded");
    return new WayAnswer(
        Way.SLEEVE_RING,
        outcome,
        heat,
        bores,
        uses,
        List.of(
            SleeveSizing.words(s.sleeve(), mount.tube()),
            String.format(
                Locale.ROOT,
                "one fillet of leg %s mm round the tube, %.0f mm from the lug's middle; the other end"
                    + " stays free",
                MountStrength.trim(ShopValue.of("ring weld leg")),
                Math.abs(s.sleeve().ringZMm().orElseThrow()))),
        Optional.of(s.sleeve()),
        heat.map(HeatFigures::passes).orElse(0) + mount.seams().size(),
        heat.map(h -> h.weldedS() / 60).orElse(0.0) + ShopValue.of("minutes sleeve"),
        before,
        List.of(
            String.format(
                Locale.ROOT,
                "when cold, gauge the bore under the ring and %.0f mm towards the swept bore",
                keep)),
        deciding);
  }

  private Partner asRing(SleeveSizing.Sized s) {
    Partner p = mount.partner();
    return new Partner(
        "sleeve", Partner.Kind.RING, 1, s.sleeve().wallMm(), 0, p.tensileMPa(), p.betaW());
  }

  private WayAnswer none(Way way, String why) {
    return new WayAnswer(
        way,
        Outcome.DONT,
        Optional.empty(),
        List.of(),
        List.of(),
        List.of(),
        Optional.empty(),
        0,
        0,
        List.of(),
        List.of(),
        List.of(why));
  }
}
