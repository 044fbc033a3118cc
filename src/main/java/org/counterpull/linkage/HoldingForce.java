package org.counterpull.linkage;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Require;

/**
 * Force along a cylinder that holds a weight about a hinge: positive for a push, negative for a
 * pull. Friction, wind and acceleration are left out.
 *
 * <pre>F = -M / a</pre>
 *
 * <p><b>Source:</b> derived: moments about the hinge axis.
 *
 * <p><b>Valid for:</b> a piece at rest; near an arm of 0 the force grows without bound.
 */
public final class HoldingForce {
  public static final Formula FORMULA =
      new Formula("holding-force", "cylinder force that holds the weight", "N", "derived: moments");

  private HoldingForce() {}

  /**
   * Holding force.
   *
   * @param momentNmm moment of the weight about the axis, right-handed, N mm
   * @param armMm signed lever arm of the cylinder, not 0
   */
  public static Computed of(double momentNmm, double armMm) {
    Require.finite("moment", momentNmm, "N mm");
    if (!(Math.abs(armMm) > 0)) {
      throw new IllegalArgumentException("a lever arm of " + armMm + " mm holds nothing");
    }
    return FORMULA.result(-momentNmm / armMm);
  }
}
