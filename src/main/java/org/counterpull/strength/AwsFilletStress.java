package org.counterpull.strength;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Allowable shear stress on a fillet's throat under the working load: {@code 0.30 F_EXX}, and with
 * the gain for force across the weld {@code 0.30 F_EXX (1 + 0.5 sin^1.5 theta)}.
 *
 * <p><b>Source:</b> AWS D1.1, allowable stresses; AISC 360, J2.4 (from memory).
 *
 * <p><b>Valid for:</b> filler of 410 to 760 MPa that matches the steel. No gain for the ends of
 * rectangular tubes, where the wall bends: give 0 degrees there.
 */
public final class AwsFilletStress {
  public static final Formula FORMULA =
      new Formula(
          "fillet-allowable-stress",
          "allowable shear stress on a fillet's throat, working load",
          "MPa",
          "from memory: AWS D1.1, allowable stresses; AISC 360, J2.4");

  /** Strength of class 70 filler metal, 70 ksi. */
  public static final double E70_MPA = 482.6;

  private static final double SHARE = 0.30;

  private AwsFilletStress() {}

  /**
   * Allowable stress.
   *
   * @param fillerMPa tensile strength F_EXX of the filler metal, MPa, above 0
   * @param angleDegrees between force and weld, 0 to 90; 0 for the plain rule without a gain
   */
  public static Computed of(double fillerMPa, double angleDegrees) {
    return FORMULA.result(
        mPa(fillerMPa, angleDegrees),
        new Limits().within("filler strength", fillerMPa, 410, 760, "MPa").outside());
  }

  /** Allowable stress, MPa; arguments as for {@link #of}. */
  public static double mPa(double fillerMPa, double angleDegrees) {
    Require.positive("filler strength", fillerMPa, "MPa");
    return SHARE * fillerMPa * gain(angleDegrees);
  }

  /** {@code 1 + 0.5 sin^1.5 theta}. */
  public static double gain(double angleDegrees) {
    Require.within("angle between force and weld", angleDegrees, 0, 90, "degrees");
    return 1 + 0.5 * Math.pow(Math.sin(Math.toRadians(angleDegrees)), 1.5);
  }
}
