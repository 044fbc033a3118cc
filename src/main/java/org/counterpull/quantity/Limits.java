package org.counterpull.quantity;

import java.util.ArrayList;
import java.util.List;

/**
 * Collects the limits of validity that a formula's arguments leave, in words that name the
 * argument, its value and the limit.
 */
public final class Limits {
  private final List<String> left = new ArrayList<>();

  /**
   * Notes it when a value lies outside a closed interval.
   *
   * @param what name of the argument as a practitioner says it
   * @param value its value in {@code unit}
   * @param low least value inside, or {@code Double.NEGATIVE_INFINITY}
   * @param high greatest value inside, or {@code Double.POSITIVE_INFINITY}
   * @param unit unit of all three
   */
  public Limits within(String what, double value, double low, double high, String unit) {
    if (!(value >= low && value <= high)) {
      left.add(
          what + " " + Printed.quantity(value, unit) + " is outside " + interval(low, high, unit));
    }
    return this;
  }

  /** Notes a limit that is not a plain interval. */
  public Limits expect(boolean holds, String sentenceIfNot) {
    if (!holds) {
      left.add(sentenceIfNot);
    }
    return this;
  }

  /** The sentences so far, in the order of the checks. */
  public List<String> outside() {
    return List.copyOf(left);
  }

  private static String interval(double low, double high, String unit) {
    if (low == Double.NEGATIVE_INFINITY) {
      return "up to " + Printed.quantity(high, unit);
    }
    if (high == Double.POSITIVE_INFINITY) {
      return Printed.quantity(low, unit) + " and more";
    }
    return Printed.number(low, 4) + " to " + Printed.quantity(high, unit);
  }
}
