package org.counterpull.procedure;

import java.util.Optional;

/**
 * A closed range of a setting.
 *
 * @param low least value
 * @param high greatest value, not below {@code low}
 */
public record Range(double low, double high) {
  public Range {
    if (!(low <= high) || Double.isInfinite(low) || Double.isInfinite(high)) {
      throw new IllegalArgumentException(
          "range " + low + " to " + high + " must rise between finite numbers");
    }
  }

  /** Middle of the range. */
  public double middle() {
    return (low + high) / 2;
  }

  /** The value lies inside, ends included. */
  public boolean contains(double value) {
    return value >= low && value <= high;
  }

  /** What two ranges share. */
  public Optional<Range> shared(Range other) {
    double from = Math.max(low, other.low);
    double to = Math.min(high, other.high);
    return from <= to ? Optional.of(new Range(from, to)) : Optional.empty();
  }

  /** The range a share of the way to another one. */
  public Range towards(Range other, double share) {
    return new Range(low + share * (other.low - low), high + share * (other.high - high));
  }
}
