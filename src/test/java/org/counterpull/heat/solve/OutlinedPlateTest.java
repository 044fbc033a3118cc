package org.counterpull.heat.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.counterpull.heat.block.Block;
import org.counterpull.heat.block.CartesianGrid;
import org.counterpull.heat.block.Frame;
import org.counterpull.heat.block.Grading;
import org.counterpull.heat.block.Outline;
import org.counterpull.heat.block.Vec3;
import org.counterpull.heat.face.FixedFilm;
import org.counterpull.heat.material.HeatMaterials;
import org.counterpull.heat.source.MovingSource;
import org.counterpull.heat.source.TravelPath;
import org.counterpull.heat.source.UniformBox;
import org.junit.jupiter.api.Test;

/** A bar 120 x 20 x 6 cut at a slant out of a grid against the same bar along its own grid. */
class OutlinedPlateTest {
  private static final double SLANT = Math.toRadians(30);

  private static Simulation welded(Block bar, Frame placed) {
    HeatModel model = HeatModel.builder().block(bar).faces(new FixedFilm(25, 0)).build();
    Simulation s = new Simulation(model, Fineness.NORMAL, 20);
    Vec3 down = new Vec3(0, 0, -1);
    s.strike(
        MovingSource.along(
            "bead",
            1200,
            0,
            TravelPath.straight(
                placed.toWorld(new Vec3(15, 10, 6)), placed.toWorld(new Vec3(45, 10, 6)), down),
            5,
            new UniformBox(8, 8, 6)));
    return s;
  }

  // Temperatures off the bead at 10, 30 and 120 s: 3 % of the rise, or 0.05 K in the far tail where
  // the rise is below 2 K.
  @Test
  void slantedOutlineConductsAsTheStraightBar() {
    Frame slanted =
        Frame.of(
            new Vec3(12, 2, 0),
            new Vec3(Math.cos(SLANT), Math.sin(SLANT), 0),
            new Vec3(-Math.sin(SLANT), Math.cos(SLANT), 0));
    double[][] corners = new double[4][];
    double[][] own = {{0, 0}, {120, 0}, {120, 20}, {0, 20}};
    for (int n = 0; n < 4; n++) {
      Vec3 at = slanted.toWorld(new Vec3(own[n][0], own[n][1], 0));
      corners[n] = new double[] {at.x(), at.y()};
    }
    double[] z = Grading.uniform(0, 6, 2);
    Block cut =
        new Block(
            "cut",
            HeatMaterials.carbonSteel(),
            Frame.WORLD,
            new CartesianGrid(
                Grading.uniform(0, 118, 2), Grading.uniform(0, 82, 2), z, new Outline(corners)));
    Block straight =
        new Block(
            "straight",
            HeatMaterials.carbonSteel(),
            Frame.WORLD,
            new CartesianGrid(Grading.uniform(0, 120, 2), Grading.uniform(0, 20, 2), z));
    Simulation slant = welded(cut, slanted);
    Simulation plain = welded(straight, Frame.WORLD);
    for (double t : new double[] {10, 30, 120}) {
      slant.advanceTo(t);
      plain.advanceTo(t);
      for (double x = 55; x < 120; x += 15) {
        Vec3 at = new Vec3(x, 10, 3);
        double rise = plain.temperatureC(straight, at) - 20;
        assertThat(slant.temperatureC(cut, slanted.toWorld(at)) - 20)
            .as("%s mm at %s s", x, t)
            .isCloseTo(rise, within(Math.max(0.05, 0.03 * rise)));
      }
    }
    assertThat(slant.balance().imbalance()).isLessThan(1e-9);
    double lost = plain.balance().lostJ();
    assertThat(slant.balance().lostJ()).isCloseTo(lost, within(0.01 * lost));
  }
}
