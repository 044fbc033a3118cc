package org.counterpull.heat.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.counterpull.heat.block.Block;
import org.counterpull.heat.block.CartesianGrid;
import org.counterpull.heat.block.CylinderGrid;
import org.counterpull.heat.block.Frame;
import org.counterpull.heat.block.Grading;
import org.counterpull.heat.block.Vec3;
import org.counterpull.heat.material.ThermalMaterial;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DepositTest {
  private static final ThermalMaterial METAL = ThermalMaterial.constant("metal", 40, 7850, 650);
  private static final Vec3 DOWN = new Vec3(0, 0, -1);

  private static Block plate(String name, Frame frame, double cell) {
    return new Block(
        name,
        METAL,
        frame,
        new CartesianGrid(
            Grading.uniform(0, 100, cell),
            Grading.uniform(-30, 30, cell),
            Grading.uniform(-10, 0, cell)));
  }

  private static double sum(List<Deposit.Share> shares) {
    return shares.stream().mapToDouble(Deposit.Share::energyJ).sum();
  }

  // What goes in equals what was asked: 1e-9 of it, over any cutting of the time.
  @ParameterizedTest
  @ValueSource(doubles = {1.3, 2, 3.1, 7})
  void energyIsWhatWasAsked(double cell) {
    Block plate = plate("plate", Frame.WORLD, cell);
    TravelPath path =
        new TravelPath(
            List.of(new Vec3(10, -20, 0), new Vec3(60, 0, 0), new Vec3(60, 25, 0)),
            List.of(DOWN, DOWN, DOWN));
    for (SourceShape shape : List.of(new UniformBox(8, 8, 4), new DoubleEllipsoid(4, 8, 5, 4))) {
      MovingSource source = MovingSource.along("run", 3000, 5, path, 4, shape);
      double total = 0;
      for (double t = 0; t < 40; t += 0.7) {
        if (source.burns(t, t + 0.7)) {
          total += sum(Deposit.between(List.of(plate), source, t, t + 0.7));
        }
      }
      assertThat(total).isCloseTo(source.energyJ(), within(1e-9 * source.energyJ()));
    }
  }

  // The middle of the heat lies under the middle of the stretch.
  @Test
  void heatLiesWhereTheArcWas() {
    Block plate = plate("plate", Frame.WORLD, 2);
    MovingSource source =
        MovingSource.along(
            "run",
            3000,
            0,
            TravelPath.straight(new Vec3(20, 0, 0), new Vec3(80, 0, 0), DOWN),
            5,
            new UniformBox(8, 8, 4));
    List<Deposit.Share> shares = Deposit.between(List.of(plate), source, 4, 5);
    Vec3 middle = Vec3.ZERO;
    for (Deposit.Share share : shares) {
      middle = middle.plus(plate.centre(share.cell()).times(share.energyJ() / 3000));
    }
    assertThat(middle.x()).isCloseTo(42.5, within(0.05));
    assertThat(middle.y()).isCloseTo(0, within(1e-9));
    assertThat(middle.z()).isCloseTo(-2, within(0.05));
  }

  // An arc along the seam of two equal plates heats both alike.
  @Test
  void twoBlocksShareTheArc() {
    Block left = plate("left", Frame.of(new Vec3(0, 30, 0), Vec3.X, Vec3.Y), 2);
    Block right = plate("right", Frame.of(new Vec3(0, -30, 0), Vec3.X, Vec3.Y), 2);
    MovingSource source =
        MovingSource.along(
            "seam",
            2000,
            0,
            TravelPath.straight(new Vec3(20, 0, 0), new Vec3(80, 0, 0), DOWN),
            5,
            new DoubleEllipsoid(4, 8, 5, 4));
    List<Deposit.Share> shares = Deposit.between(List.of(left, right), source, 1, 2);
    List<Deposit.Share> ofLeft = new ArrayList<>(shares);
    ofLeft.removeIf(s -> s.block() == 1);
    assertThat(sum(ofLeft)).isCloseTo(1000, within(1e-6));
  }

  // Goldak et al. 1984: the share ahead of the point is cf / (cf + cr) when the density is
  // continuous; here 4 / 12.
  @Test
  void doubleEllipsoidSharesFrontAndRear() {
    DoubleEllipsoid shape = new DoubleEllipsoid(4, 8, 5, 4);
    // The error function is good to 1.5e-7.
    assertThat(1 - shape.shareBehind(0)).isCloseTo(1.0 / 3, within(2e-7));
    assertThat(shape.shareBehind(100)).isCloseTo(1, within(2e-7));
    assertThat(shape.shareBehind(-100)).isCloseTo(0, within(2e-7));
    double slope = (shape.shareBehind(1.001) - shape.shareBehind(0.999)) / 0.002;
    assertThat(shape.alongPerMm(1)).isCloseTo(slope, within(2e-4));
  }

  // Around a tube: the direction into the metal turns with the path.
  @Test
  void ringRunAroundATube() {
    Block tube =
        new Block(
            "tube",
            METAL,
            Frame.WORLD,
            new CylinderGrid(Grading.uniform(25, 30, 2.5), 48, Grading.uniform(0, 60, 3)));
    List<Vec3> points = new ArrayList<>();
    List<Vec3> into = new ArrayList<>();
    for (int n = 0; n <= 48; n++) {
      double a = 2 * Math.PI * n / 48;
      Vec3 out = new Vec3(Math.cos(a), Math.sin(a), 0);
      points.add(out.times(30).plus(new Vec3(0, 0, 30)));
      into.add(out.times(-1));
    }
    MovingSource ring =
        MovingSource.along(
            "ring", 1500, 0, new TravelPath(points, into), 4, new DoubleEllipsoid(3, 6, 4, 3));
    double[] bySector = new double[4];
    for (Deposit.Share share : Deposit.between(List.of(tube), ring, ring.startS(), ring.endS())) {
      Vec3 at = tube.centre(share.cell());
      bySector[(at.x() > 0 ? 0 : 1) + (at.y() > 0 ? 0 : 2)] += share.energyJ();
    }
    for (double quarter : bySector) {
      assertThat(quarter).isCloseTo(ring.energyJ() / 4, within(0.005 * ring.energyJ()));
    }
  }

  @Test
  void anArcBesideTheMetalIsRefused() {
    MovingSource beside =
        new MovingSource(
            "beside",
            1000,
            0,
            1,
            TravelPath.spot(new Vec3(50, 0, 40), DOWN),
            new UniformBox(6, 6, 3));
    Block plate = plate("plate", Frame.WORLD, 3);
    assertThatThrownBy(() -> Deposit.between(List.of(plate), beside, 0, 1))
        .hasMessageContaining("the arc of beside meets no metal");
  }
}
