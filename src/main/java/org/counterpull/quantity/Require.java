package org.counterpull.quantity;

import java.util.Locale;

/** Refuses arguments that mean nothing physically, naming the value and its unit. */
public final class Require {
  private Require() {}

  /** The value itself, if it is finite and greater than zero. */
  public static double positive(String what, double value, String unit) {
    return that(value > 0, what, value, unit, "greater than zero");
  }

  /** The value itself, if it is finite and not less than zero. */
  public static double notNegative(String what, double value, String unit) {
    return that(value >= 0, what, value, unit, "zero or greater");
  }

  /** The value itself, if it is finite. */
  public static double finite(String what, double value, String unit) {
    return that(true, what, value, unit, "a finite number");
  }

  /** The value itself, if it is finite and below a bound. */
  public static double below(String what, double value, double bound, String unit) {
    return that(value < bound, what, value, unit, "below " + bound + " " + unit);
  }

  /** The value, which must lie in a closed interval. */
  public static double within(String what, double value, double low, double high, String unit) {
    return that(
        value >= low && value <= high,
        what,
        value,
        unit,
        String.format(Locale.ROOT, "%.4g to %.4g %s", low, high, unit));
  }

  private static double that(boolean holds, String what, double value, String unit, String must) {
    if (!holds || !Double.isFinite(value)) {
      throw new IllegalArgumentException(what + " " + value + " " + unit + " must be " + must);
    }
    return value;
  }
}
