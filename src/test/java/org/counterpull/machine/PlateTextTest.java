package org.counterpull.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.counterpull.feeding.ShieldingGas;
import org.counterpull.power.DutyPoint;
import org.counterpull.power.Supply;
import org.counterpull.quantity.QuantityException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlateTextTest {
  @Test
  void dutyPointsAreReadInAnyNumber() {
    assertThat(PlateText.duty("20% at 200 A")).containsExactly(new DutyPoint(200, 20));
    assertThat(PlateText.duty("20 % @ 200A, 60% at 115 A"))
        .containsExactly(new DutyPoint(200, 20), new DutyPoint(115, 60));
  }

  @Test
  void suppliesKnowTheirPhases() {
    assertThat(PlateText.supply("120 V 20 A")).isEqualTo(new Supply(120, 20, 1));
    assertThat(PlateText.supply("400V 16A three-phase")).isEqualTo(new Supply(400, 16, 3));
    assertThat(PlateText.supply("230 V 16 A single-phase")).isEqualTo(new Supply(230, 16, 1));
  }

  @Test
  void gasesAreReadAsTheyStandOnTheBottle() {
    assertThat(PlateText.gas("Ar + 18 % CO2")).isEqualTo(new ShieldingGas(82, 18));
    assertThat(PlateText.gas("ar+18 co2")).isEqualTo(new ShieldingGas(82, 18));
    assertThat(PlateText.gas("CO2")).isEqualTo(ShieldingGas.CO2);
  }

  @Test
  void aBarSideWithoutAUnitTakesTheOthers() {
    BarSection bar = PlateText.bar("1/2 x 2 in");
    assertThat(bar.thicknessMm()).isCloseTo(12.7, within(1e-9));
    assertThat(bar.widthMm()).isCloseTo(50.8, within(1e-9));
    assertThat(PlateText.bar("50 x 10")).isEqualTo(new BarSection(10, 50));
  }

  @ParameterizedTest
  @ValueSource(strings = {"20 at 90", "20%", "at 90 A", ""})
  void whatIsNoDutyCycleIsRefused(String text) {
    assertThatThrownBy(() -> PlateText.duty(text))
        .isInstanceOf(QuantityException.class)
        .hasMessageContaining("is no duty cycle. Try: 20% at 90 A");
  }

  @ParameterizedTest
  @ValueSource(strings = {"Ar + CO2", "60 Ar + 60 CO2", "helium", "Ar + Ar", "air"})
  void whatIsNoShieldingGasIsRefused(String text) {
    assertThatThrownBy(() -> PlateText.gas(text))
        .isInstanceOf(QuantityException.class)
        .hasMessageContaining("is no shielding gas that adds up to 100 %");
  }

  @ParameterizedTest
  @ValueSource(strings = {"120% at 200 A", "20% at 0 A"})
  void aDutyPointOutsideAllSenseIsRefused(String text) {
    assertThatThrownBy(() -> PlateText.duty(text)).isInstanceOf(QuantityException.class);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"5 V 16 A", "230 V 4000 A", "230", "230 V", "16 A 230 V", "230 V 16 A four-phase"})
  void whatIsNoSupplyIsRefused(String text) {
    assertThatThrownBy(() -> PlateText.supply(text)).isInstanceOf(QuantityException.class);
  }
}
