package org.counterpull.shrinkage;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Require;

/**
 * Longitudinal shortening to allow for along a butt weld: delta L = 305e-7 I L / h.
 *
 * <p>It ignores the width of the plate, so it is an allowance and no prediction.
 */
public final class KingShortening {
  public static final Formula FORMULA =
      new Formula(
          "longitudinal-shrinkage-king",
          "longitudinal shortening to allow for",
          "mm",
          "from memory: C. W. R. King, 1944");

  private KingShortening() {}

  /** The allowance; welding current in A, length of the weld and thickness in mm. */
  public static Computed of(double currentA, double lengthMm, double thicknessMm) {
    Require.positive("current", currentA, "A");
    Require.positive("length", lengthMm, "mm");
    Require.positive("thickness", thicknessMm, "mm");
    return FORMULA.result(305e-7 * currentA * lengthMm / thicknessMm);
  }
}
