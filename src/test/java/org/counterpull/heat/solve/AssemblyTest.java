package org.counterpull.heat.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.counterpull.heat.block.Block;
import org.counterpull.heat.block.CartesianGrid;
import org.counterpull.heat.block.CylinderGrid;
import org.counterpull.heat.block.Frame;
import org.counterpull.heat.block.Grading;
import org.counterpull.heat.block.Side;
import org.counterpull.heat.block.Vec3;
import org.counterpull.heat.face.FixedFilm;
import org.counterpull.heat.face.HeldBody;
import org.counterpull.heat.face.StillAir;
import org.counterpull.heat.link.LinkLaw;
import org.counterpull.heat.link.Links;
import org.counterpull.heat.material.HeatMaterials;
import org.counterpull.heat.material.ThermalMaterial;
import org.counterpull.heat.source.DoubleEllipsoid;
import org.counterpull.heat.source.MovingSource;
import org.counterpull.heat.source.TravelPath;
import org.counterpull.heat.source.UniformBox;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What must hold whatever the numbers: joining, turning, scaling, keeping of energy. */
class AssemblyTest {
  private static final Vec3 DOWN = new Vec3(0, 0, -1);

  private static Block plate(
      String name, ThermalMaterial metal, Frame frame, double x0, double x1, double cell) {
    return new Block(
        name,
        metal,
        frame,
        new CartesianGrid(
            Grading.uniform(x0, x1, cell),
            Grading.uniform(-20, 20, cell),
            Grading.uniform(-6, 0, 2)));
  }

  private static MovingSource bead(double power, Vec3 from, Vec3 to, Vec3 into) {
    return MovingSource.along(
        "bead", power, 0, TravelPath.straight(from, to, into), 5, new UniformBox(8, 8, 4));
  }

  // One plate laid out as two blocks with equal cells: the same sums, up to rounding.
  @Test
  void twoBlocksJoinedEqualOne() {
    ThermalMaterial steel = HeatMaterials.carbonSteel();
    Block one = plate("one", steel, Frame.WORLD, 0, 100, 2.5);
    Block left = plate("left", steel, Frame.WORLD, 0, 50, 2.5);
    Block right = plate("right", steel, Frame.WORLD, 50, 100, 2.5);
    FixedFilm film = new FixedFilm(10, 0.8);
    Simulation whole =
        new Simulation(HeatModel.builder().block(one).faces(film).build(), Fineness.NORMAL, 20);
    Simulation halves =
        new Simulation(
            HeatModel.builder()
                .block(left)
                .block(right)
                .faces(film)
                .link(Links.joined(left, Side.X_HIGH, right, Side.X_LOW, 0.1))
                .build(),
            Fineness.NORMAL,
            20);
    MovingSource bead = bead(2500, new Vec3(20, 0, 0), new Vec3(80, 0, 0), DOWN);
    whole.strike(bead);
    halves.strike(bead);
    for (double t : new double[] {6, 12, 60}) {
      whole.advanceTo(t);
      halves.advanceTo(t);
      for (double x = 11.25; x < 100; x += 7.5) {
        Vec3 at = new Vec3(x, 3.75, -3);
        double joined = halves.temperatureC(x < 50 ? left : right, at);
        assertThat(joined).isCloseTo(whole.temperatureC(one, at), within(1e-6));
      }
    }
  }

