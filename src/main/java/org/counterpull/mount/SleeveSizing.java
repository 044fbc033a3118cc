package org.counterpull.mount;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.counterpull.fit.ThickTube;

/**
 * Finds the sleeve: long enough to spread the lug's moment, thick enough to carry the lug, with a
 * gap that the lug's shrinkage does not close.
 */
final class SleeveSizing {
  private static final double[] WALLS_MM = {4, 5, 6.3, 8, 10, 12.5, 16, 20};
  private static final double[] GAPS_MM = {0.1, 0.15, 0.2, 0.25};
  private static final double STEP_MM = 10;
  private static final double SPREAD = 6;

  private final MountBench bench;
  private final MountCase mount;
  private final Optional<GivenSleeve> given;

  SleeveSizing(MountBench bench) {
    this(bench, Optional.empty());
  }

  SleeveSizing(MountBench bench, Optional<GivenSleeve> given) {
    this.bench = bench;
    this.mount = bench.mount();
    this.given = given;
  }

  /**
   * A sleeve with what stays of the gap.
   *
   * @param sleeve its dimensions
   * @param inwardMm how far the lug draws its bore in, on diameter, central and band
   * @param bearingMPa greatest pressure of its ends on the tube
   * @param squeezeMm what that squeezes the bore by, on diameter
   * @param uses of its wall and the lug's welds
   */
  record Sized(
      Sleeve sleeve, Span inwardMm, double bearingMPa, double squeezeMm, List<StrengthUse> uses) {
    /** Whether the lug's shrinkage may make it grip the tube. */
    boolean mayGrip() {
      return inwardMm.high() > 2 * sleeve.gapMm();
    }

    boolean grips() {
      return inwardMm.value() > 2 * sleeve.gapMm();
    }
  }

  /** The sleeve around the lug alone; empty where the tube has no room or none is strong enough. */
  Optional<Sized> around() {
    if (given.isPresent()) {
      GivenSleeve g = given.get();
      return Optional.of(
          as(
              new Sleeve(
                  -g.lengthMm() / 2, g.lengthMm() / 2, g.wallMm(), g.gapMm(), Optional.empty())));
    }
    double lug = mount.partner().alongMm() + 4 * mount.legMm();
    double least = STEP_MM * Math.ceil(Math.max(mount.tube().outsideMm(), lug) / STEP_MM);
    double room = 2 * Math.min(-mount.tube().lowZMm(), mount.tube().highZMm());
    for (double length = least; length <= room; length += STEP_MM) {
      if (squeezeMm(length) <= allowedMm()) {
        return thick(-length / 2, length / 2, Optional.empty());
      }
    }
    return Optional.empty();
  }

  /** The sleeve that reaches a place where a ring weld is allowed; empty where there is none. */
  Optional<Sized> toRing() {
    Optional<Double> at = ringPlace();
    if (at.isEmpty()) {
      return Optional.empty();
    }
    double beyond = Math.ceil(mount.halfLengthMm() + 2 * mount.legMm());
    double ring = at.get();
    return ring < 0
        ? thick(ring, beyond, Optional.of(ring))
        : thick(-beyond, ring, Optional.of(ring));
  }

  /** Nearest place to the lug that is far enough from all that is near and from the tube's ends. */
  Optional<Double> ringPlace() {
    BoredTube tube = mount.tube();
    double keep = tube.fadingMm();
    double reach = Math.max(-tube.lowZMm(), tube.highZMm());
    for (double away = Math.ceil(mount.halfLengthMm() + 2 * mount.legMm());
        away <= reach;
        away += 1) {
      for (double z : new double[] {-away, away}) {
        boolean inTube = z - tube.lowZMm() >= keep && tube.highZMm() - z >= keep;
        if (inTube && mount.near().stream().allMatch(s -> s.distanceMm(z) >= keep)) {
          return Optional.of(z);
        }
      }
    }
    return Optional.empty();
  }

  /** A third of the least band: what a bore may be moved by without more. */
  double allowedMm() {
    return bench
        .leastBandMm()
        .map(b -> b * ShopValue.of("accept up to band share"))
        .orElse(ShopValue.of("reject above"));
  }

  /** The moment of the lug's load presses on the sleeve's ends: 6 M / (D L2). */
  private double bearingMPa(double lengthMm) {
    double moment = mount.forceN().orElse(0.0) * (mount.armMm() + mount.tube().outerRadiusMm());
    return SPREAD * moment / (mount.tube().outsideMm() * lengthMm * lengthMm);
  }

  private double squeezeMm(double lengthMm) {
    double pressure = bearingMPa(lengthMm);
    return ThickTube.squeeze(mount.tube().insideMm(), mount.tube().outsideMm(), pressure).value();
  }

  /** A sleeve as it is. */
  private Sized as(Sleeve sleeve) {
    return sized(sleeve, inward(sleeve), bench.strength().lugOn(sleeve.asTube(mount.tube())));
  }

  private Optional<Sized> thick(double from, double to, Optional<Double> ring) {
    if (given.isPresent()) {
      GivenSleeve g = given.get();
      return Optional.of(as(new Sleeve(from, to, g.wallMm(), g.gapMm(), ring)));
    }
    for (double wall : WALLS_MM) {
      if (wall < mount.tube().wallMm()) {
        continue;
      }
      Sleeve first = new Sleeve(from, to, wall, GAPS_MM[GAPS_MM.length - 1], ring);
      List<StrengthUse> uses = bench.strength().lugOn(first.asTube(mount.tube()));
      if (uses.stream().filter(u -> u.what().startsWith("wall")).allMatch(u -> u.use() <= 1)) {
        return Optional.of(gapped(first, uses));
      }
    }
    return Optional.empty();
  }

  /** The smallest gap that the lug's shrinkage does not close, else the widest. */
  private Sized gapped(Sleeve widest, List<StrengthUse> uses) {
    Span inward = inward(widest);
    double gap = widest.gapMm();
    for (double candidate : GAPS_MM) {
      if (2 * candidate >= inward.high()) {
        gap = candidate;
        break;
      }
    }
    Sleeve sleeve =
        new Sleeve(widest.fromZMm(), widest.toZMm(), widest.wallMm(), gap, widest.ringZMm());
    return sized(sleeve, inward, uses);
  }

  /** How far the lug draws a sleeve's bore in. */
  private Span inward(Sleeve sleeve) {
    BoredTube shape = sleeve.asTube(mount.tube());
    List<Seam> seams = onSleeve(sleeve);
    WeldPull pull = new WeldPull(shape, mount.partner());
    return pull.shape(new TubeShell(shape, seams), seams)
        .worst(sleeve.fromZMm(), sleeve.toZMm())
        .inwardMm();
  }

  private Sized sized(Sleeve sleeve, Span inward, List<StrengthUse> uses) {
    double length = sleeve.lengthMm();
    return new Sized(sleeve, inward, bearingMPa(length), squeezeMm(length), uses);
  }

  /** The lug's welds where they lie on a sleeve. */
  List<Seam> onSleeve(Sleeve sleeve) {
    return Seams.aroundLug(
        sleeve.asTube(mount.tube()), mount.partner(), mount.seams().get(0).passes());
  }

  static String words(Sleeve sleeve, BoredTube tube) {
    return String.format(
        Locale.ROOT,
        "sleeve: bore %.1f mm, wall %s mm, %.0f mm long, %.2f mm of air all round",
        sleeve.boreMm(tube),
        MountStrength.trim(sleeve.wallMm()),
        sleeve.lengthMm(),
        sleeve.gapMm());
  }
}
