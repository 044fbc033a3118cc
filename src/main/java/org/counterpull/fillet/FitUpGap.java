package org.counterpull.fillet;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Leg to lay where a fillet bridges a gap: the gap is added from 1.6 mm on.
 *
 * <p><b>Source:</b> from memory: AWS D1.1, assembly tolerances.
 *
 * <p><b>Valid for:</b> gaps up to 5 mm; a wider one is closed or built up first.
 */
public final class FitUpGap {
  public static final Formula FORMULA =
      new Formula(
          "gap-leg",
          "fillet leg to lay over a gap",
          "mm",
          "from memory: AWS D1.1, assembly tolerances");

  private static final double ADDED_ABOVE_MM = 1.6;
  private static final double LARGEST_MM = 5;

  private FitUpGap() {}

  /**
   * Leg to lay.
   *
   * @param legMm leg wanted, mm, above 0
   * @param gapMm gap, mm, 0 or above
   */
  public static Computed of(double legMm, double gapMm) {
    Require.positive("leg", legMm, "mm");
    Require.notNegative("gap", gapMm, "mm");
    return FORMULA.result(
        gapMm > ADDED_ABOVE_MM ? legMm + gapMm : legMm,
        new Limits().within("gap", gapMm, 0, LARGEST_MM, "mm").outside());
  }
}
