package org.counterpull.fillet;

import java.util.List;
import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Throat of a fillet: {@code a = z cos(psi/2)} for equal legs, {@code z1 z2 / sqrt(z1^2 + z2^2)}
 * for unequal legs at a right angle.
 *
 * <p><b>Source:</b> derived, plain geometry.
 *
 * <p><b>Valid for:</b> 60 to 120 degrees between the faces. Outside that the weld isn't a fillet:
 * EN 1993-1-8 treats less than 60 degrees as a partial butt and asks for tests above 120.
 */
public final class FilletThroat {
  public static final Formula FORMULA =
      new Formula("fillet-throat", "throat of a fillet", "mm", "derived: plain geometry");

  private FilletThroat() {}

  /**
   * Throat of equal legs.
   *
   * @param legMm leg, mm, above 0
   * @param facesDegrees angle between the faces, above 0 and below 180
   */
  public static Computed of(double legMm, double facesDegrees) {
    return FORMULA.result(
        Require.positive("leg", legMm, "mm") * perLeg(facesDegrees), skew(facesDegrees));
  }

  /** Throat of unequal legs at a right angle, mm. */
  public static double unequalMm(double firstLegMm, double secondLegMm) {
    Require.positive("first leg", firstLegMm, "mm");
    Require.positive("second leg", secondLegMm, "mm");
    return firstLegMm * secondLegMm / Math.hypot(firstLegMm, secondLegMm);
  }

  /** Throat over leg for equal legs. */
  public static double perLeg(double facesDegrees) {
    Require.within("angle between the faces", facesDegrees, 1, 179, "degrees");
    return Math.cos(Math.toRadians(facesDegrees) / 2);
  }

  /**
   * Leg for a wanted throat, mm.
   *
   * @param throatMm throat, mm, above 0
   * @param facesDegrees angle between the faces
   */
  public static double legMm(double throatMm, double facesDegrees) {
    return Require.positive("throat", throatMm, "mm") / perLeg(facesDegrees);
  }

  private static List<String> skew(double facesDegrees) {
    return new Limits()
        .within("angle between the faces", facesDegrees, 60, 120, "degrees")
        .outside();
  }
}
