package org.counterpull.quantity;

/** Refuses arguments that mean nothing physically, with the argument's name, value and unit. */
public final class Require {
  private Require() {}

  /** The value, which must be a finite number above zero. */
  public static double positive(String what, double value, String unit) {
    return that(value > 0, what, value, unit, "must be a finite number above 0");
  }

  /** The value, which must be a finite number, zero or above. */
  public static double notNegative(String what, double value, String unit) {
    return that(value >= 0, what, value, unit, "must be a finite number, 0 or above");
  }

  /** The value, which must be a finite number. */
  public static double finite(String what, double value, String unit) {
    return that(true, what, value, unit, "must be a finite number");
  }

  /** The value, which must be a finite number below a bound. */
  public static double below(String what, double value, double bound, String unit) {
    return that(value < bound, what, value, unit, "must be below " + Printed.quantity(bound, unit));
  }

  /** The value, which must lie in a closed interval. */
  public static double within(String what, double value, double low, double high, String unit) {
    return that(
        value >= low && value <= high,
        what,
        value,
        unit,
        "must be " + Printed.number(low, 4) + " to " + Printed.quantity(high, unit));
  }

  private static double that(boolean holds, String what, double value, String unit, String rule) {
    if (!holds || !Double.isFinite(value)) {
      throw new IllegalArgumentException(
          what + " is " + Printed.quantity(value, unit) + ": it " + rule);
    }
    return value;
  }
}
