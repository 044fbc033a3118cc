package org.counterpull.heat.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.counterpull.heat.block.Block;
import org.counterpull.heat.block.CartesianGrid;
import org.counterpull.heat.block.Frame;
import org.counterpull.heat.block.Grading;
import org.counterpull.heat.block.Side;
import org.counterpull.heat.block.Vec3;
import org.counterpull.heat.face.StillAir;
import org.counterpull.heat.link.Links;
import org.counterpull.heat.material.HeatMaterials;
import org.counterpull.heat.material.ThermalMaterial;
import org.counterpull.heat.source.DoubleEllipsoid;
import org.counterpull.heat.source.MovingSource;
import org.counterpull.heat.source.TravelPath;
import org.junit.jupiter.api.Test;

/** Blocks that wait while others take short steps: same temperatures, no energy lost on the way. */
class WaitingBlocksTest {

  /** A bar of eight blocks of 100 mm with two welds, one near each end. */
  private static Simulation bar(Fineness fineness, List<Probe> probes) {
    ThermalMaterial steel = HeatMaterials.carbonSteel();
    HeatModel.Builder builder = HeatModel.builder().faces(StillAir.onFlats(60, 0.8));
    List<Block> blocks = new ArrayList<>();
    for (int n = 0; n < 8; n++) {
      Block block =
          new Block(
              "bay " + n,
              steel,
              Frame.withZ(new Vec3(0, 0, 100.0 * n), Vec3.Z),
              new CartesianGrid(
                  Grading.uniform(0, 20, 4),
                  Grading.uniform(0, 8, 4),
                  Grading.uniform(0, 100, n % 2 == 0 ? 4 : 5)));
      blocks.add(block);
      builder.block(block);
      if (n > 0) {
        builder.link(Links.joined(blocks.get(n - 1), Side.Z_HIGH, block, Side.Z_LOW, 0.1));
      }
    }
    Simulation s = new Simulation(builder.build(), fineness, 20);
    for (int n = 0; n < 8; n++) {
      probes.add(s.probe("bay " + n, blocks.get(n), new Vec3(4, 4, 100.0 * n + 35)));
    }
    Frame frame = blocks.get(0).frame();
    Vec3 into = frame.directionToWorld(new Vec3(0, -1, 0));
    Vec3 top = frame.toWorld(new Vec3(10, 8, 0));
    for (int n = 0; n < 2; n++) {
      Vec3 from = top.plus(new Vec3(0, 0, n == 0 ? 40 : 740));
      s.strike(
          MovingSource.along(
              "bead " + n,
              1800,
              60.0 * n,
              TravelPath.straight(from, from.plus(new Vec3(0, 0, 25)), into),
              3,
              new DoubleEllipsoid(4, 8, 5, 4)));
    }
    s.advanceTo(240);
    return s;
  }

  // Against the same with all blocks stepped alike: 0.5 % of the rise or 0.1 K, and a fifth less
  // work on this short bar.
  @Test
  void waitingChangesNothingThatMatters() {
    List<Probe> waited = new ArrayList<>();
    List<Probe> alike = new ArrayList<>();
    Simulation waiting = bar(Fineness.NORMAL, waited);
    Simulation together = bar(Fineness.NORMAL.withoutWaiting(), alike);
    for (int n = 0; n < 8; n++) {
      double rise = alike.get(n).peakC() - 20;
      assertThat(waited.get(n).peakC() - 20)
          .as(waited.get(n).name())
          .isCloseTo(rise, within(Math.max(0.1, 0.005 * rise)));
      assertThat(waited.get(n).nowC()).isCloseTo(alike.get(n).nowC(), within(0.1));
    }
    assertThat(waiting.cellUpdates()).isLessThan(together.cellUpdates() * 4 / 5);
    assertThat(waiting.balance().imbalance()).isLessThan(1e-9);
    double asked = waiting.balance().askedJ();
    assertThat(waiting.balance().inJ()).isCloseTo(asked, within(1e-9 * asked));
  }
}
