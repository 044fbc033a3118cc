package org.counterpull.procedure;

import java.util.Locale;

/** The widest ranges that a row may state; whatever lies outside is a slip of the pen. */
final class Checks {
  private Checks() {}

  static void inside(String what, Range range, double low, double high, String unit) {
    if (range.low() < low || range.high() > high) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "%s %.4g to %.4g %s must lie within %.4g to %.4g %s",
              what,
              range.low(),
              range.high(),
              unit,
              low,
              high,
              unit));
    }
  }
}