  // Cells that do not match: what goes over the seam is conserved, the field is the same within
  // 1 % of the rise.
  @Test
  void blocksWithOtherCellsJoinWithoutASeam() {
    ThermalMaterial steel = ThermalMaterial.constant("steel", 40, 7850, 650);
    Block one = plate("one", steel, Frame.WORLD, 0, 100, 2.5);
    Block left = plate("left", steel, Frame.WORLD, 0, 50, 2.5);
    Block right = plate("right", steel, Frame.WORLD, 50, 100, 1.9);
    Simulation whole = new Simulation(HeatModel.builder().block(one).build(), Fineness.NORMAL, 20);
    Simulation halves =
        new Simulation(
            HeatModel.builder()
                .block(left)
                .block(right)
                .link(Links.joined(left, Side.X_HIGH, right, Side.X_LOW, 0.1))
                .build(),
            Fineness.NORMAL,
            20);
    MovingSource bead = bead(2500, new Vec3(10, 0, 0), new Vec3(30, 0, 0), DOWN);
    whole.strike(bead);
    halves.strike(bead);
    whole.advanceTo(40);
    halves.advanceTo(40);
    for (double x = 30; x < 90; x += 9) {
      Vec3 at = new Vec3(x, 4, -3);
      double rise = whole.temperatureC(one, at) - 20;
      double joined = halves.temperatureC(x < 50 ? left : right, at) - 20;
      assertThat(joined).as("x = %s", x).isCloseTo(rise, within(0.01 * rise));
    }
    assertThat(halves.balance().imbalance()).isLessThan(1e-9);
  }

  // A thin tube (mean radius 100, wall 2) unrolled is a plate of 2 pi 100 that meets itself; far
  // from the back the plate's edges are not felt. 1 % of the rise.
  @Test
  void thinTubeUnrolledEqualsPlate() {
    ThermalMaterial steel = ThermalMaterial.constant("steel", 40, 7850, 650);
    int around = 240;
    double width = 2 * Math.PI * 100;
    double[] length = Grading.graded(0, 160, List.of(new Grading.Zone(30, 130)), 2.5, 1.2, 6);
    Block tube =
        new Block(
            "tube",
            steel,
            Frame.WORLD,
            new CylinderGrid(new double[] {99, 100, 101}, around, length));
    Block plate =
        new Block(
            "plate",
            steel,
            Frame.WORLD,
            new CartesianGrid(
                length,
                Grading.uniform(-width / 2, width / 2, width / around),
                new double[] {-1, 0, 1}));
    Simulation round =
        new Simulation(
            HeatModel.builder().block(tube).faces(new FixedFilm(15, 0)).build(),
            Fineness.NORMAL,
            20);
    Simulation flat =
        new Simulation(
            HeatModel.builder()
                .block(plate)
                .face(plate, p -> Math.abs(p.normal().y()) < 0.5, new FixedFilm(15, 0))
                .build(),
            Fineness.NORMAL,
            20);
    UniformBox box = new UniformBox(8, 8, 3);
    round.strike(
        MovingSource.along(
            "bead",
            800,
            0,
            TravelPath.straight(new Vec3(101, 0, 40), new Vec3(101, 0, 120), new Vec3(-1, 0, 0)),
            5,
            box));
    flat.strike(
        MovingSource.along(
            "bead",
            800,
            0,
            TravelPath.straight(new Vec3(40, 0, 1), new Vec3(120, 0, 1), DOWN),
            5,
            box));
    round.advanceTo(40);
    flat.advanceTo(40);
    for (double s : new double[] {0, 12, 25, 40}) {
      double a = s / 100;
      double onTube =
          round.temperatureC(tube, new Vec3(100 * Math.cos(a), 100 * Math.sin(a), 80)) - 20;
      double onPlate = flat.temperatureC(plate, new Vec3(80, s, 0)) - 20;
      assertThat(onTube).as("at %s mm", s).isCloseTo(onPlate, within(0.01 * onPlate));
    }
  }

