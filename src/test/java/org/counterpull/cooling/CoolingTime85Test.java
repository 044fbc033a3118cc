package org.counterpull.cooling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CoolingTime85Test {

  /**
   * EN 1011-2 annex D: thick and thin form, transition thickness with factors, larger; 4 digits.
   */
  @ParameterizedTest
  @CsvSource({
    "1.0, 20, 10, 1, 1, 5.288, 11.36, 14.66, 11.36",
    "1.0, 20, 20, 1, 1, 5.288, 2.841, 14.66, 5.288",
    "1.5, 20, 15, 0.9, 0.9, 7.139, 10.23, 17.95, 10.23",
    "1.5, 100, 15, 0.9, 0.9, 8.968, 14.66, 19.18, 14.66",
    "1.2, 20, 8, 0.67, 0.67, 4.252, 17.13, 16.06, 17.13",
    "1.2, 20, 25, 0.45, 0.67, 4.252, 1.178, 13.16, 4.252",
    "0.5, 20, 4, 1, 1, 2.644, 17.76, 10.37, 17.76",
    "2.0, 150, 30, 0.9, 0.9, 14.12, 8.474, 23.24, 14.12"
  })
  void en1011AnnexD(
      double q,
      double t0,
      double d,
      double f2,
      double f3,
      double thick,
      double thin,
      double dt,
      double larger) {
    FourDigits.assertPrinted(CoolingTime85.thickS(q, t0, f3), thick);
    FourDigits.assertPrinted(CoolingTime85.thinS(q, d, t0, f2), thin);
    FourDigits.assertPrinted(CoolingTime85.transitionMm(q, t0, f2, f3), dt);
    FourDigits.assertPrinted(CoolingTime85.of(q, d, t0, f2, f3).value(), larger);
    assertThat(CoolingTime85.of(q, d, t0, f2, f3).inRange()).isTrue();
  }

  /** EN 1011-2 annex D solved for Q: 10 s, 20 C, F 0.9: 2.101 thick, 0.9888 thin at 10 mm. */
  @Test
  void heatInputForATime() {
    FourDigits.assertPrinted(CoolingTime85.thickHeatFor(10, 20, 0.9), 2.101);
    FourDigits.assertPrinted(CoolingTime85.thinHeatFor(10, 10, 20, 0.9), 0.9888);
  }

  /** Property: the heat input for a time gives that time. */
  @Test
  void inverseUndoesForward() {
    Random random = new Random(3);
    for (int i = 0; i < 200; i++) {
      double d = 3 + 40 * random.nextDouble();
      double t0 = 200 * random.nextDouble();
      double wanted = 3 + 30 * random.nextDouble();
      double q = CoolingTime85.heatInputFor(wanted, d, t0, 0.9, 0.9);
      assertThat(CoolingTime85.of(q, d, t0, 0.9, 0.9).value()).isCloseTo(wanted, within(1e-9));
    }
  }

  @Test
  void hotPreheatIsSaidAndHotterRefused() {
    assertThat(CoolingTime85.of(1, 10, 300, 1, 1).warnings())
        .containsExactly("preheat 300 C is outside -50 to 250 C");
    assertThatThrownBy(() -> CoolingTime85.of(1, 10, 500, 1, 1))
        .hasMessage("preheat is 500 C: it must be below 500 C");
    assertThatThrownBy(() -> CoolingTime85.of(1, -10, 20, 1, 1))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void theSafeSideOfAShape() {
    for (WeldShape shape : WeldShape.values()) {
      assertThat(shape.f2ForHardness()).isLessThanOrEqualTo(shape.f2ForToughness());
      assertThat(shape.f3()).isBetween(0.6, 1.0);
    }
    assertThat(WeldShape.TEE_FILLET.f2ForHardness()).isEqualTo(0.45);
  }
}
