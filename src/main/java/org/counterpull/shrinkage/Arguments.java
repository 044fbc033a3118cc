package org.counterpull.shrinkage;

import java.util.Locale;

/** Refuses arguments that mean nothing physically, in words that name them. */
final class Arguments {
  private Arguments() {}

  static void positive(String what, double value, String unit) {
    if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
      throw refused(what, value, unit, "must be above zero and finite");
    }
  }

  static void notNegative(String what, double value, String unit) {
    if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
      throw refused(what, value, unit, "must be zero or more and finite");
    }
  }

  static void finite(String what, double value, String unit) {
    if (!Double.isFinite(value)) {
      throw refused(what, value, unit, "must be a finite number");
    }
  }

  static IllegalArgumentException refused(String what, double value, String unit, String rule) {
    return new IllegalArgumentException(
        String.format(Locale.ROOT, "%s %s %s %s", what, value, unit, rule));
  }
}
