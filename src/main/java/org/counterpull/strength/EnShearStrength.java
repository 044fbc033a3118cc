package org.counterpull.strength;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Design shear strength of a fillet by the simplified method, whatever the direction of the force:
 * {@code f_vw,d = f_u / (sqrt(3) beta_w gamma_M2)} on the throat.
 *
 * <p><b>Source:</b> EN 1993-1-8:2005, 4.5.3.3.
 *
 * <p><b>Valid for:</b> throats of 3 mm and more, steels to S460 (f_u 340 to 720 MPa); f_u is that
 * of the weaker part. Compare with the design load, that is the working load times its partial
 * factor.
 */
public final class EnShearStrength {
  public static final Formula FORMULA =
      new Formula(
          "fillet-shear-strength",
          "design shear strength of a fillet's throat, simplified method",
          "MPa",
          "EN 1993-1-8:2005, 4.5.3.3");

  /** Partial factor of welds, EN 1993-1-8 table 2.1. */
  public static final double GAMMA_M2 = 1.25;

  private EnShearStrength() {}

  /**
   * Strength.
   *
   * @param tensileMPa f_u of the weaker part, MPa, above 0
   * @param betaW correlation factor, above 0
   */
  public static Computed of(double tensileMPa, double betaW) {
    return FORMULA.result(
        mPa(tensileMPa, betaW),
        new Limits().within("tensile strength", tensileMPa, 340, 720, "MPa").outside());
  }

  /** Strength, MPa; arguments as for {@link #of}. */
  public static double mPa(double tensileMPa, double betaW) {
    Require.positive("tensile strength", tensileMPa, "MPa");
    Require.positive("correlation factor", betaW, "1");
    return tensileMPa / (Math.sqrt(3) * betaW * GAMMA_M2);
  }
}
