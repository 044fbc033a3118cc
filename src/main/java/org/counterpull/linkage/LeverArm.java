package org.counterpull.linkage;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Require;

/**
 * Lever arm of a cylinder about a hinge axis: how far the line through its two pins passes the
 * axis.
 *
 * <pre>a = (f x m) / |m - f|</pre>
 *
 * <p>with f and m the fixed and the moving pin, seen along the axis and measured from it. A push
 * turns the moving pin the right-handed way where the arm is positive; where it changes sign the
 * cylinder is over centre. The arm is also what the pin distance grows by per radian.
 *
 * <p><b>Source:</b> derived: moment of a force along a line.
 *
 * <p><b>Valid for:</b> pins parallel to the hinge axis.
 */
public final class LeverArm {
  public static final Formula FORMULA =
      new Formula("lever-arm", "lever arm of a cylinder", "mm", "derived: moment of a force");

  private LeverArm() {}

  /**
   * Signed lever arm.
   *
   * @param fixedU fixed pin from the axis, mm, first direction square to the axis
   * @param fixedV the same, second direction
   * @param movingU moving pin from the axis, mm, first direction
   * @param movingV the same, second direction
   */
  public static Computed of(double fixedU, double fixedV, double movingU, double movingV) {
    double length = Math.hypot(movingU - fixedU, movingV - fixedV);
    Require.positive("distance of the pins", length, "mm");
    return FORMULA.result((fixedU * movingV - fixedV * movingU) / length);
  }
}
