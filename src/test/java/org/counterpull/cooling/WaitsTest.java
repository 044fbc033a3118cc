package org.counterpull.cooling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.counterpull.cooling.FourDigits.assertPrinted;

import org.counterpull.cooling.LumpedCooling.Body;
import org.counterpull.cooling.SurfaceHeatTransfer.Face;
import org.counterpull.cooling.SurfaceHeatTransfer.Surroundings;
import org.counterpull.material.Metal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WaitsTest {
  private static final Conductor WARM_STEEL = new Conductor(0.045, 0.0039);

  /** Holman table 7-2 (from memory), L 0.1 m, air 20 C; radiation 0.8 and 0.3; to four digits. */
  @ParameterizedTest
  @CsvSource({
    "100, 7.552, 7.020, 3.138, 6.806, 2.552",
    "200, 9.249, 8.598, 3.843, 10.77, 4.039",
    "300, 10.33, 9.602, 4.292, 16.29, 6.107",
    "500, 11.82, 10.99, 4.911, 33.07, 12.40"
  })
  void surfaces(double c, double vertical, double up, double down, double scale, double bright) {
    assertPrinted(SurfaceHeatTransfer.convectionWPerM2K(Face.VERTICAL, c - 20, 100), vertical);
    assertPrinted(SurfaceHeatTransfer.convectionWPerM2K(Face.UPWARD, c - 20, 100), up);
    assertPrinted(SurfaceHeatTransfer.convectionWPerM2K(Face.DOWNWARD, c - 20, 100), down);
    assertPrinted(SurfaceHeatTransfer.radiationWPerM2K(0.8, c, 20), scale);
    assertPrinted(SurfaceHeatTransfer.radiationWPerM2K(0.3, c, 20), bright);
    assertThat(air(0.8).filmWPerM2K(c)).isCloseTo(vertical + scale, within(0.0105));
  }

  /** Incropera (from memory), 1 kg, c 500, h A 1.0 W/K, 300 to 150, air 20: 383.6 s. */
  @Test
  void lumpedWithConstantFilm() {
    assertPrinted(LumpedCooling.constantFilmS(500, 1.0, 300, 150, 20), 383.6);
  }

  /** Independent integration: vertical-plate film L 0.1 m, EN properties; to four digits. */
  @ParameterizedTest
  @CsvSource({
    "100, 60, 10, CARBON_STEEL, 0.8, 300, 150, 611.2",
    "100, 60, 10, CARBON_STEEL, 0.8, 400, 150, 793.9",
    "150, 100, 6, CARBON_STEEL, 0.8, 250, 100, 659.8",
    "50, 50, 20, CARBON_STEEL, 0.8, 350, 150, 1005",
    "100, 60, 10, ALUMINIUM_6XXX, 0.2, 200, 60, 1615",
    "100, 60, 10, STAINLESS_STEEL, 0.4, 300, 150, 789.3"
  })
  void lumpedBlocks(
      double a, double b, double c, Metal metal, double eps, double from, double to, double s) {
    Body body = new Body(metal, a * b * c, 2 * (a * b + b * c + c * a));
    assertPrinted(LumpedCooling.of(body, air(eps), from, to).value(), s);
    assertThat(LumpedCooling.of(body, air(eps), from, to).inRange()).isTrue();
  }

  /** By hand: 60 kJ into 2.0 kg of steel at c 500 is 60.0 K; steady 704 W over 1.0 W/K is 704 K. */
  @Test
  void meanRises() {
    double volumeMm3 = 2.0 / 7850 * 1e9;
    double c = Metal.CARBON_STEEL.specificHeatJPerKgK(100);
    assertThat(new Body(Metal.CARBON_STEEL, volumeMm3, 1).meanRiseK(60e3, 100))
        .isCloseTo(60e3 / (2.0 * c), within(1e-9));
    assertPrinted(LumpedCooling.steadyRiseK(0.8 * 22 * 160, 0.25, 1.0), 704.0);
    assertThat(LumpedCooling.allowedDuty(0.8 * 22 * 160, 704, 1.0)).isCloseTo(0.25, within(1e-9));
  }

  @Test
  void neverBelowAmbient() {
    Body body = new Body(Metal.CARBON_STEEL, 60000, 15200);
    assertThatThrownBy(() -> LumpedCooling.seconds(body, air(0.8), 300, 20))
        .hasMessage("target over ambient is 0 K: it must be a finite number above 0");
    assertThat(LumpedCooling.seconds(body, air(0.8), 100, 150)).isZero();
    Body block = new Body(Metal.STAINLESS_STEEL, 1e9, 6e6);
    assertThat(LumpedCooling.of(block, air(0.8), 600, 150).inRange()).isFalse();
  }

  /** Carslaw and Jaeger, bar 25 x 6, 30 kJ, h 20 W/m2K; to four digits. */
  @Test
  void bar() {
    BarCooling bar = new BarCooling(new Conductor(0.045, 0.004082), 150, 62, 20);
    assertPrinted(bar.lossPerS(), 0.002025);
    assertPrinted(bar.finLengthMm(), 73.78);
    assertPrinted(bar.riseK(30e3, 0, 30), 715.2);
    assertPrinted(bar.riseFromEndK(30e3, 0, 30), 1430);
    assertPrinted(bar.riseK(30e3, 0, 120), 298.0);
    assertPrinted(bar.riseK(30e3, 50, 60), 185.0);
    assertPrinted(bar.riseK(30e3, 50, 120), 185.8);
    assertPrinted(bar.riseK(30e3, 100, 120), 45.03);
    assertPrinted(bar.peakRiseK(30e3, 50), 195.1);
    assertThat(bar.peakTimeS(50)).isCloseTo(84.5, within(0.05));
    assertPrinted(bar.riseInFiniteBarK(30e3, 200, 100, 100, 120), 298.3);
    assertPrinted(bar.riseInFiniteBarK(30e3, 200, 100, 0, 120), 90.06);
    assertPrinted(bar.mixedRiseK(30e3, 200, 120), 192.1);
    assertPrinted(bar.steadyRatio(150, 100), 0.3189);
    assertThat(bar.distanceForPeakMm(30e3, 195.1)).isCloseTo(50, within(0.02));
  }

  /** The same bar without loss: 237.1 K at 113.4 s. */
  @Test
  void barWithoutLoss() {
    BarCooling bar = new BarCooling(new Conductor(0.045, 0.004082), 150, 62, 0);
    assertPrinted(bar.peakRiseK(30e3, 50), 237.1);
    assertPrinted(bar.peakTimeS(50), 113.4);
  }

  /** Rykalin (from memory), wide plate, h 12 W/m2K each face; to four digits. */
  @ParameterizedTest
  @CsvSource({
    "600, 6, 130, 184.0, 268.3",
    "600, 6, 230, 73.69, 85.72",
    "1000, 10, 130, 207.8, 268.3",
    "800, 10, 80, 309.7, 453.4"
  })
  void widePlate(double q, double d, double rise, double wait, double withoutLoss) {
    assertPrinted(PlateCooling.thinS(q, WARM_STEEL, d, rise, 12), wait);
    assertPrinted(PlateCooling.thinWithoutLossS(q, WARM_STEEL, d, rise), withoutLoss);
  }

  /**
   * Rykalin, lambda 0.040, rc 0.0044, Q 1000, d 10, to 150 C from 20: thin 267.5, thick 30.61 s.
   */
  @Test
  void thinAndThickWait() {
    Conductor metal = new Conductor(0.040, 0.0044);
    assertPrinted(PlateCooling.thinWithoutLossS(1000, metal, 10, 130), 267.5);
    assertPrinted(PlateCooling.thickS(1000, metal, 130), 30.61);
    assertThat(PlateCooling.withBodyS(30, 600)).isEqualTo(600);
  }

  /** Superposition, 3 kJ, 20 s, five shots: thick 17.34 (limit 25.73), plate 100.9, bar 307.8 K. */
  @Test
  void accumulation() {
    assertPrinted(Accumulation.onThickK(3000, WARM_STEEL, 20, 5), 17.34);
    assertThat(Accumulation.onThickK(3000, WARM_STEEL, 20, 1_000_000))
        .isCloseTo(25.73, within(0.03));
    assertPrinted(Accumulation.onPlateK(3000, WARM_STEEL, 6, 20, 5), 100.9);
    assertPrinted(Accumulation.onBarK(3000, new BarCooling(WARM_STEEL, 150, 62, 0), 20, 5), 307.8);
  }

  private static Surroundings air(double emissivity) {
    return new Surroundings(Face.VERTICAL, 100, emissivity, 20);
  }
}
