package org.counterpull.shrinkage;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Require;

/**
 * Lean of a tee's web towards a fillet on one side of it: 0.010 leg / (t_web + leg / 3).
 *
 * <p>The weld metal's contraction over the lever from the opposite heel. The second side takes most
 * of it back, less if the first has cooled. A rough estimate; its band is that of the angle.
 */
public final class FilletLean {
  public static final Formula FORMULA =
      new Formula("fillet-lean", "lean of the web towards a one-sided fillet", "rad", "derived");

  private FilletLean() {}

  /** The lean; {@code legMm} of the fillet and {@code webThicknessMm}, both mm. */
  public static Computed of(double legMm, double webThicknessMm) {
    Require.positive("leg", legMm, "mm");
    Require.positive("web thickness", webThicknessMm, "mm");
    return FORMULA.result(0.010 * legMm / (webThicknessMm + legMm / 3));
  }
}
