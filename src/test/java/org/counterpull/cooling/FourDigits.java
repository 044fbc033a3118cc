package org.counterpull.cooling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/** Comparison with a value printed to four significant digits. */
final class FourDigits {
  private FourDigits() {}

  /** Within half a unit of the fourth digit, and a hair for a tie. */
  static void assertPrinted(double actual, double printed) {
    double lastDigit = Math.pow(10, Math.floor(Math.log10(Math.abs(printed))) - 3);
    assertThat(actual).isCloseTo(printed, within(0.501 * lastDigit));
  }
}
