package org.counterpull.zone;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.counterpull.heat.block.Block;
import org.counterpull.heat.block.CartesianGrid;
import org.counterpull.heat.block.Frame;
import org.counterpull.heat.block.Grading;
import org.counterpull.heat.block.Vec3;
import org.counterpull.heat.material.HeatMaterials;
import org.counterpull.heat.material.ThermalMaterial;
import org.counterpull.heat.solve.Fineness;
import org.counterpull.heat.solve.HeatModel;
import org.counterpull.heat.solve.Simulation;
import org.counterpull.heat.source.MovingSource;
import org.counterpull.heat.source.TravelPath;
import org.counterpull.heat.source.UniformBox;
import org.counterpull.quantity.Computed;
import org.counterpull.shrinkage.FreeAngle;
import org.counterpull.shrinkage.FreeShrinkage;
import org.counterpull.shrinkage.ShrinkageMaterial;
import org.counterpull.shrinkage.TendonForce;

/** The zone rule on line sources and on the heat engine's field, for the book of verification. */
public final class ZoneCases {
  static final ShrinkageMaterial STEEL = ShrinkageMaterial.CARBON_STEEL;
  static final double YIELD_MPA = 355;

  /** Rise at which that steel begins to yield, K. */
  static final double YIELD_RISE_K =
      YIELD_MPA / (STEEL.elasticModulusMPa() * STEEL.expansionPerK());

  private static final double START_C = 20;
  private static final double LENGTH_MM = 150;

  private static final Map<String, ZoneShrinkage> SIMULATED = new HashMap<>();

  private ZoneCases() {}

  /** All cases. */
  public static Map<String, ToDoubleFunction<Map<String, String>>> all() {
    return Map.of(
        "zone rule over closed form",
        a -> ratio(a, plate(of(a, "x") * Math.pow(of(a, "h"), 2), of(a, "h"))),
        "heat engine over closed form",
        a ->
            ratio(
                a,
                SIMULATED.computeIfAbsent(
                    a.get("x") + " " + a.get("h") + " " + a.get("v") + " " + a.get("metal"),
                    key -> engine(of(a, "x") * Math.pow(of(a, "h"), 2), of(a, "h"), a))),
        "shrunken area per heat",
        a -> {
          double q = of(a, "Q");
          return plate(q, of(a, "h")).across().value() * of(a, "h") / q;
        },
        "tendon factor of the zone",
        a -> {
          double perHeat = STEEL.elasticModulusMPa() * STEEL.expansionPerHeatMm3PerJ();
          return plate(of(a, "Q"), of(a, "h")).tendon().value() / (perHeat * of(a, "Q"));
        },
        "peak beside a line",
        ZoneCases::peak);
  }

  private static double of(Map<String, String> arguments, String name) {
    return Double.parseDouble(arguments.get(name));
  }

  /** What was asked for over the closed form for a long run on a wide plate. */
  private static double ratio(Map<String, String> a, ZoneShrinkage zone) {
    double h = of(a, "h");
    double q = of(a, "x") * h * h;
    Computed[] pair =
        switch (a.get("asked")) {
          case "across" -> new Computed[] {zone.across(), FreeShrinkage.of(q, h)};
          case "angle" -> new Computed[] {zone.angle(), FreeAngle.of(q, h)};
          case "tendon" -> new Computed[] {zone.tendon(), TendonForce.of(q)};
          default -> throw new IllegalArgumentException(a.get("asked"));
        };
    return pair[0].value() / pair[1].value();
  }

  /** A long run on the face of a wide plate. */
  static ZoneShrinkage plate(double netHeatJPerMm, double thicknessMm) {
    LinePeaks peaks =
        new LinePeaks(
            netHeatJPerMm,
            STEEL.heatCapacityJPerMm3K(),
            START_C,
            new Reach.Endless(),
            new Reach.Between(-thicknessMm, 0),
            Optional.empty());
    return ZoneRule.of(
        peaks.cells(YIELD_RISE_K), 1, Wall.wide(thicknessMm), START_C, YIELD_MPA, STEEL);
  }

  /** Half of a plate 500 wide under a moving source, and what passed 70 to 90 mm from its start. */
  private static ZoneShrinkage engine(double q, double h, Map<String, String> a) {
    double speed = of(a, "v");
    ThermalMaterial metal =
        a.get("metal").equals("steel")
            ? HeatMaterials.carbonSteel()
            : ThermalMaterial.constant("mean values", 40, 4900, 1000);
    double half = 250;
    double cell = h / 8;
    Block plate =
        new Block(
            "plate",
            metal,
            Frame.WORLD,
            new CartesianGrid(
                Grading.graded(0, LENGTH_MM, List.of(new Grading.Zone(60, 100)), cell, 1.2, 5),
                Grading.graded(0, half, List.of(new Grading.Zone(0, 14)), cell, 1.25, 25),
                Grading.graded(-h, 0, List.of(new Grading.Zone(-h, 0)), cell, 1.2, 8)));
    HeatModel model = HeatModel.builder().ambientC(START_C).block(plate).build();
    Simulation simulation = new Simulation(model, Fineness.NORMAL, START_C);
    simulation.strike(
        MovingSource.along(
            "bead",
            q * speed / 2,
            0,
            TravelPath.straight(new Vec3(0, 0, 0), new Vec3(LENGTH_MM, 0, 0), new Vec3(0, 0, -1)),
            speed,
            new UniformBox(4, 3, 2)));
    simulation.advanceTo(LENGTH_MM / speed + 60);
    List<PeakCell> cells = new ArrayList<>();
    double volume = 0;
    for (int c = plate.first(); c < plate.end(); c++) {
      Vec3 at = plate.centre(c);
      double mm3 = 2 * plate.volumeMm3()[c];
      if (mm3 > 0 && at.x() > 70 && at.x() < 90) {
        volume += mm3;
        cells.add(new PeakCell(at.x(), at.y(), at.z(), mm3, simulation.peakC(plate, c)));
      }
    }
    double sliceMm = volume / (2 * half * h);
    return ZoneRule.of(cells, sliceMm, Wall.wide(h), START_C, YIELD_MPA, STEEL);
  }

  /** Peaks of lines with all kinds of ends around them, 720 J/mm, c 0.005. */
  private static double peak(Map<String, String> a) {
    Reach across =
        switch (a.get("across")) {
          case "endless" -> new Reach.Endless();
          case "edge" -> new Reach.Between(0, Double.parseDouble(a.get("width")));
          case "around" -> new Reach.Around(of(a, "girth"));
          default -> throw new IllegalArgumentException(a.get("across"));
        };
    LinePeaks peaks =
        new LinePeaks(720, 0.005, 0, across, new Reach.Between(-of(a, "h"), 0), Optional.empty());
    return peaks.peakC(0, of(a, "n"), of(a, "b"));
  }
}