  private static List<Double> leaningTee(Vec3 turnX, Vec3 turnY, Vec3 shift) {
    Frame world = Frame.of(shift, turnX, turnY);
    ThermalMaterial metal = HeatMaterials.carbonSteel();
    Block base = plate("base", metal, world, 0, 60, 3);
    Frame standing =
        new Frame(world.toWorld(new Vec3(0, -3, 0)), world.ex(), world.ey(), world.ez());
    Block web =
        new Block(
            "web",
            metal,
            standing,
            new CartesianGrid(
                Grading.uniform(0, 60, 3), Grading.uniform(0, 6, 2), Grading.uniform(0, 30, 3)));
    Simulation s =
        new Simulation(
            HeatModel.builder()
                .up(world.ez())
                .block(base)
                .block(web)
                .faces(StillAir.onFlats(60, 0.4))
                .face(base, p -> p.side() == Side.Z_LOW, new HeldBody(600, 15))
                .link(Links.fitted(web, Side.Z_LOW, base, Side.Z_HIGH, 2000, 0.1))
                .build(),
            Fineness.NORMAL,
            20);
    Vec3 from = world.toWorld(new Vec3(10, 3, 0));
    Vec3 to = world.toWorld(new Vec3(50, 3, 0));
    Vec3 into = world.directionToWorld(new Vec3(0, -1, -1));
    s.strike(
        MovingSource.along(
            "fillet",
            2000,
            0,
            TravelPath.straight(from, to, into),
            5,
            new DoubleEllipsoid(4, 8, 5, 5)));
    s.lay(Links.weld(base, web, from, to, 4, 5, 4));
    s.advanceTo(30);
    List<Double> temps = new ArrayList<>();
    for (double x = 6; x < 60; x += 11) {
      temps.add(s.temperatureC(base, world.toWorld(new Vec3(x, 11, -2))));
      temps.add(s.temperatureC(web, world.toWorld(new Vec3(x, 1, 12))));
    }
    assertThat(s.balance().imbalance()).isLessThan(1e-9);
    return temps;
  }

  // Turning weldment and gravity together changes nothing but rounding.
  @Test
  void turningWithGravityChangesNothing() {
    List<Double> upright = leaningTee(Vec3.X, Vec3.Y, Vec3.ZERO);
    List<Double> leaning =
        leaningTee(new Vec3(1, 2, -0.5), new Vec3(-0.3, 1, 2), new Vec3(400, -70, 33));
    for (int n = 0; n < upright.size(); n++) {
      assertThat(leaning.get(n)).isCloseTo(upright.get(n), within(1e-6));
    }
  }

  // Power, conductivity, heat capacity, film, contact and emissivity doubled: same temperatures.
  @Test
  void doublingEverythingChangesNothing() {
    List<Double> once = scaled(1);
    List<Double> twice = scaled(2);
    for (int n = 0; n < once.size(); n++) {
      assertThat(twice.get(n)).isCloseTo(once.get(n), within(1e-6));
    }
  }

  private static List<Double> scaled(double factor) {
    ThermalMaterial metal =
        ThermalMaterial.of(
            "metal",
            7850,
            t -> factor * (450 + 0.3 * t),
            t -> factor * (50 - 0.02 * Math.min(t, 1000)));
    Block base = plate("base", metal, Frame.WORLD, 0, 60, 3);
    Block cover = plate("cover", metal, Frame.withZ(new Vec3(0, 0, 6), Vec3.Z), 0, 60, 3);
    Simulation s =
        new Simulation(
            HeatModel.builder()
                .block(base)
                .block(cover)
                .faces(new FixedFilm(12 * factor, 0.4 * factor))
                .face(base, p -> p.side() == Side.Z_LOW, new HeldBody(600 * factor, 15))
                .link(Links.fitted(cover, Side.Z_LOW, base, Side.Z_HIGH, 2000 * factor, 0.1))
                .build(),
            Fineness.NORMAL,
            20);
    s.strike(bead(1500 * factor, new Vec3(10, 20, 0), new Vec3(50, 20, 0), new Vec3(0, -1, 0)));
    s.advanceTo(40);
    List<Double> temps = new ArrayList<>();
    for (double x = 5; x < 60; x += 10) {
      temps.add(s.temperatureC(base, new Vec3(x, 5, -3)));
      temps.add(s.temperatureC(cover, new Vec3(x, 5, 3)));
    }
    return temps;
  }

