package org.counterpull.mount;

import java.util.List;
import java.util.Optional;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.fit.ToleranceClass;
import org.counterpull.weldment.Feature;

/** Cases of tests. */
final class Cases {
  private Cases() {}

  /** The lug of the cradle: 40 x 10, 60 high, leg 6 on a tube 60 x 5, the seal 45 mm beside it. */
  static MountCase cradle() {
    return lug(60, 5, 6, 45, 1, "H8");
  }

  /**
   * A smaller weld where nothing slides: the swept bore begins 80 mm beside it, the seal lies 150
   * mm away.
   */
  static MountCase unswept() {
    MountCase near = lug(60, 5, 4, 150, 1, "H11");
    Sensitive bore = near.near().get(0);
    Sensitive away =
        new Sensitive(
            bore.name(),
            bore.kind(),
            80,
            170,
            true,
            bore.limit(),
            bore.tolerance(),
            bore.clearanceMm(),
            false);
    return new MountCase(
        near.name(),
        near.tube(),
        near.partner(),
        near.seams(),
        near.legMm(),
        List.of(away, near.near().get(1)),
        near.ambientC(),
        near.hottestFactor(),
        near.fastestMmPerS(),
        Optional.empty(),
        near.armMm(),
        near.inside(),
        List.of());
  }

  /** A lug 40 x 10 x 60 on a tube. */
  static MountCase lug(
      double outside, double wall, double leg, double fromSeal, double heat, String tolerance) {
    BoredTube tube = new BoredTube(outside, wall, -220, 20 + fromSeal + 30, 355);
    Partner lug = new Partner("lug", Partner.Kind.LUG, 40, 10, 60, 470, 0.9);
    List<WeldPass> passes =
        LegHeat.of(WeldingProcess.MAG, leg, 160).passes().stream()
            .map(p -> p.hotter(heat))
            .toList();
    Sensitive bore =
        new Sensitive(
            "bore",
            Feature.Kind.BORE,
            -190,
            20 + fromSeal,
            true,
            Optional.empty(),
            ToleranceClass.parse(tolerance),
            Optional.empty(),
            false);
    Sensitive seal =
        new Sensitive(
            "seal",
            Feature.Kind.SEAL,
            20 + fromSeal,
            20 + fromSeal,
            true,
            HeatLimit.of(Feature.Kind.SEAL, Optional.of("nbr"), Optional.empty()),
            Optional.empty(),
            Optional.empty(),
            true);
    return new MountCase(
        "lug",
        tube,
        lug,
        Seams.aroundLug(tube, lug, passes),
        leg,
        List.of(bore, seal),
        20,
        1.0625,
        10.7,
        Optional.of(12_000.0),
        45,
        Inside.DRAINED,
        List.of());
  }
}
