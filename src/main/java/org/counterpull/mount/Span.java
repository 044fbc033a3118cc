package org.counterpull.mount;

/**
 * A value with its 90 % band.
 *
 * @param low lower end
 * @param value central value
 * @param high upper end
 */
public record Span(double low, double value, double high) {
  /** Nothing moves. */
  public static final Span ZERO = new Span(0, 0, 0);

  public Span {
    if (!(low <= value && value <= high)) {
      throw new IllegalArgumentException("band " + low + " to " + high + " without " + value);
    }
  }

  /** Both, of which one doesn't know of the other. */
  Span plus(Span other) {
    double sum = value + other.value;
    return new Span(
        sum - Math.hypot(value - low, other.value - other.low),
        sum,
        sum + Math.hypot(high - value, other.high - other.value));
  }
}
