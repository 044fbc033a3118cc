package org.counterpull.heat.block;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.counterpull.heat.material.ThermalMaterial;
import org.junit.jupiter.api.Test;

class BlockGeometryTest {
  private static final ThermalMaterial METAL = ThermalMaterial.constant("metal", 40, 7850, 650);

  private static double area(Block block, Side side) {
    return block.patches(side).stream().mapToDouble(Patch::areaMm2).sum();
  }

  // Geometry of a round tube 60 x 5 x 80: exact volume and areas however few the sectors.
  @Test
  void tubeIsExactlyRound() {
    Block tube =
        new Block(
            "tube",
            METAL,
            Frame.WORLD,
            new CylinderGrid(Grading.uniform(25, 30, 2), 7, Grading.uniform(0, 80, 9)));
    assertThat(tube.totalVolumeMm3()).isCloseTo(Math.PI * (900 - 625) * 80, within(1e-6));
    assertThat(area(tube, Side.OUTER)).isCloseTo(2 * Math.PI * 30 * 80, within(1e-7));
    assertThat(area(tube, Side.INNER)).isCloseTo(2 * Math.PI * 25 * 80, within(1e-7));
    assertThat(area(tube, Side.Z_HIGH)).isCloseTo(Math.PI * (900 - 625), within(1e-8));
  }

  @Test
  void solidBarHasAnUndividedCore() {
    Block bar =
        new Block(
            "bar",
            METAL,
            Frame.WORLD,
            new CylinderGrid(new double[] {0, 4, 8, 12.5}, 12, Grading.uniform(0, 50, 10)));
    assertThat(bar.totalVolumeMm3()).isCloseTo(Math.PI * 12.5 * 12.5 * 50, within(1e-6));
    assertThat(area(bar, Side.Z_LOW)).isCloseTo(Math.PI * 12.5 * 12.5, within(1e-8));
    assertThat(bar.patches(Side.INNER)).isEmpty();
    Interpolation axis = bar.interpolation(new Vec3(0, 0, 25));
    assertThat(axis.of(p -> bar.volumeMm3()[p])).isCloseTo(Math.PI * 16 * 10, within(1e-8));
  }

  // Triangle 100 x 60 with a square hole of 20: areas by hand.
  @Test
  void outlineKeepsAreaAndEdgeLength() {
    Outline outline =
        new Outline(new double[][] {{0, 0}, {100, 0}, {0, 60}})
            .withHole(new double[][] {{10, 10}, {30, 10}, {30, 30}, {10, 30}});
    Block plate =
        new Block(
            "plate",
            METAL,
            Frame.WORLD,
            new CartesianGrid(
                Grading.uniform(0, 100, 7),
                Grading.uniform(0, 60, 7),
                Grading.uniform(0, 8, 4),
                outline));
    double area = 0.5 * 100 * 60 - 400;
    assertThat(plate.totalVolumeMm3()).isCloseTo(area * 8, within(1e-6 * area));
    assertThat(area(plate, Side.Z_HIGH)).isCloseTo(area, within(1e-6 * area));
    double edges = 100 + 60 + Math.hypot(100, 60) + 80;
    assertThat(area(plate, Side.OUTLINE)).isCloseTo(edges * 8, within(1e-3 * edges * 8));
    assertThat(area(plate, Side.X_LOW)).isZero();
  }

  // An outline that is the box itself changes nothing.
  @Test
  void outlineOfTheWholeBoxIsTheBox() {
    double[] x = Grading.uniform(0, 40, 5);
    double[] y = Grading.uniform(0, 30, 5);
    double[] z = Grading.uniform(0, 10, 5);
    Outline all = new Outline(new double[][] {{0, 0}, {0, 30}, {40, 30}, {40, 0}});
    Block cut = new Block("cut", METAL, Frame.WORLD, new CartesianGrid(x, y, z, all));
    Block box = new Block("box", METAL, Frame.WORLD, new CartesianGrid(x, y, z));
    assertThat(cut.volumeMm3()).containsExactly(box.volumeMm3(), within(1e-9));
    for (int d = 0; d < 3; d++) {
      assertThat(cut.shapeMm(d)).containsExactly(box.shapeMm(d), within(1e-9));
    }
    assertThat(area(cut, Side.OUTLINE)).isCloseTo(2 * (40 + 30) * 10, within(1e-9));
  }

  @Test
  void gradingIsFineInItsZonesAndGrowsAway() {
    double[] edges = Grading.graded(0, 200, List.of(new Grading.Zone(40, 60)), 2, 1.3, 15);
    assertThat(edges[0]).isZero();
    assertThat(edges[edges.length - 1]).isEqualTo(200);
    for (int i = 0; i + 1 < edges.length; i++) {
      double size = edges[i + 1] - edges[i];
      assertThat(size).isBetween(0.5, 15.001);
      if (edges[i] >= 40 && edges[i + 1] <= 60) {
        assertThat(size).isLessThan(2.01);
      }
      if (i > 0) {
        assertThat(size / (edges[i] - edges[i - 1])).isBetween(1 / 1.45, 1.45);
      }
    }
  }

  // A field that is linear in place is interpolated exactly inside the outer cell centres.
  @Test
  void interpolationIsExactForLinearFields() {
    Frame turned = Frame.of(new Vec3(5, -3, 2), new Vec3(1, 2, 0.5), Vec3.Z);
    Block block =
        new Block(
            "block",
            METAL,
            turned,
            new CartesianGrid(
                Grading.graded(0, 50, List.of(new Grading.Zone(10, 20)), 2, 1.3, 8),
                Grading.uniform(0, 20, 3),
                Grading.uniform(0, 9, 3)));
    Vec3 world = turned.toWorld(new Vec3(17.3, 11.1, 4.4));
    Vec3 slope = new Vec3(2, -1, 0.3);
    double value = block.interpolation(world).of(p -> block.centre(p).dot(slope));
    assertThat(value).isCloseTo(world.dot(slope), within(1e-9));
  }
}