  // Random assemblies of plates and tubes with all kinds of faces and links: in = stored + lost to
  // 1e-9 of the energy (asked: 0.1 %), in = asked to 1e-9.
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void energyIsKeptInRandomAssemblies(long seed) {
    Random random = new Random(seed);
    ThermalMaterial[] metals = {
      HeatMaterials.carbonSteel(), HeatMaterials.stainless(), HeatMaterials.aluminium6xxx()
    };
    HeatModel.Builder builder =
        HeatModel.builder()
            .ambientC(5 + 30 * random.nextDouble())
            .faces(StillAir.onFlats(50 + 100 * random.nextDouble(), random.nextDouble()));
    Block base =
        plate("base", metals[random.nextInt(3)], Frame.WORLD, 0, 80, 3 + random.nextInt(3));
    builder.block(base);
    Frame above =
        Frame.of(
            new Vec3(10 + 10 * random.nextDouble(), 0, 6),
            new Vec3(1, 0.3 * random.nextDouble(), 0),
            Vec3.Y);
    Block second = plate("second", metals[random.nextInt(3)], above, 0, 40, 4);
    builder.block(second);
    builder.link(
        random.nextBoolean()
            ? Links.fitted(
                second, Side.Z_LOW, base, Side.Z_HIGH, 100 + 4000 * random.nextDouble(), 0.1)
            : Links.gap(second, Side.Z_LOW, base, Side.Z_HIGH, new LinkLaw.AirGap(0.8, 0.6), 1));
    Block tube =
        new Block(
            "tube",
            metals[random.nextInt(3)],
            Frame.withZ(new Vec3(65, 0, 0), Vec3.Z),
            new CylinderGrid(new double[] {0, 3, 6, 9}, 10, Grading.uniform(0, 40, 5)));
    builder.block(tube);
    builder.link(Links.fitted(tube, Side.Z_LOW, base, Side.Z_HIGH, 1500, 0.1));
    builder.sink(new Sink(base, p -> p.side() == Side.Y_LOW, new HeldBody(800, 15), 3.3, 17));
    Simulation s = new Simulation(builder.build(), Fineness.COARSE, 20);
    s.strike(
        bead(1000 + 1500 * random.nextDouble(), new Vec3(5, 14, 0), new Vec3(50, 14, 0), DOWN));
    s.lay(Links.weld(base, second, new Vec3(20, 15, 0), new Vec3(40, 15, 0), 4, 5, 7));
    s.advanceTo(120);
    EnergyBalance balance = s.balance();
    assertThat(balance.inJ()).isCloseTo(balance.askedJ(), within(1e-9 * balance.askedJ()));
    assertThat(balance.imbalance()).isLessThan(1e-9);
    assertThat(balance.toBodiesJ()).isPositive();
    assertThat(s.hottestC()).isGreaterThan(30);
  }

  // Same input, same bits.
  @Test
  void runsAreReproducible() {
    assertThat(scaled(1)).isEqualTo(scaled(1));
  }

  // Weld metal conducts from the moment it is laid, not before.
  @Test
  void weldMetalConductsFromItsTime() {
    ThermalMaterial steel = HeatMaterials.carbonSteel();
    Block base = plate("base", steel, Frame.WORLD, 0, 60, 3);
    Block apart = plate("apart", steel, Frame.withZ(new Vec3(0, 0, 8), Vec3.Z), 0, 60, 3);
    Simulation s =
        new Simulation(HeatModel.builder().block(base).block(apart).build(), Fineness.NORMAL, 20);
    s.startAt(base, p -> 300);
    s.lay(Links.weld(base, apart, new Vec3(10, 20, 1), new Vec3(50, 20, 1), 4, 4, 30));
    Vec3 there = new Vec3(30, 19, 5);
    s.advanceTo(29);
    assertThat(s.temperatureC(apart, there)).isCloseTo(20, within(1e-9));
    s.advanceTo(60);
    assertThat(s.temperatureC(apart, there)).isGreaterThan(60);
    assertThat(s.balance().imbalance()).isLessThan(1e-9);
  }

  @Test
  void aWatcherMayStopIt() {
    Block base = plate("base", HeatMaterials.carbonSteel(), Frame.WORLD, 0, 60, 3);
    Simulation s = new Simulation(HeatModel.builder().block(base).build(), Fineness.NORMAL, 20);
    s.strike(bead(1500, new Vec3(10, 0, 0), new Vec3(50, 0, 0), DOWN));
    s.watch(t -> t < 3);
    org.assertj.core.api.Assertions.assertThatThrownBy(() -> s.advanceTo(8))
        .isInstanceOf(Progress.StoppedException.class);
    assertThat(s.timeS()).isBetween(3.0, 4.0);
  }
}
