package org.counterpull.heat.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HeatMaterialsTest {

  // EN 1993-1-2, 3.4.1.2, integrated from 20 C, kJ/kg, printed to 4 digits: exact through the 735 C
  // peak.
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
    assertThat(m.greatestDiffusivityMm2PerS()).isCloseTo(0.040 / (7850 * 650e-9), within(1e-6));
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
