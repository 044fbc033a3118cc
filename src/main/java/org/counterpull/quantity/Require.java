package org.counterpull.quantity;

import java.util.Locale;

/** Refuses arguments that mean nothing physically, with the argument's name, value and unit. */
public final class Require {
  private Require() {}

  /** The value, which must be a finite number above zero. */
  public static double positive(String what, double value, String unit) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw refused(what, value, unit, "must be a finite number above 0");
    }
    return value;
  }

  /** The value, which must be a finite number, zero or above. */
  public static double notNegative(String what, double value, String unit) {
    if (!(value >= 0) || Double.isInfinite(value)) {
      throw refused(what, value, unit, "must be a finite number, 0 or above");
    }
    return value;
  }

  /** The value, which must lie in a closed interval. */
  public static double within(String what, double value, double low, double high, String unit) {
    if (!(value >= low && value <= high)) {
      throw refused(
          what,
          value,
          unit,
          String.format(Locale.ROOT, "must be %.4g to %.4g %s", low, high, unit));
    }
    return value;
  }

  private static IllegalArgumentException refused(
      String what, double value, String unit, String rule) {
    return new IllegalArgumentException(
        String.format(Locale.ROOT, "%s is %.6g %s: it %s", what, value, unit, rule));
  }
}
