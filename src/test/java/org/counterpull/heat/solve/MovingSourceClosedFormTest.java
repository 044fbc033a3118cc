package org.counterpull.heat.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.counterpull.heat.block.Block;
import org.counterpull.heat.block.CartesianGrid;
import org.counterpull.heat.block.Frame;
import org.counterpull.heat.block.Grading;
import org.counterpull.heat.block.Side;
import org.counterpull.heat.block.Vec3;
import org.counterpull.heat.face.FixedFilm;
import org.counterpull.heat.material.ThermalMaterial;
import org.counterpull.heat.source.MovingSource;
import org.counterpull.heat.source.TravelPath;
import org.counterpull.heat.source.UniformBox;
import org.junit.jupiter.api.Test;

/**
 * Rosenthal 1941, Rykalin 1957: a source moving at constant speed, and its start and stop. q = 3600
 * W, v = 5 mm/s, conductivity 0.025 W/mmK, heat capacity 0.005 J/mm3K. Half of the plate is
 * modelled, with half of the power. Tolerance: 2 % of the rise, two bead widths (4 mm) and more
 * away.
 */
class MovingSourceClosedFormTest {
  private static final ThermalMaterial METAL = ThermalMaterial.constant("a = 5", 25, 5000, 1000);
  private static final double Q = 3600;
  private static final double SPEED = 5;

  /** Half a plate y 0 to width, z 0 to depth, with the arc along y = 0 from x = 30. */
  static Simulation half(
      double travelMm, double widthMm, double depthMm, double cellMm, UniformBox box, double film) {
    double lengthMm = 60 + travelMm;
    CartesianGrid grid =
        new CartesianGrid(
            Grading.graded(
                0, lengthMm, List.of(new Grading.Zone(20, 45 + travelMm)), cellMm, 1.2, 8),
            Grading.graded(0, widthMm, List.of(new Grading.Zone(0, 10)), cellMm, 1.2, 8),
            Grading.graded(-depthMm, 0, List.of(new Grading.Zone(-10, 0)), cellMm, 1.2, 8));
    Block plate = new Block("plate", METAL, Frame.WORLD, grid);
    HeatModel model =
        HeatModel.builder()
            .ambientC(0)
            .block(plate)
            .face(
                plate,
                p -> p.side() == Side.Z_LOW || p.side() == Side.Z_HIGH,
                new FixedFilm(film, 0))
            .build();
    Simulation simulation = new Simulation(model, Fineness.NORMAL, 0);
    simulation.strike(
        MovingSource.along(
            "bead",
            Q / 2,
            0,
            TravelPath.straight(
                new Vec3(30, 0, 0), new Vec3(30 + travelMm, 0, 0), new Vec3(0, 0, -1)),
            SPEED,
            box));
    return simulation;
  }

  private static void check(Simulation s, double travel, double[] point, double expected) {
    Vec3 at = new Vec3(30 + travel + point[0], point[1], -point[2]);
    double rise = s.temperatureC(s.model().blocks().get(0), at);
    assertThat(rise)
        .as("xi %s", java.util.Arrays.toString(point))
        .isCloseTo(expected, within(0.02 * expected));
  }

  // Thick plate: 4-digit values of q/(2 pi k R) exp(-v(xi+R)/2a).
  @Test
  void thickPlate() {
    Simulation s = half(75, 50, 50, 1.5, new UniformBox(3, 3, 1.5), 0);
    s.advanceTo(15);
    check(s, 75, new double[] {-20, 0, 0}, 1146);
    check(s, 75, new double[] {-10, 8, 0}, 439.9);
  }

  // Thin plate d = 5: 4-digit values of q/(2 pi k d) exp(-v xi/2a) K0(v r/2a).
  @Test
  void thinPlate() {
    Simulation s = half(75, 60, 5, 1.25, new UniformBox(2, 2, 5), 0);
    s.advanceTo(15);
    check(s, 75, new double[] {-10, 0, 0}, 2511);
    check(s, 75, new double[] {-20, 0, 0}, 1795);
    check(s, 75, new double[] {-10, 8, 0}, 548.0);
  }

  // The same with 20 W/m2K on both faces, 4-digit values; the loss of 7 to 12 K is itself met to 1
  // K.
  @Test
  void thinPlateWithSurfaceLoss() {
    Simulation without = half(75, 60, 5, 1.25, new UniformBox(2, 2, 5), 0);
    Simulation with = half(75, 60, 5, 1.25, new UniformBox(2, 2, 5), 20);
    without.advanceTo(15);
    with.advanceTo(15);
    check(with, 75, new double[] {-20, 0, 0}, 1783);
    check(with, 75, new double[] {-10, 8, 0}, 545.6);
    Vec3 at = new Vec3(85, 0, 0);
    double loss =
        without.temperatureC(without.model().blocks().get(0), at)
            - with.temperatureC(with.model().blocks().get(0), at);
    assertThat(loss).isCloseTo(1795 - 1783, within(1.0));
  }

  // Finite thickness d = 10: image sum, 4-digit values.
  @Test
  void finiteThickness() {
    Simulation s = half(165, 60, 10, 1.43, new UniformBox(3, 4, 1.43), 0);
    s.advanceTo(33);
    check(s, 165, new double[] {-30, 0, 0}, 825.5);
    check(s, 165, new double[] {-30, 10, 0}, 352.0);
    check(s, 165, new double[] {-30, 10, 10}, 285.0);
    check(s, 165, new double[] {-100, 0, 0}, 405.3);
  }

  // Bead of 40 mm on a thick plate, point (20, 5, 0) from its start: integral over the travel,
  // 809.4 K when it stops (t = 8 s) and 236.1 K at 20 s. The point lies 1.25 bead widths off.
  @Test
  void beadOfFiniteLength() {
    Simulation s = half(40, 50, 50, 1.5, new UniformBox(2, 2, 1.5), 0);
    Block plate = s.model().blocks().get(0);
    s.advanceTo(8);
    assertThat(s.temperatureC(plate, new Vec3(50, 5, 0))).isCloseTo(809.4, within(0.02 * 809.4));
    s.advanceTo(20);
    assertThat(s.temperatureC(plate, new Vec3(50, 5, 0))).isCloseTo(236.1, within(0.02 * 236.1));
  }
}
