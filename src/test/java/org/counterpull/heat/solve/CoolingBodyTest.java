package org.counterpull.heat.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.counterpull.heat.block.Block;
import org.counterpull.heat.block.CartesianGrid;
import org.counterpull.heat.block.CylinderGrid;
import org.counterpull.heat.block.Frame;
import org.counterpull.heat.block.Grading;
import org.counterpull.heat.block.Side;
import org.counterpull.heat.block.Vec3;
import org.counterpull.heat.face.FixedFilm;
import org.counterpull.heat.face.HeldBody;
import org.counterpull.heat.face.Insulated;
import org.counterpull.heat.face.StillAir;
import org.counterpull.heat.material.HeatMaterials;
import org.counterpull.heat.material.ThermalMaterial;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bodies that cool as a whole, and steady states (Incropera; Carslaw and Jaeger). */
class CoolingBodyTest {

  // Integrated lumped equation: vertical-plate correlation with L = 0.1 m on all faces and
  // radiation; 3 %. Steel at 0.8, aluminium at 0.2, stainless at 0.4.
  @ParameterizedTest
  @CsvSource({
    "steel, 100, 60, 10, 0.8, 300, 150, 611.2",
    "steel, 100, 60, 10, 0.8, 400, 150, 793.9",
    "steel, 150, 100, 6, 0.8, 250, 100, 659.8",
    "steel, 50, 50, 20, 0.8, 350, 150, 1005",
    "aluminium, 100, 60, 10, 0.2, 200, 60, 1615",
    "stainless, 100, 60, 10, 0.4, 300, 150, 789.3"
  })
  void lumpedBlocks(
      String metal, double x, double y, double z, double eps, double fromC, double toC, double s) {
    double[] size = {x, y, z};
    assertThat(lumpedBlockS(metal, size, eps, fromC, toC)).isCloseTo(s, within(0.03 * s));
  }

  static double lumpedBlockS(String metal, double[] sizeMm, double eps, double fromC, double toC) {
    double x = sizeMm[0];
    double y = sizeMm[1];
    double z = sizeMm[2];
    ThermalMaterial material =
        switch (metal) {
          case "steel" -> HeatMaterials.carbonSteel();
          case "aluminium" -> HeatMaterials.aluminium6xxx();
          default -> HeatMaterials.stainless();
        };
    CartesianGrid grid =
        new CartesianGrid(
            Grading.uniform(0, x, 10), Grading.uniform(0, y, 10), Grading.uniform(0, z, 5));
    HeatModel model =
        HeatModel.builder()
            .block(new Block("block", material, Frame.WORLD, grid))
            .faces(new StillAir(100, eps, Optional.of(Vec3.Z)))
            .build();
    Simulation simulation = new Simulation(model, Fineness.NORMAL, fromC);
    Vec3 middle = new Vec3(x / 2, y / 2, z / 2);
    Block block = model.blocks().get(0);
    assertThat(simulation.advanceUntil(m -> m.temperatureC(block, middle) <= toC, 3000, 2))
        .isTrue();
    assertThat(simulation.balance().imbalance()).isLessThan(1e-9);
    return simulation.timeS();
  }

  // 1 kg, 500 J/kgK, hA = 1.0 W/K, 300 to 150 C in air of 20 C: 383.6 s, 4 digits; 0.5 %.
  @Test
  void lumpedWithConstantFilm() {
    double side = Math.cbrt(1e9 / 7850);
    ThermalMaterial material = ThermalMaterial.constant("conducts well", 5000, 7850, 500);
    double[] edges = Grading.uniform(0, side, side / 4);
    HeatModel model =
        HeatModel.builder()
            .block(new Block("cube", material, Frame.WORLD, new CartesianGrid(edges, edges, edges)))
            .faces(new FixedFilm(1e6 / (6 * side * side), 0))
            .build();
    Simulation simulation = new Simulation(model, Fineness.NORMAL, 300);
    Block cube = model.blocks().get(0);
    Probe probe = simulation.probe("middle", new Vec3(side / 2, side / 2, side / 2));
    simulation.advanceUntil(m -> m.temperatureC(cube, cube.first()) < 140, 1000, 5);
    double reached = probe.timeAboveS(150);
    assertThat(reached).isCloseTo(383.6, within(0.005 * 383.6));
  }

  // Fin from a held end, 150 mm of bar 25 x 6 with 20 W/m2K: 0.3189 at 100 mm, 4 digits; 1 %.
  @Test
  void steadyFin() {
    assertThat(finShare()).isCloseTo(0.3189, within(0.01 * 0.3189));
  }

