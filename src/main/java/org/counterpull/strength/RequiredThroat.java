package org.counterpull.strength;

import org.counterpull.fillet.FilletThroat;
import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Require;

/**
 * Throat that a force per length asks for, {@code f / f_w}, and the leg of a square fillet with
 * that throat.
 *
 * <p><b>Source:</b> derived from {@link EnShearStrength} or {@link AwsFilletStress}, whichever
 * gives the strength.
 *
 * <p><b>Valid for:</b> where those hold; the least size for the thickness may ask for more.
 */
public final class RequiredThroat {
  public static final Formula FORMULA =
      new Formula(
          "required-throat",
          "throat that a force per length asks for",
          "mm",
          "derived: force per length over strength");

  public static final Formula LEG =
      new Formula(
          "required-leg",
          "leg that a force per length asks for",
          "mm",
          "derived: force per length over strength, square fillet");

  private RequiredThroat() {}

  /**
   * Throat.
   *
   * @param nPerMm force per length, N/mm, 0 or above; the design load with a design strength, the
   *     working load with an allowable stress
   * @param strengthMPa on the throat, MPa, above 0
   */
  public static Computed of(double nPerMm, double strengthMPa) {
    return FORMULA.result(mm(nPerMm, strengthMPa));
  }

  /** Leg of a square fillet; arguments as for {@link #of}. */
  public static Computed leg(double nPerMm, double strengthMPa) {
    return LEG.result(mm(nPerMm, strengthMPa) / FilletThroat.perLeg(90));
  }

  private static double mm(double nPerMm, double strengthMPa) {
    return Require.notNegative("force per length", nPerMm, "N/mm")
        / Require.positive("strength", strengthMPa, "MPa");
  }
}
