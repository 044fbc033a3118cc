package org.counterpull.groove;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;

/**
 * Cross-section of a groove without caps, with {@code h1 + h2 = t - c} on the prepared sides:
 *
 * <pre>
 * square        b t
 * v             b t + h1^2 tan(alpha/2)
 * double-v      b t + (h1^2 + h2^2) tan(alpha/2)
 * bevel         b t + h1^2 tan(beta) / 2
 * double-bevel  b t + (h1^2 + h2^2) tan(beta) / 2
 * u, double-u   b t + 2 (areas beside the root radius)
 * j, double-j   b t + (areas beside the root radius)
 * </pre>
 *
 * <p><b>Source:</b> derived, plain geometry.
 *
 * <p><b>Valid for:</b> any groove that can be drawn; out of range where a weld of that form is not
 * usual (gap above 12 mm, included angle outside 10 to 120 degrees).
 */
public final class GrooveArea {
  public static final Formula FORMULA =
      new Formula(
          "groove-area",
          "cross-section of a groove without caps",
          "mm2",
          "derived: plain geometry");

  private GrooveArea() {}

  /** Area with its warnings. */
  public static Computed of(Groove groove) {
    Limits limits = new Limits().within("root gap", groove.gapMm(), 0, 12, "mm");
    if (groove.preparation() != Preparation.SQUARE) {
      boolean included = groove.preparation().angleIsIncluded();
      limits.within(
          "groove angle", groove.angleDegrees(), included ? 10 : 5, included ? 120 : 60, "degrees");
    }
    return FORMULA.result(mm2(groove), limits.outside());
  }

  /** Area, mm2. */
  public static double mm2(Groove groove) {
    double firstMm2 = groove.firstSide().areaMm2();
    return groove.preparation().isDouble() ? firstMm2 + groove.secondSide().areaMm2() : firstMm2;
  }
}
