package org.counterpull.mount;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** A lug on a tube 60 x 5 with the heat at which it is compared with an independent solution. */
public final class MountHeatCases {
  private static final double SLEEVE_MM = 120;

  private MountHeatCases() {}

  /** Cases by name. */
  public static Map<String, ToDoubleFunction<Map<String, String>>> all() {
    return Map.of("peak at a bore under a lug", MountHeatCases::peakC);
  }

  private static double peakC(Map<String, String> arguments) {
    MountCase mount = heated(Double.parseDouble(arguments.get("Q")));
    return switch (arguments.get("way")) {
      case "direct" -> LocalHeat.of(mount, HeatSetup.direct(mount)).borePeakC();
      case "sleeve" -> onSleeve(mount, arguments);
      case "ring" -> ring(mount);
      default -> throw new IllegalArgumentException("no way " + arguments.get("way"));
    };
  }

  private static double onSleeve(MountCase mount, Map<String, String> arguments) {
    Sleeve sleeve =
        sleeve(
            Double.parseDouble(arguments.get("wall")),
            Double.parseDouble(arguments.get("gap")),
            Optional.empty());
    List<Seam> seams =
        Seams.aroundLug(
            sleeve.asTube(mount.tube()), mount.partner(), mount.seams().get(0).passes());
    int runs = Integer.parseInt(arguments.get("runs"));
    HeatSetup setup =
        new HeatSetup(
            seams.subList(0, runs), false, false, Inside.DRAINED, Optional.of(sleeve), true);
    return LocalHeat.of(mount, setup).borePeakC();
  }

  private static double ring(MountCase mount) {
    Sleeve sleeve = sleeve(5, 0.25, Optional.of(-SLEEVE_MM / 2));
    Seam seam = Seams.round("ring", -SLEEVE_MM / 2, mount.seams().get(0).passes());
    HeatSetup setup =
        new HeatSetup(List.of(seam), false, false, Inside.DRAINED, Optional.of(sleeve), false);
    return LocalHeat.of(mount, setup).borePeakC();
  }

  private static Sleeve sleeve(double wallMm, double gapMm, Optional<Double> ring) {
    return new Sleeve(-SLEEVE_MM / 2, SLEEVE_MM / 2, wallMm, gapMm, ring);
  }

  /** The cradle's lug with so much net heat in each fillet, by the central efficiency. */
  private static MountCase heated(double netJPerMm) {
    MountCase c = Cases.cradle();
    List<Seam> seams =
        c.seams().stream()
            .map(
                s ->
                    s.with(
                        s.passes().stream().map(p -> p.hotter(netJPerMm / p.netJPerMm())).toList()))
            .toList();
    return new MountCase(
        c.name(),
        c.tube(),
        c.partner(),
        seams,
        c.legMm(),
        c.near(),
        c.ambientC(),
        1,
        c.fastestMmPerS(),
        c.forceN(),
        c.armMm(),
        Inside.DRAINED,
        List.of());
  }
}
