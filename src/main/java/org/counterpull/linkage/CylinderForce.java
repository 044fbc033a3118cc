package org.counterpull.linkage;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Require;

/**
 * Force of a hydraulic cylinder: pressure times the area that the oil acts on, friction left out.
 *
 * <pre>push = p pi D^2 / 4, pull = p pi (D^2 - d^2) / 4</pre>
 *
 * <p><b>Source:</b> derived: force is pressure times area.
 *
 * <p><b>Valid for:</b> oil at rest; seals take off a few percent.
 */
public final class CylinderForce {
  public static final Formula PUSH =
      new Formula("cylinder-push", "force with oil on the piston", "N", "derived: p A");

  public static final Formula PULL =
      new Formula("cylinder-pull", "force with oil on the rod side", "N", "derived: p A");

  private CylinderForce() {}

  /**
   * Force that pushes the rod out.
   *
   * @param pressureMPa above 0
   * @param boreMm diameter of the piston, above 0
   */
  public static Computed push(double pressureMPa, double boreMm) {
    Require.positive("pressure", pressureMPa, "MPa");
    Require.positive("bore", boreMm, "mm");
    return PUSH.result(pressureMPa * Math.PI / 4 * boreMm * boreMm);
  }

  /**
   * Force that pulls the rod in.
   *
   * @param pressureMPa above 0
   * @param boreMm diameter of the piston, above 0
   * @param rodMm diameter of the rod, above 0 and below the bore
   */
  public static Computed pull(double pressureMPa, double boreMm, double rodMm) {
    Require.positive("pressure", pressureMPa, "MPa");
    Require.positive("bore", boreMm, "mm");
    Require.positive("rod", rodMm, "mm");
    if (rodMm >= boreMm) {
      throw new IllegalArgumentException(
          "a rod of " + rodMm + " mm does not go into a bore of " + boreMm + " mm");
    }
    return PULL.result(pressureMPa * Math.PI / 4 * (boreMm * boreMm - rodMm * rodMm));
  }
}
