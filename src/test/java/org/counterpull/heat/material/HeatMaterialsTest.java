package org.counterpull.heat.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HeatMaterialsTest {

  // EN 1993-1-2, 3.4.1.2 and 3.4.1.3; printed to 4 digits, half a unit of the last.
  @ParameterizedTest
  @CsvSource({
    "20, 439.8, 53.33",
    "100, 487.6, 50.67",
    "300, 564.7, 44.01",
    "600, 760.2, 34.02",
    "800, 803.3, 27.30",
    "900, 650.0, 27.30",
    "1200, 650.0, 27.30"
  })
  void carbonSteelByEn1993(double tempC, double c, double k) {
    assertThat(CarbonSteelHeat.specificHeatJPerKgK(tempC)).isCloseTo(c, within(0.05));
    assertThat(CarbonSteelHeat.conductivityWPerMK(tempC)).isCloseTo(k, within(0.005));
  }

  // Integral of the same law from 20 C, kJ/kg, printed to 4 digits: exact through the 735 C peak.
  @ParameterizedTest
  @CsvSource({
    "100, 37.21, 0.005", "200, 88.19, 0.005", "300, 142.9, 0.05", "500, 264.7, 0.05",
    "600, 335.7, 0.05", "735, 475.4, 0.05", "900, 632.1, 0.05", "1200, 827.1, 0.05"
  })
  void carbonSteelEnthalpyFrom20(double tempC, double kJPerKg, double half) {
    ThermalMaterial steel = HeatMaterials.carbonSteel();
    double jPerMm3 = steel.enthalpyJPerMm3(tempC) - steel.enthalpyJPerMm3(20);
    assertThat(jPerMm3 / 7850 * 1e6).isCloseTo(kJPerKg, within(half));
  }

  // EN 1993-1-2 Annex C; printed to 4 digits.
  @ParameterizedTest
  @CsvSource({
    "20, 455.5, 14.85",
    "200, 495.4, 17.14",
    "600, 542.2, 22.22",
    "1000, 573.0, 27.30",
    "1200, 598.5, 29.84"
  })
  void stainlessByEn1993AnnexC(double tempC, double c, double k) {
    assertThat(StainlessHeat.specificHeatJPerKgK(tempC)).isCloseTo(c, within(0.05));
    assertThat(StainlessHeat.conductivityWPerMK(tempC)).isCloseTo(k, within(0.005));
  }

  // EN 1999-1-2, 3.3; printed to 4 digits (c to a unit from 300 C on).
  @ParameterizedTest
  @CsvSource({"20, 911.2, 191.4, 142.0", "200, 985.0, 204.0, 160.0", "500, 1108, 225.0, 190.0"})
  void aluminiumByEn1999(double tempC, double c, double k6, double k5) {
    assertThat(AluminiumHeat.specificHeatJPerKgK(tempC)).isCloseTo(c, within(0.05));
    assertThat(AluminiumHeat.conductivity6xxxWPerMK(tempC)).isCloseTo(k6, within(0.05));
    assertThat(AluminiumHeat.conductivity5xxxWPerMK(tempC)).isCloseTo(k5, within(0.05));
  }

  // melting.csv: 270 kJ/kg over 1450 to 1500 C on top of 650 J/kgK; exact but for table ends.
  @Test
  void latentHeatOfCarbonSteelIsInTheEnthalpy() {
    ThermalMaterial steel = HeatMaterials.carbonSteel();
    double kJPerKg = (steel.enthalpyJPerMm3(1550) - steel.enthalpyJPerMm3(1400)) / 7850 * 1e6;
    assertThat(kJPerKg).isCloseTo(270 + 0.650 * 150, within(0.1));
    assertThat(steel.conductivityWPerMmK(steel.enthalpyJPerMm3(1600)))
        .isCloseTo(0.060, within(1e-6));
  }

  @ParameterizedTest
  @CsvSource({"-60", "-0.5", "20", "600", "734.9", "1475", "2999", "4000"})
  void temperatureAndEnthalpyAreInverse(double tempC) {
    for (ThermalMaterial material :
        new ThermalMaterial[] {
          HeatMaterials.carbonSteel(), HeatMaterials.stainless(),
          HeatMaterials.aluminium6xxx(), HeatMaterials.aluminium5xxx(),
          ThermalMaterial.constant("constant", 40, 7850, 650)
        }) {
      double back = material.tempC(material.enthalpyJPerMm3(tempC));
      assertThat(back).as(material.name()).isCloseTo(tempC, within(1e-8));
    }
  }

  // A constant material is exact: rho c T and k T.
  @Test
  void constantPropertiesAreStraightLines() {
    ThermalMaterial m = ThermalMaterial.constant("constant", 40, 7850, 650);
    double h = m.enthalpyJPerMm3(777);
    assertThat(h).isCloseTo(777 * 7850 * 650e-9, within(1e-9));
    assertThat(m.theta(h)).isCloseTo(777 * 0.040, within(1e-9));
    assertThat(m.greatestDiffusivityMm2PerS())
        .isCloseTo(40e3 / (7850 * 650e-3) / 1e0, within(1e-6));
  }

  @Test
  void refusesWhatNoMetalHas() {
    assertThatThrownBy(() -> ThermalMaterial.constant("x", -1, 7850, 650))
        .hasMessageContaining("-1.0 W/mK");
    assertThatThrownBy(() -> ThermalMaterial.constant("x", 40, Double.NaN, 650))
        .hasMessageContaining("density");
    assertThatThrownBy(() -> new Melting(1500, 1450, 1, 1)).hasMessageContaining("above");
  }
}
