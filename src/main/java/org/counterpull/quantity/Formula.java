package org.counterpull.quantity;

import java.util.List;

/**
 * The identity of a published formula: what a number on a plan is traced back to.
 *
 * <p>Each formula class keeps one of these as a constant and hands out its results through {@link
 * #result}, so that a value never travels without its unit, its source and what is known about its
 * range.
 *
 * @param name stable, lower-case, hyphenated name, as the {@code formula} command knows it
 * @param gives what the value means, in one phrase
 * @param unit unit of the value; {@code "1"} for a bare ratio
 * @param source author, title, year and place in the work; "common practice, no source" or "from
 *     memory: ..." where so
 */
public record Formula(String name, String gives, String unit, String source) {

  /** The same formula with its result in another unit, such as a currency. */
  public Formula in(String otherUnit) {
    return new Formula(name, gives, otherUnit, source);
  }

  /** A result inside the range of validity. */
  public Computed result(double value) {
    return result(value, List.of());
  }

  /**
   * A result with what is wrong about its range.
   *
   * @param value in {@link #unit()}
   * @param outsideRange one sentence for each limit that the arguments leave; empty when all hold
   */
  public Computed result(double value, List<String> outsideRange) {
    return new Computed(value, this, outsideRange);
  }
}
