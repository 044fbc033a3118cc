package org.counterpull.shrinkage;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Require;

/**
 * How to set plates off before welding so that the weld's angle brings them true.
 *
 * <p>Butt: each plate turned by phi / 2, the joint lifted by (phi / 2) B. Fillet: the flange bent
 * over a bar, arms of length a held at their tips 2/3 phi a down; skin stress E h phi / (a (1 -
 * nu2)), which must stay below yield: short arms can't cancel a full fillet's angle elastically.
 */
public final class Preset {
  public static final Formula BUTT_LIFT =
      new Formula("butt-preset", "lift of the joint line before welding", "mm", "derived");

  public static final Formula FILLET_TIP =
      new Formula("fillet-preset", "deflection of the flange's tips", "mm", "derived");

  public static final Formula FILLET_STRESS =
      new Formula("fillet-preset-stress", "skin stress of the bent flange", "N/mm2", "derived");

  private static final double POISSON = 0.3;

  private Preset() {}

  /** Lift of a butt joint; angle in rad, width of each plate in mm. */
  public static Computed buttLift(double angleRad, double plateWidthMm) {
    Require.finite("angle", angleRad, "rad");
    Require.positive("plate width", plateWidthMm, "mm");
    return BUTT_LIFT.result(angleRad / 2 * plateWidthMm);
  }

  /** Deflection of the tips; angle in rad, length of each arm in mm. */
  public static Computed filletTip(double angleRad, double armMm) {
    Require.finite("angle", angleRad, "rad");
    Require.positive("arm", armMm, "mm");
    return FILLET_TIP.result(2.0 / 3.0 * angleRad * armMm);
  }

  /** Skin stress; angle in rad, arm and thickness in mm, modulus in N/mm2. */
  public static Computed filletStress(
      double angleRad, double armMm, double thicknessMm, double elasticModulusMPa) {
    Require.finite("angle", angleRad, "rad");
    Require.positive("arm", armMm, "mm");
    Require.positive("thickness", thicknessMm, "mm");
    Require.positive("modulus of elasticity", elasticModulusMPa, "N/mm2");
    return FILLET_STRESS.result(
        elasticModulusMPa * thicknessMm * angleRad / (armMm * (1 - POISSON * POISSON)));
  }
}
