package org.counterpull.fillet;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Section of a fillet: {@code z^2 sin(psi)/2}, plus {@code 2/3 s k} for a convexity {@code k} over
 * the face {@code s}, plus {@code z g/2} and the gap's own fill where a gap is bridged.
 *
 * <p><b>Source:</b> derived, plain geometry; the parabola is less than 2 % under the circular
 * segment up to a convexity of a fifth of the leg.
 *
 * <p><b>Valid for:</b> 60 to 120 degrees between the faces, convexity up to 0.2 z.
 */
public final class FilletArea {
  public static final Formula FORMULA =
      new Formula("fillet-area", "section of a fillet", "mm2", "derived: plain geometry");

  private FilletArea() {}

  /**
   * Section of equal legs.
   *
   * @param legMm leg, mm, above 0
   * @param facesDegrees angle between the faces, degrees
   * @param convexityMm height of the face over the chord, mm, 0 or above
   */
  public static Computed of(double legMm, double facesDegrees, double convexityMm) {
    Require.positive("leg", legMm, "mm");
    Require.within("angle between the faces", facesDegrees, 1, 179, "degrees");
    Require.notNegative("convexity", convexityMm, "mm");
    double faces = Math.toRadians(facesDegrees);
    double chordMm = 2 * legMm * Math.sin(faces / 2);
    double mm2 = legMm * legMm * Math.sin(faces) / 2 + 2.0 / 3 * chordMm * convexityMm;
    return FORMULA.result(
        mm2,
        new Limits()
            .within("angle between the faces", facesDegrees, 60, 120, "degrees")
            .within("convexity", convexityMm, 0, 0.2 * legMm, "mm")
            .outside());
  }

  /** Section of unequal legs at a right angle, mm2. */
  public static double unequalMm2(double firstLegMm, double secondLegMm) {
    Require.positive("first leg", firstLegMm, "mm");
    Require.positive("second leg", secondLegMm, "mm");
    return firstLegMm * secondLegMm / 2;
  }

  /**
   * Section at a right angle with a gap: the leg over the gap grows by the gap, and the gap fills
   * to a depth.
   *
   * @param legMm leg wanted, mm, above 0
   * @param gapMm fit-up gap, mm, 0 or above
   * @param filledDepthMm how far weld metal runs into the gap, mm, 0 or above
   */
  public static double withGapMm2(double legMm, double gapMm, double filledDepthMm) {
    Require.notNegative("gap", gapMm, "mm");
    Require.notNegative("filled depth", filledDepthMm, "mm");
    return unequalMm2(legMm, legMm + gapMm) + gapMm * filledDepthMm;
  }

  /** Exact circular segment of a convexity over a chord, mm2. */
  public static double circularSegmentMm2(double chordMm, double convexityMm) {
    Require.positive("chord", chordMm, "mm");
    Require.positive("convexity", convexityMm, "mm");
    double radiusMm = (chordMm * chordMm / 4 + convexityMm * convexityMm) / (2 * convexityMm);
    double half = Math.asin(Math.min(1, chordMm / (2 * radiusMm)));
    double angle = convexityMm > radiusMm ? 2 * (Math.PI - half) : 2 * half;
    return radiusMm * radiusMm / 2 * (angle - Math.sin(angle));
  }
}
