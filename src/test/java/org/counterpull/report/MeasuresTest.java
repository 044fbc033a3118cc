package org.counterpull.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.counterpull.quantity.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Quantities as a shop reads them; an inch is 25.4 mm. */
class MeasuresTest {
  private final Measures metric = new Measures(LengthUnit.MM);
  private final Measures inch = new Measures(LengthUnit.IN);

  @ParameterizedTest
  @CsvSource({
    "6.35, 1/4 in, 6.4 mm",
    "38.1, 1-1/2 in, 38.1 mm",
    "914.4, 36 in, 914.4 mm",
    // under an inch and not near a sixteenth: thousandths
    "5, 0.197 in, 5 mm",
    // an inch and more: to the nearest sixteenth
    "100, 3-15/16 in, 100 mm"
  })
  void lengths(double mm, String inches, String millimetres) {
    assertThat(inch.length(mm)).isEqualTo(new Shown(inches, millimetres));
    assertThat(metric.length(mm)).isEqualTo(new Shown(millimetres, inches));
  }

  @Test
  void otherQuantities() {
    assertThat(metric.temperature(150).text()).isEqualTo("150 \u00b0C (302 \u00b0F)");
    // 25.4 kJ/in = 1 kJ/mm
    assertThat(inch.heat(1).text()).isEqualTo("25 kJ/in (1 kJ/mm)");
    // 1 in/min = 0.4233 mm/s: 5 mm/s = 11.8 in/min
    assertThat(metric.travel(5).text()).isEqualTo("5 mm/s (12 in/min)");
    assertThat(metric.mass(1).text()).isEqualTo("1 kg (2.2 lb)");
    // a thousandth of an inch is 0.0254 mm
    assertThat(inch.fine(0.508).text()).isEqualTo("0.020 in (0.51 mm)");
  }

  @ParameterizedTest
  @CsvSource({"45, 45 s", "89.4, 89 s", "130, 2 min", "720, 12 min", "7500, 2 h 05 min"})
  void durations(double seconds, String text) {
    assertThat(Measures.duration(seconds)).isEqualTo(text);
  }
}
