package org.counterpull.shrinkage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;

/** A value as printed in a source: it holds to half a unit of its last digit. */
final class Printed {
  private Printed() {}

  static void check(double actual, String printed) {
    BigDecimal value = new BigDecimal(printed);
    double halfUnit = value.ulp().doubleValue() / 2;
    // The print itself was rounded from a double: allow its last bits on top of the half unit.
    assertThat(actual).isCloseTo(value.doubleValue(), within(halfUnit * (1 + 1e-9)));
  }
}
