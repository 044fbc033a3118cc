package org.counterpull.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lame's thick cylinder and the clearances of seals. */
class ThickTubeTest {
  // Derived: micrometres on diameter at 16 and 21 MPa, open ends, printed with one decimal.
  @ParameterizedTest
  @CsvSource({
    "40,50,15.1,19.8",
    "50,60,22.7,29.8",
    "63,75,29.8,39.1",
    "80,95,38.4,50.4",
    "100,120,45.4,59.6"
  })
  void barrelsBreathe(double inside, double outside, double at16, double at21) {
    assertThat(ThickTube.growth(inside, outside, 16).value() * 1000).isCloseTo(at16, within(0.05));
    assertThat(ThickTube.growth(inside, outside, 21).value() * 1000).isCloseTo(at21, within(0.05));
  }

  // A thin tube is the boiler formula: hoop stress p R/t, strain over E.
  @Test
  void aThinTubeIsABoiler() {
    double hoop = ThickTube.hoop(999, 1001, 1).value();
    assertThat(hoop).isCloseTo(500, within(1.0));
    double shrunk = ThickTube.squeeze(999, 1001, 1).value();
    assertThat(shrunk).isCloseTo(1000 * 500 / 206_000.0, within(0.01));
  }

  @Test
  void aStressBeyondYieldIsSaid() {
    assertThat(ThickTube.growth(63, 65, 40).warnings()).hasSize(1);
    assertThatThrownBy(() -> ThickTube.growth(60, 60, 10)).hasMessageContaining("mm");
  }

  // Common practice: 70 Shore up to 500 psi 0.016 in, 90 Shore 1500 to 2000 psi 0.016 in.
  @Test
  void gapsThatSealsBridge() {
    assertThat(ExtrusionGap.of(3, 70).value()).isCloseTo(0.016 * 25.4, within(1e-9));
    assertThat(ExtrusionGap.of(12, 90).value()).isCloseTo(0.016 * 25.4, within(1e-9));
    assertThat(ExtrusionGap.of(25, 90).warnings()).hasSize(1);
  }
}
