package org.counterpull.fillet;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Throat of a fillet that can be counted on where its faces are not square: {@code z cos(psi/2)}
 * less what stays unfused in a narrow corner, 3 mm from 45 to 60 degrees and 6 mm from 30 to 45; a
 * corner under 30 degrees counts nothing.
 *
 * <p><b>Source:</b> from memory: AWS D1.1, Z loss of skewed joints (most processes and positions);
 * EN 1993-1-8:2005, 4.3.2.1: under 60 degrees a partial butt weld, above 120 by test.
 *
 * <p><b>Valid for:</b> 30 to 120 degrees; above 120 the geometric throat with a warning.
 */
public final class SkewThroat {
  public static final Formula FORMULA =
      new Formula(
          "skew-throat",
          "throat of a skewed fillet that can be counted on",
          "mm",
          "from memory: AWS D1.1, Z loss of skewed joints");

  private static final double SQUARE_ENOUGH_DEG = 60;
  private static final double NARROW_DEG = 45;
  private static final double CLOSED_DEG = 30;

  private SkewThroat() {}

  /**
   * The throat.
   *
   * @param legMm leg, mm, above 0
   * @param facesDegrees angle between the faces, 1 to 179
   */
  public static Computed of(double legMm, double facesDegrees) {
    Require.positive("leg", legMm, "mm");
    double throat = legMm * FilletThroat.perLeg(facesDegrees) - lossMm(facesDegrees);
    boolean closed = facesDegrees < CLOSED_DEG;
    return FORMULA.result(
        closed ? 0 : Math.max(0, throat),
        new Limits()
            .within("angle between the faces", facesDegrees, CLOSED_DEG, 120, "degrees")
            .outside());
  }

  /** What stays unfused at the root, mm. */
  public static double lossMm(double facesDegrees) {
    if (facesDegrees >= SQUARE_ENOUGH_DEG) {
      return 0;
    }
    return facesDegrees >= NARROW_DEG ? 3 : 6;
  }
}
