package org.counterpull.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class PinClearanceTest {
  // By hand: 17 - 0.314159/pi - 16 - 2 x 0.2 = 17 - 0.1 - 16 - 0.4.
  @Test
  void whatIsLeft() {
    assertThat(PinClearance.of(17, 0.1 * Math.PI, 16, 0.2).value()).isCloseTo(0.5, within(1e-12));
  }

  // By hand: 17 - 16 - 2 x 0.6.
  @Test
  void aPinThatBindsHasLessThanNothing() {
    assertThat(PinClearance.of(17, 0, 16, 0.6).value()).isCloseTo(-0.2, within(1e-12));
  }

  @Test
  void aLooseBoreIsSaid() {
    assertThat(PinClearance.of(17, 0, 16, 0).inRange()).isTrue();
    assertThat(PinClearance.of(25, 0, 16, 0).inRange()).isFalse();
  }

  @Test
  void meaninglessArgumentsAreRefused() {
    assertThatThrownBy(() -> PinClearance.of(0, 0, 16, 0)).hasMessageContaining("bore");
    assertThatThrownBy(() -> PinClearance.of(17, -1, 16, 0)).hasMessageContaining("shrinkage");
    assertThatThrownBy(() -> PinClearance.of(17, 0, 16, -1)).hasMessageContaining("zone");
  }

  // By hand: 8 x 50 x 0.3/(12e-6 x 1000^2) = 120/12.
  @Test
  void aRowBindsTenKelvinLater() {
    assertThat(WarmBow.kelvin(0.3, 50, 1000).value()).isCloseTo(10, within(1e-9));
  }

  @Test
  void aBowNeedsALength() {
    assertThatThrownBy(() -> WarmBow.kelvin(0.3, 50, 0)).hasMessageContaining("length");
  }
}
