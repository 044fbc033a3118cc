package org.counterpull.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** ISO 286 limits, by table and by rule. */
class IsoFitTest {
  // ISO 286-1, table 1, whole micrometres: the printed values of H7 to H10.
  @ParameterizedTest
  @CsvSource({
    "40,25,39,62,100",
    "50,25,39,62,100",
    "63,30,46,74,120",
    "80,30,46,74,120",
    "100,35,54,87,140"
  })
  void holesOfCylinders(double nominal, double h7, double h8, double h9, double h10) {
    double[] printed = {h7, h8, h9, h10};
    for (int grade = 7; grade <= 10; grade++) {
      ToleranceClass hole = ToleranceClass.parse("H" + grade).orElseThrow();
      assertThat(hole.lowerMm(nominal)).isZero();
      assertThat(hole.upperMm(nominal) * 1000).isCloseTo(printed[grade - 7], within(1e-9));
    }
  }

  // The rule of the standard, i = 0.45 D^(1/3) + 0.001 D, 25 i and 40 i, printed with one decimal.
  @ParameterizedTest
  @CsvSource({"30,50,39.0,62.4", "50,80,46.4,74.2", "80,120,54.3,86.9"})
  void theRule(double above, double upTo, double it8, double it9) {
    assertThat(ToleranceGrade.byRuleMm(8, above, upTo) * 1000).isCloseTo(it8, within(0.05));
    assertThat(ToleranceGrade.byRuleMm(9, above, upTo) * 1000).isCloseTo(it9, within(0.05));
  }

  // Every row of the table lies within its rounding of the rule: 5 % and half a micrometre.
  @Test
  void theTableFollowsTheRule() {
    double[] steps = {3, 6, 10, 18, 30, 50, 80, 120, 180, 250, 315, 400, 500};
    for (int s = 1; s < steps.length; s++) {
      for (int grade = ToleranceGrade.FINEST; grade <= ToleranceGrade.COARSEST; grade++) {
        double rule = ToleranceGrade.byRuleMm(grade, steps[s - 1], steps[s]);
        assertThat(ToleranceGrade.of(grade, steps[s]).value())
            .as("IT%d up to %.0f", grade, steps[s])
            .isCloseTo(rule, within(0.05 * rule + 0.0005));
      }
    }
  }

  // ISO 286-2: 50 f7 is -25 to -50, 50 h6 0 to -16, 40 d9 -80 to -142 micrometres.
  @ParameterizedTest
  @CsvSource({"f7,50,-25,-50", "h6,50,0,-16", "d9,40,-80,-142", "g6,25,-7,-20"})
  void shafts(String name, double nominal, double upper, double lower) {
    ToleranceClass shaft = ToleranceClass.parse(name).orElseThrow();
    assertThat(shaft.upperMm(nominal) * 1000).isCloseTo(upper, within(1e-9));
    assertThat(shaft.lowerMm(nominal) * 1000).isCloseTo(lower, within(1e-9));
  }

  @Test
  void whatIsNotKnownIsNotGuessed() {
    assertThat(ToleranceClass.parse("JS7")).isEmpty();
    assertThat(ToleranceClass.parse("H12")).isEmpty();
    assertThat(ToleranceGrade.of(8, 600).warnings()).hasSize(1);
    assertThatThrownBy(() -> ToleranceGrade.of(8, -1)).hasMessageContaining("mm");
  }
}
