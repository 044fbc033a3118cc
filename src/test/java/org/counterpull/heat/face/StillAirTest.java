package org.counterpull.heat.face;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.counterpull.heat.block.Patch;
import org.counterpull.heat.block.Side;
import org.counterpull.heat.block.Vec3;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StillAirTest {

  private static Patch facing(Vec3 normal) {
    return new Patch(0, Side.X_LOW, Vec3.ZERO, normal, 1, 1, List.of());
  }

  private static double film(Vec3 normal, double tempC, double emissivity) {
    return StillAir.onFlats(100, emissivity)
            .at(facing(normal), Vec3.Z, 20)
            .coefficientWPerMm2K(tempC)
        * 1e6;
  }

  // From memory: Holman table 7-2, air at 20 C, L = 0.1 m; recomputed to 4 digits.
  @ParameterizedTest
  @CsvSource({
    "100, 7.552, 7.020, 3.138", "200, 9.249, 8.598, 3.843",
    "300, 10.33, 9.602, 4.292", "500, 11.82, 10.99, 4.911"
  })
  void naturalConvectionByDirection(double tempC, double vertical, double up, double down) {
    double half = vertical >= 10 ? 0.005 : 0.0005;
    assertThat(film(Vec3.X, tempC, 0)).isCloseTo(vertical, within(half));
    assertThat(film(Vec3.Z, tempC, 0)).isCloseTo(up, within(up >= 10 ? 0.005 : 0.0005));
    assertThat(film(Vec3.Z.times(-1), tempC, 0)).isCloseTo(down, within(0.0005));
  }

  // Same source with radiation at 0.8: total on a vertical plate, 4 digits.
  @ParameterizedTest
  @CsvSource({"100, 14.36", "200, 20.02", "300, 26.62", "500, 44.89"})
  void withRadiation(double tempC, double total) {
    assertThat(film(Vec3.X, tempC, 0.8)).isCloseTo(total, within(0.005));
  }

  // Radiation alone: emissivity 0.3 at 100, 200, 300, 500 C, 4 digits.
  @ParameterizedTest
  @CsvSource({
    "100, 2.552, 0.0005",
    "200, 4.039, 0.0005",
    "300, 6.107, 0.0005",
    "500, 12.40, 0.005"
  })
  void radiationAlone(double tempC, double expected, double half) {
    double h = new FixedFilm(0, 0.3).at(facing(Vec3.X), Vec3.Z, 20).coefficientWPerMm2K(tempC);
    assertThat(h * 1e6).isCloseTo(expected, within(half));
  }

  @Test
  void coldSurfaceChangesUpAndDown() {
    assertThat(film(Vec3.Z, 0, 0)).isCloseTo(film(Vec3.Z.times(-1), 40, 0), within(1e-12));
  }

  @Test
  void cylinderByItsAxis() {
    StillAir lying = new StillAir(100, 0, Optional.of(Vec3.X));
    StillAir upright = new StillAir(100, 0, Optional.of(Vec3.Z));
    double lyingFilm = lying.at(facing(Vec3.Y), Vec3.Z, 20).coefficientWPerMm2K(100) * 1e6;
    double uprightFilm = upright.at(facing(Vec3.Y), Vec3.Z, 20).coefficientWPerMm2K(100) * 1e6;
    assertThat(lyingFilm).isCloseTo(7.020, within(0.0005));
    assertThat(uprightFilm).isCloseTo(7.552, within(0.0005));
  }

  @Test
  void refusesImpossibleSurfaces() {
    assertThatThrownBy(() -> new FixedFilm(10, 1.2)).hasMessageContaining("1.2");
    assertThatThrownBy(() -> new HeldBody(-5, 20)).hasMessageContaining("-5.0 W/m2K");
    assertThatThrownBy(() -> StillAir.onFlats(0, 0.5)).hasMessageContaining("0.0 mm");
  }
}
