package org.counterpull.heat.solve;

import static org.assertj.core.api.Assertions.assertThat;

import org.counterpull.heat.block.Block;
import org.counterpull.heat.block.CartesianGrid;
import org.counterpull.heat.block.CylinderGrid;
import org.counterpull.heat.block.Frame;
import org.counterpull.heat.block.Grading;
import org.counterpull.heat.block.Grid;
import org.counterpull.heat.block.Vec3;
import org.counterpull.heat.face.FaceCondition;
import org.counterpull.heat.face.FixedFilm;
import org.counterpull.heat.face.HeldBody;
import org.counterpull.heat.material.HeatMaterials;
import org.counterpull.heat.material.ThermalMaterial;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Errors fall with the square of cell size and of step: observed orders, theory 2. */
class ConvergenceTest {
  private static final ThermalMaterial METAL = ThermalMaterial.constant("a = 10", 40, 4000, 1000);

  private static Block block(ThermalMaterial metal, Grid grid) {
    return new Block("body", metal, Frame.WORLD, grid);
  }

  // A cosine decays as exp(-a (pi/L)^2 t): exact; error in the cells' middles.
  private static double errorOfCosine(int cells, boolean graded) {
    double length = 100;
    double[] x = new double[cells + 1];
    for (int i = 0; i <= cells; i++) {
      double part = (double) i / cells;
      // Smoothly graded: cells differ in size by a factor of four.
      x[i] = length * (graded ? part - 0.6 * Math.sin(2 * Math.PI * part) / (2 * Math.PI) : part);
    }
    Block bar = block(METAL, new CartesianGrid(x, new double[] {0, 5}, new double[] {0, 5}));
    HeatModel model = HeatModel.builder().ambientC(0).block(bar).build();
    Simulation s = new Simulation(model, new Fineness(0.1, 1e-6, 5), 0);
    s.startAt(bar, p -> 100 * Math.cos(Math.PI * p.x() / length));
    s.advanceTo(60);
    double decay = Math.exp(-10 * Math.pow(Math.PI / length, 2) * 60);
    double worst = 0;
    for (int p = bar.first(); p < bar.end(); p++) {
      double exact = 100 * decay * Math.cos(Math.PI * bar.centre(p).x() / length);
      worst = Math.max(worst, Math.abs(s.temperatureC(bar, p) - exact));
    }
    return worst;
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void secondOrderInSpace(boolean graded) {
    double coarse = errorOfCosine(20, graded);
    double fine = errorOfCosine(40, graded);
    double finest = errorOfCosine(80, graded);
    assertThat(order(coarse, fine)).isBetween(1.7, 2.4);
    assertThat(order(fine, finest)).isBetween(1.7, 2.4);
  }

  // Cylindrical: a film on the outside of a solid bar, mean temperature against a very fine grid.
  @Test
  void secondOrderAlongTheRadius() {
    double finest = roundMiddle(64);
    double coarse = Math.abs(roundMiddle(4) - finest);
    double fine = Math.abs(roundMiddle(8) - finest);
    double finer = Math.abs(roundMiddle(16) - finest);
    assertThat(order(coarse, fine)).isBetween(1.5, 2.6);
    assertThat(order(fine, finer)).isBetween(1.6, 2.6);
  }

  private static double roundMiddle(int rings) {
    Block bar =
        block(
            METAL, new CylinderGrid(Grading.uniform(0, 20, 20.0 / rings), 3, new double[] {0, 10}));
    HeatModel model =
        HeatModel.builder().ambientC(0).block(bar).faces(new HeldBody(2000, 0)).build();
    Simulation s = new Simulation(model, new Fineness(0.1, 1e-6, 5), 100);
    s.advanceTo(20);
    return s.balance().lostJ();
  }

  // Fixed steps on one grid: Richardson's order from three step lengths, for a linear case and for
  // temperature-dependent steel that radiates.
  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void secondOrderInTime(boolean nonlinear) {
    double h = nonlinear ? 2 : 8;
    double first = stepped(h, nonlinear);
    double second = stepped(h / 2, nonlinear);
    double third = stepped(h / 4, nonlinear);
    assertThat(order(Math.abs(first - second), Math.abs(second - third))).isBetween(1.8, 2.3);
  }

  private static double stepped(double stepS, boolean nonlinear) {
    ThermalMaterial metal = nonlinear ? HeatMaterials.carbonSteel() : METAL;
    FaceCondition outside = nonlinear ? new FixedFilm(10, 0.8) : new FixedFilm(100, 0);
    double[] x = Grading.uniform(0, 60, 3);
    Block bar = block(metal, new CartesianGrid(x, new double[] {0, 6}, new double[] {0, 6}));
    HeatModel model = HeatModel.builder().block(bar).faces(outside).build();
    // A tolerance that every step meets: the steps are then as long as is allowed.
    Simulation s = new Simulation(model, new Fineness(0.1, 1e9, stepS), 20);
    s.startAt(bar, p -> 300 + 200 * Math.cos(Math.PI * p.x() / 60));
    s.begin(stepS);
    s.advanceTo(64);
    return s.temperatureC(bar, new Vec3(10.5, 3, 3));
  }

  private static double order(double coarse, double fine) {
    return Math.log(coarse / fine) / Math.log(2);
  }
}