  static double finShare() {
    ThermalMaterial steel = ThermalMaterial.constant("bar", 45, 4082, 1000);
    Block bar =
        new Block(
            "bar",
            steel,
            Frame.WORLD,
            new CartesianGrid(
                Grading.uniform(0, 150, 2.5), new double[] {0, 25}, new double[] {0, 6}));
    HeatModel model =
        HeatModel.builder()
            .ambientC(0)
            .block(bar)
            .faces(new FixedFilm(20, 0))
            .face(bar, p -> p.side() == Side.X_LOW, new HeldBody(1e7, 100))
            .face(bar, p -> p.side() == Side.X_HIGH, new Insulated())
            .build();
    Simulation s = new Simulation(model, Fineness.NORMAL, 0);
    s.advanceTo(6000);
    assertThat(s.balance().imbalance()).isLessThan(1e-9);
    return s.temperatureC(bar, new Vec3(100, 12.5, 3)) / 100;
  }

  // Wall of a tube 25 to 50, bore held at 100, outside at 0: steady T = 100 ln(50/r)/ln 2, exact in
  // the cells' middles for cylindrical cells whatever their number.
  @Test
  void cylinderWallIsLogarithmic() {
    for (double r = 27.5; r < 50; r += 5) {
      double exact = 100 * Math.log(50 / r) / Math.log(2);
      assertThat(cylinderWallC(r)).isCloseTo(exact, within(0.05));
    }
  }

  static double cylinderWallC(double r) {
    ThermalMaterial steel = ThermalMaterial.constant("steel", 45, 7850, 500);
    Block tube =
        new Block(
            "tube",
            steel,
            Frame.WORLD,
            new CylinderGrid(Grading.uniform(25, 50, 5), 8, new double[] {0, 10}));
    HeatModel model =
        HeatModel.builder()
            .ambientC(0)
            .block(tube)
            .face(tube, p -> p.side() == Side.INNER, new HeldBody(1e9, 100))
            .face(tube, p -> p.side() == Side.OUTER, new HeldBody(1e9, 0))
            .build();
    Simulation s = new Simulation(model, Fineness.FINE, 0);
    s.advanceTo(2000);
    return s.temperatureC(tube, new Vec3(0, r, 5));
  }

  // Long solid bar of radius R, film so that Bi = 1, Fo = 1: from memory (Heisler; Incropera table
  // 5.1), zeta1 = 1.2558, C1 = 1.2071: centre C1 exp(-zeta1^2) = 0.2494; 2 %.
  @Test
  void solidRoundBarInAFilm() {
    double r = 20;
    ThermalMaterial steel = ThermalMaterial.constant("steel", 40, 8000, 500);
    Block bar =
        new Block(
            "bar",
            steel,
            Frame.WORLD,
            new CylinderGrid(Grading.uniform(0, r, 2.5), 8, new double[] {0, 10}));
    HeatModel model =
        HeatModel.builder()
            .ambientC(0)
            .block(bar)
            .face(bar, p -> p.side() == Side.OUTER, new HeldBody(40 / 0.020, 0))
            .build();
    Simulation s = new Simulation(model, Fineness.FINE, 100);
    s.advanceTo(r * r / 10);
    assertThat(s.temperatureC(bar, new Vec3(0, 0, 5)) / 100)
        .isCloseTo(0.2494, within(0.02 * 0.2494));
  }

  // A wet rag takes heat only while it lies there; what it takes is in its own account.
  @Test
  void sinkWorksForItsTime() {
    Block plate =
        new Block(
            "plate",
            HeatMaterials.carbonSteel(),
            Frame.WORLD,
            new CartesianGrid(
                Grading.uniform(0, 60, 5), Grading.uniform(0, 40, 5), Grading.uniform(0, 6, 3)));
    HeatModel.Builder builder = HeatModel.builder().block(plate).faces(new FixedFilm(10, 0));
    Sink rag = new Sink(plate, p -> p.side() == Side.X_LOW, new HeldBody(500, 20), 100, 200);
    Simulation with = new Simulation(builder.sink(rag).build(), Fineness.NORMAL, 200);
    with.advanceTo(100);
    assertThat(with.balance().toBodiesJ()).isZero();
    double before = with.balance().toAirJ();
    with.advanceTo(200);
    double taken = with.balance().toBodiesJ();
    // 500 W/m2K over 40 x 6 mm at some 150 K for 100 s is 1.8 kJ at most.
    assertThat(taken).isBetween(500.0, 1800.0);
    assertThat(with.balance().toAirJ()).isGreaterThan(before);
    with.advanceTo(300);
    assertThat(with.balance().toBodiesJ()).isEqualTo(taken);
    assertThat(List.of(with.balance().imbalance())).allMatch(i -> i < 1e-9);
  }
}
