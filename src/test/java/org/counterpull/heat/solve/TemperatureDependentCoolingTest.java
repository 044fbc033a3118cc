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
import org.counterpull.heat.face.FaceCondition;
import org.counterpull.heat.face.FixedFilm;
import org.counterpull.heat.face.Insulated;
import org.counterpull.heat.material.HeatMaterials;
import org.counterpull.heat.material.ThermalMaterial;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Time from 800 to 500 C on the centre line of a thin plate of carbon steel with the properties of
 * EN 1993-1-2 and latent heat of 270 kJ/kg over 1450 to 1500 C, against an independent
 * one-dimensional finite-volume run (cells of 0.5 mm). Tolerance 5 %.
 */
class TemperatureDependentCoolingTest {

  @ParameterizedTest
  @CsvSource({
    "500, 4, 24.21, 15.80",
    "500, 6, 10.76, 9.210",
    "1000, 8, 24.21, 18.96",
    "1000, 10, 15.50, 13.54"
  })
  void coolingTime(double lineJPerMm, double d, double withoutLoss, double withLoss) {
    assertThat(fallTime(lineJPerMm, d, new Insulated()))
        .isCloseTo(withoutLoss, within(0.05 * withoutLoss));
    assertThat(fallTime(lineJPerMm, d, new FixedFilm(10, 0.8)))
        .isCloseTo(withLoss, within(0.05 * withLoss));
  }

  /** The heat is put in as a strip at 1700 C, of the width that holds it. */
  static double fallTime(double lineJPerMm, double d, FaceCondition onFaces) {
    ThermalMaterial steel = HeatMaterials.carbonSteel();
    double jPerMm3 = steel.enthalpyJPerMm3(1700) - steel.enthalpyJPerMm3(20);
    double halfWidth = lineJPerMm / d / jPerMm3 / 2;
    int cells = (int) Math.ceil(halfWidth / 0.5);
    double[] strip = Grading.uniform(0, halfWidth, halfWidth / cells);
    double[] rest =
        Grading.graded(halfWidth, 400, List.of(new Grading.Zone(0, 30)), halfWidth / cells, 1.1, 8);
    double[] across = new double[strip.length + rest.length - 1];
    System.arraycopy(strip, 0, across, 0, strip.length);
    System.arraycopy(rest, 0, across, strip.length - 1, rest.length);
    Block plate =
        new Block(
            "plate",
            steel,
            Frame.WORLD,
            new CartesianGrid(new double[] {0, 1}, across, new double[] {0, d}));
    HeatModel model =
        HeatModel.builder()
            .block(plate)
            .face(plate, p -> p.side() == Side.Z_LOW || p.side() == Side.Z_HIGH, onFaces)
            .build();
    Simulation s = new Simulation(model, Fineness.NORMAL, 20);
    s.startAt(plate, at -> at.y() < halfWidth ? 1700 : 20);
    Probe centre = s.probe("centre line", new Vec3(0, 0, d / 2));
    s.advanceUntil(x -> centre.nowC() < 480, 300, 0.5);
    return centre.fallTimeS(800, 500);
  }
}
