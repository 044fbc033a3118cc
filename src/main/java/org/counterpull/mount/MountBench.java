package org.counterpull.mount;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What all ways of one case share: its strength, its shell, how figures are judged. */
final class MountBench {
  private final MountCase mount;
  private final MountStrength strength;
  private TubeShell shell;

  MountBench(MountCase mount) {
    this.mount = mount;
    this.strength = new MountStrength(mount);
  }

  MountCase mount() {
    return mount;
  }

  MountStrength strength() {
    return strength;
  }

  /** What welds straight on the tube do to each bore. */
  List<BoreFigure> pulled(List<Seam> seams) {
    WeldPull pull = new WeldPull(mount.tube(), mount.partner());
    List<Seam> strips = seams.stream().filter(s -> !s.round()).toList();
    Optional<BoreShape> shape = Optional.empty();
    if (!strips.isEmpty() && !mount.sized().isEmpty()) {
      if (shell == null) {
        shell = new TubeShell(mount.tube(), strips);
      }
      shape = Optional.of(pull.shape(shell, strips));
    }
    List<BoreFigure> figures = new ArrayList<>();
    for (Sensitive bore : mount.sized()) {
      BoreMovement moved =
          shape.map(s -> s.worst(bore.fromZMm(), bore.toZMm())).orElse(BoreMovement.NONE);
      for (Seam seam : seams) {
        if (seam.round()) {
          BoreMovement ring = pull.ring(seam, bore.fromZMm(), bore.toZMm());
          moved = ring.changeMm().value() > moved.changeMm().value() ? ring : moved;
        }
      }
      figures.add(BoreFigure.of(bore, mount.tube(), moved));
    }
    return figures;
  }

  /** Bores that nothing moves. */
  List<BoreFigure> still() {
    return mount.sized().stream()
        .map(b -> BoreFigure.of(b, mount.tube(), BoreMovement.NONE))
        .toList();
  }

  /** The least band of a bore; empty where none has one. */
  Optional<Double> leastBandMm() {
    return still().stream().flatMap(f -> f.bandMm().stream()).min(Double::compare);
  }

  /** What temperatures decide; what was taken out does not count. */
  Outcome byHeat(HeatFigures heat, boolean takenOut, List<String> deciding) {
    Outcome outcome = Outcome.FITS;
    for (Warmth warm : heat.near()) {
      Sensitive s = named(warm.what());
      if (warm.limit().isEmpty()) {
        continue;
      }
      boolean out = takenOut && s.removable();
      if (out) {
        deciding.add(
            String.format(
                Locale.ROOT, "%s reaches %.0f C: it is out meanwhile", warm.what(), warm.peakC()));
      } else {
        deciding.add(borne(warm, warm.limit().get()));
      }
      outcome = outcome.and(warm.spoilt() && !out ? Outcome.DONT : Outcome.FITS);
    }
    return outcome;
  }

  private static String borne(Warmth warm, HeatLimit limit) {
    if (warm.overS() <= 0) {
      return String.format(
          Locale.ROOT,
          "%s reaches %.0f C of the %.0f C that it bears",
          warm.what(),
          warm.peakC(),
          limit.longC());
    }
    return String.format(
        Locale.ROOT,
        "%s reaches %.0f C, %.0f s above its %.0f C (%.0f C for minutes)%s",
        warm.what(),
        warm.peakC(),
        warm.overS(),
        limit.longC(),
        limit.shortC(),
        warm.spoilt() ? ": spoilt" : "");
  }

  private Sensitive named(String name) {
    return mount.near().stream().filter(s -> s.name().equals(name)).findFirst().orElseThrow();
  }

  /** What moved bores decide. */
  static Outcome byBores(BoredTube tube, List<BoreFigure> bores, List<String> deciding) {
    Outcome outcome = Outcome.FITS;
    for (BoreFigure bore : bores) {
      Span change = bore.movement().changeMm();
      if (bore.accept().isEmpty() || change.high() < 0.0005) {
        continue;
      }
      deciding.add(
          String.format(
              Locale.ROOT,
              "%s: moved %.3f mm on diameter (%.3f to %.3f) of a band of %.3f mm: %s",
              bore.what(),
              change.value(),
              change.low(),
              change.high(),
              bore.bandMm().orElseThrow(),
              bore.words()));
      outcome = outcome.and(bore.accept().get().outcome());
      if (bore.toleranced()) {
        deciding.add(SealGap.of(bore, tube).words(bore.what()));
      }
      if (bore.through() == BoreFigure.Through.NO) {
        deciding.add(
            String.format(
                Locale.ROOT,
                "a piston or pin does not go through %s any more: %.3f mm of clearance",
                bore.what(),
                bore.clearanceMm().orElseThrow()));
      }
    }
    return outcome;
  }

  /** What the load decides. */
  static Outcome byStrength(List<StrengthUse> uses, List<String> deciding) {
    Outcome outcome = Outcome.FITS;
    for (StrengthUse use : uses) {
      if (use.use() > 1) {
        deciding.add(
            String.format(
                Locale.ROOT,
                "%s: %s of %s, used to %.0f %%: too weak",
                use.what(),
                use.load(),
                use.allowable(),
                100 * use.use()));
        outcome = Outcome.DONT;
      }
    }
    return outcome;
  }
}
