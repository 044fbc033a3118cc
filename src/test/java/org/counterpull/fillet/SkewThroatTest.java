package org.counterpull.fillet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Source: from memory, AWS D1.1, Z loss of skewed joints; between 60 and 120 plain geometry. */
class SkewThroatTest {
  // Factors a/z at 60, 75, 90, 105, 120 degrees: 0.8660, 0.7934, 0.7071, 0.6088, 0.5000.
  @ParameterizedTest
  @CsvSource({"60, 8.660", "75, 7.934", "90, 7.071", "105, 6.088", "120, 5.000"})
  void withoutLossFromSixtyTo120(double degrees, double throatMm) {
    assertThat(SkewThroat.of(10, degrees).value()).isCloseTo(throatMm, within(0.0005));
    assertThat(SkewThroat.of(10, degrees).inRange()).isTrue();
  }

  // 10 cos 25 - 3 = 6.063; 10 cos 20 - 6 = 3.397; 4 cos 20 - 6 leaves nothing; under 30 nothing.
  @ParameterizedTest
  @CsvSource({"10, 50, 6.063", "10, 40, 3.397", "4, 40, 0", "10, 25, 0"})
  void narrowCornersLoseTheirRoot(double legMm, double degrees, double throatMm) {
    assertThat(SkewThroat.of(legMm, degrees).value()).isCloseTo(throatMm, within(0.0005));
  }

  @ParameterizedTest
  @CsvSource({"25", "130"})
  void saysWhereItDoesNotHold(double degrees) {
    assertThat(SkewThroat.of(10, degrees).inRange()).isFalse();
  }
}
