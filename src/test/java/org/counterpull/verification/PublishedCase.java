package org.counterpull.verification;

import java.math.BigDecimal;
import java.util.Map;

/**
 * One check as a data file has it.
 *
 * @param arguments by name; null for none
 * @param expected as printed in the source
 * @param tolerance absolute; null for half a unit of the last printed digit
 * @param certainty how the reference value is known; null for that of the family
 * @param source where it stands; null for that of the family
 * @param why the tolerance is what it is, where it is not half a unit
 */
record PublishedCase(
    Map<String, String> arguments,
    String expected,
    Double tolerance,
    String certainty,
    String source,
    String why) {

  PublishedCase {
    arguments = arguments == null ? Map.of() : arguments;
    if (tolerance == null) {
      BigDecimal printed = new BigDecimal(expected);
      if (printed.signum() == 0) {
        throw new IllegalArgumentException("a printed 0 needs a tolerance of its own: " + source);
      }
      tolerance = printed.ulp().doubleValue() / 2;
    }
  }
}
