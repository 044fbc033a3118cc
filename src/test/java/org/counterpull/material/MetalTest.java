package org.counterpull.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class MetalTest {

  /** EN 1993-1-2, 3.2 and 3.4, to four digits. */
  @ParameterizedTest
  @CsvSource({
    "20, 439.8, 53.33, 0, 15.45",
    "100, 487.6, 50.67, 9.984e-4, 13.24",
    "200, 529.8, 47.34, 2.318e-3, 11.38",
    "300, 564.7, 44.01, 3.718e-3, 9.927",
    "400, 605.9, 40.68, 5.198e-3, 8.553",
    "500, 666.5, 37.35, 6.758e-3, 7.139",
    "600, 760.2, 34.02, 8.398e-3, 5.701",
    "700, 1008, 30.69, 1.012e-2, 3.878",
    "735, 5000, 29.52, 1.074e-2, 0.7522",
    "800, 803.3, 27.30, 1.100e-2, 4.329",
    "900, 650.0, 27.30, 1.180e-2, 5.350",
    "1200, 650.0, 27.30, 1.780e-2, 5.350"
  })
  void en1993CarbonSteel(double c, double heat, double conductivity, double elongation, double a) {
    Metal steel = Metal.CARBON_STEEL;
    fourDigits(steel.specificHeatJPerKgK(c), heat);
    fourDigits(steel.conductivityWPerMK(c), conductivity);
    assertThat(steel.elongation(c)).isCloseTo(elongation, within(elongation * 5e-4 + 1e-12));
    fourDigits(steel.diffusivityMm2PerS(c), a);
  }

  /** EN 1993-1-2, annex C, to four digits. */
  @ParameterizedTest
  @CsvSource({
    "20, 455.5, 14.85, 0",
    "200, 495.4, 17.14, 3.043e-3",
    "600, 542.2, 22.22, 1.069e-2",
    "1000, 573.0, 27.30, 1.916e-2",
    "1200, 598.5, 29.84, 2.355e-2"
  })
  void en1993Stainless(double c, double heat, double conductivity, double elongation) {
    fourDigits(Metal.STAINLESS_STEEL.specificHeatJPerKgK(c), heat);
    fourDigits(Metal.STAINLESS_STEEL.conductivityWPerMK(c), conductivity);
    assertThat(Metal.STAINLESS_STEEL.elongation(c))
        .isCloseTo(elongation, within(elongation * 5e-4 + 1e-12));
  }

  /** EN 1999-1-2, 3.3 (from memory), to four digits. */
  @ParameterizedTest
  @CsvSource({
    "20, 911.2, 191.4, 142.0, 4e-6",
    "100, 944.0, 197.0, 150.0, 1.900e-3",
    "200, 985.0, 204.0, 160.0, 4.450e-3",
    "300, 1026, 211.0, 170.0, 7.200e-3",
    "500, 1108, 225.0, 190.0, 1.330e-2"
  })
  void en1999Aluminium(double c, double heat, double six, double five, double elongation) {
    fourDigits(Metal.ALUMINIUM_6XXX.specificHeatJPerKgK(c), heat);
    fourDigits(Metal.ALUMINIUM_6XXX.conductivityWPerMK(c), six);
    fourDigits(Metal.ALUMINIUM_5XXX.conductivityWPerMK(c), five);
    assertThat(Metal.ALUMINIUM_5XXX.elongation(c)).isCloseTo(elongation, within(5e-7));
  }

  /** Integral of the specific heat of EN 1993-1-2 from 20 C in kJ/kg, to four digits. */
  @ParameterizedTest
  @CsvSource({
    "100, 37.21",
    "200, 88.19",
    "300, 142.9",
    "500, 264.7",
    "600, 335.7",
    "735, 475.4",
    "900, 632.1",
    "1200, 827.1"
  })
  void enthalpyOfCarbonSteel(double c, double enthalpy) {
    fourDigits(new EnthalpyTable(Metal.CARBON_STEEL).enthalpyKJPerKg(c), enthalpy);
  }

  /**
   * Property: temperature from enthalpy undoes enthalpy from temperature, also beyond the table.
   */
  @ParameterizedTest
  @EnumSource(Metal.class)
  void enthalpyRoundTrips(Metal metal) {
    EnthalpyTable table = new EnthalpyTable(metal);
    for (double c = -20; c < 1500; c += 13.7) {
      assertThat(table.temperatureC(table.enthalpyKJPerKg(c))).isCloseTo(c, within(1e-6));
    }
  }

  /** EN 1993-1-2, table 3.1 between rows: 550: 0.625, 0.455; 650: 0.350, 0.220; kp(150) 0.9035. */
  @Test
  void en1993Reduction() {
    assertThat(SteelReduction.yield(550)).isCloseTo(0.625, within(1e-9));
    assertThat(SteelReduction.elasticModulus(550)).isCloseTo(0.455, within(1e-9));
    assertThat(SteelReduction.yield(650)).isCloseTo(0.350, within(1e-9));
    assertThat(SteelReduction.elasticModulus(650)).isCloseTo(0.220, within(1e-9));
    assertThat(SteelReduction.proportionalLimit(150)).isCloseTo(0.9035, within(1e-9));
    assertThat(SteelReduction.yield(20)).isEqualTo(1);
    assertThat(SteelReduction.yield(1300)).isZero();
  }

  @Test
  void beyondTheStandardTheEndValueIsKept() {
    assertThat(Metal.CARBON_STEEL.conductivityWPerMK(1500)).isEqualTo(27.3);
    assertThat(Metal.ALUMINIUM_6XXX.conductivityWPerMK(600)).isEqualTo(225);
  }

  private static void fourDigits(double actual, double printed) {
    double lastDigit = Math.pow(10, Math.floor(Math.log10(printed)) - 3);
    assertThat(actual).isCloseTo(printed, within(0.501 * lastDigit));
  }
}
