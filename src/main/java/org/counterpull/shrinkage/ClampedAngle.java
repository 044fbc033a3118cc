package org.counterpull.shrinkage;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Require;

/**
 * Angle that is left when clamps were held until the weld was cold.
 *
 * <p>The weld zone of width w can store elastically only phi_e = 2 yield w / (E h); fully clamped
 * the residual is min(phi, phi_e). Partly clamped it lies between the free angle and that, by the
 * share k_c / (k_w + k_c) of the clamp's stiffness. Released hot: no benefit. Not calibrated.
 */
public final class ClampedAngle {
  public static final Formula FORMULA =
      new Formula("clamped-angle", "angle left after cold release", "rad", "derived");

  private ClampedAngle() {}

  /**
   * The angle that is left.
   *
   * @param freeAngleRad free angle of the weld, rad, zero or more
   * @param elasticAngleRad what the weld zone can store, see {@link #elasticRad}
   * @param clampStiffness stiffness of the clamping against that angle, any unit
   * @param weldStiffness stiffness of the weld against it, same unit
   */
  public static Computed of(
      double freeAngleRad, double elasticAngleRad, double clampStiffness, double weldStiffness) {
    Require.notNegative("free angle", freeAngleRad, "rad");
    Require.positive("elastic angle", elasticAngleRad, "rad");
    Require.notNegative("clamp stiffness", clampStiffness, "");
    Require.positive("weld stiffness", weldStiffness, "");
    double clamped = clampStiffness / (weldStiffness + clampStiffness);
    double takenOut = freeAngleRad - Math.min(freeAngleRad, elasticAngleRad);
    return FORMULA.result(freeAngleRad - clamped * takenOut);
  }

  /** Angle that the weld zone can store elastically, rad. */
  public static double elasticRad(
      double yieldMPa, double zoneWidthMm, double thicknessMm, double elasticModulusMPa) {
    Require.positive("yield stress", yieldMPa, "N/mm2");
    Require.positive("zone width", zoneWidthMm, "mm");
    Require.positive("thickness", thicknessMm, "mm");
    Require.positive("modulus of elasticity", elasticModulusMPa, "N/mm2");
    return 2 * yieldMPa * zoneWidthMm / (elasticModulusMPa * thicknessMm);
  }
}
