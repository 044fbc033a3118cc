package org.counterpull.steel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HazHardnessTest {

  /** Duren 1985, Yurioka 1987, Suzuki BL70S (from memory of each), to four digits. */
  @ParameterizedTest
  @CsvSource({
    "C .15 Si .30 Mn 1.40, 3, 393.9, 365.0, 373.1",
    "C .15 Si .30 Mn 1.40, 5, 348.6, 325.6, 340.0",
    "C .15 Si .30 Mn 1.40, 10, 287.1, 269.1, 286.0",
    "C .15 Si .30 Mn 1.40, 20, 225.7, 231.5, 242.9",
    "S355J2, 5, 380.6, 358.0, 368.5",
    "S355J2, 10, 316.1, 299.3, 316.6",
    "S355J2, 20, 251.6, 253.3, 268.3",
    "A36, 5, 338.8, 258.3, 317.8",
    "A36, 10, 274.3, 215.2, 260.0",
    "A36, 20, 209.8, 191.2, 220.5",
    "S235JR, 5, 282.2, 201.9, 265.7",
    "S235JR, 10, 226.8, 174.8, 216.8",
    "1045, 5, 677.9, 546.8, 640.1",
    "1045, 10, 550.4, 415.2, 549.9",
    "1045, 20, 393.2, 311.7, 428.1",
    "4130, 5, 549.6, 533.5, 529.2",
    "4130, 10, 508.0, 484.8, 481.8",
    "4130, 20, 399.4, 398.8, 403.7",
    "4140, 5, 629.8, 642.1, 638.5",
    "4140, 10, 629.8, 614.6, 621.9",
    "4140, 20, 498.4, 561.4, 573.5"
  })
  void threeMethods(String steel, double t85S, double duren, double yurioka, double suzuki) {
    HazHardness.Estimates hv = HazHardness.estimates(steel(steel), t85S);
    assertThat(hv.durenHV()).isCloseTo(duren, within(0.05));
    assertThat(hv.yuriokaHV()).isCloseTo(yurioka, within(0.05));
    assertThat(hv.suzukiHV()).isCloseTo(suzuki, within(0.05));
  }

  /** From the row above: of 348.6, 325.6 and 340.0 the middle is 340.0, the spread 23.0. */
  @Test
  void medianAndSpread() {
    Composition steel = Composition.parse("C .15 Si .30 Mn 1.40");
    assertThat(HazHardness.of(steel, 5).value()).isCloseTo(340.0, within(0.05));
    assertThat(HazHardness.of(steel, 5).inRange()).isTrue();
    HazHardness.Estimates hv = HazHardness.estimates(steel, 5);
    assertThat(hv.spreadHV()).isCloseTo(23.0, within(0.1));
    assertThat(hv.byMethod().keySet()).containsExactly("duren", "yurioka", "suzuki-bl70s");
  }

  /** A36 at 5 s: 338.8 less 258.3 is a spread of 80.5 HV. */
  @Test
  void aWideSpreadIsSaid() {
    assertThat(HazHardness.of(steel("A36"), 5).warnings())
        .singleElement()
        .asString()
        .startsWith("spread of the methods 80.5 HV10");
  }

  /** CEB of the first steel: 0.3523, to four digits. */
  @Test
  void bainiteEquivalent() {
    assertThat(HazHardness.bainiteEquivalent(Composition.parse("C .15 Si .30 Mn 1.40")))
        .isCloseTo(0.3523, within(5e-5));
  }

  @Test
  void boronHardens() {
    Composition without = Composition.parse("C .12 Mn 1.40 N .004");
    Composition with = Composition.parse("C .12 Mn 1.40 N .004 B .0005");
    assertThat(HazHardness.yuriokaHV(with, 10)).isGreaterThan(HazHardness.yuriokaHV(without, 10));
  }

  private static Composition steel(String text) {
    return Grades.find(text).flatMap(Grade::typical).orElseGet(() -> Composition.parse(text));
  }
}
