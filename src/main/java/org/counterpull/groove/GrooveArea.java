package org.counterpull.groove;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;

/**
 * Cross-section of a groove without caps, with {@code h = t - c} on the prepared side:
 *
 * <pre>
 * square        b t
 * v             b t + h^2 tan(alpha/2)
 * double-v      b t + 2 (h/2)^2 tan(alpha/2)
 * bevel         b t + h^2 tan(beta) / 2
 * double-bevel  b t + (h/2)^2 tan(beta)
 * u             b t + 2 (area beside the root radius)
 * j             b t + (area beside the root radius)
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
    double gapAreaMm2 = groove.gapMm() * groove.thicknessMm();
    double depthMm = groove.depthMm();
    double triangleMm2 = depthMm * depthMm * Math.tan(groove.edgeRadians()) / 2;
    return gapAreaMm2
        + switch (groove.preparation()) {
          case SQUARE -> 0;
          case BEVEL -> triangleMm2;
          case V, DOUBLE_BEVEL -> 2 * triangleMm2;
          case DOUBLE_V -> 4 * triangleMm2;
          case U -> 2 * besideRadiusMm2(groove);
          case J -> besideRadiusMm2(groove);
        };
  }

  /** One edge of a u or j: circular root, then straight flank. */
  private static double besideRadiusMm2(Groove groove) {
    double edge = groove.edgeRadians();
    double radiusMm = groove.radiusMm();
    double phi = Math.PI / 2 - edge;
    double arcHeightMm = radiusMm * (1 - Math.sin(edge));
    double arcReachMm = radiusMm * Math.cos(edge);
    double flankMm = groove.depthMm() - arcHeightMm;
    double arcMm2 = radiusMm * radiusMm * (phi / 2 - Math.sin(2 * phi) / 4);
    return arcMm2 + flankMm * arcReachMm + flankMm * flankMm * Math.tan(edge) / 2;
  }
}
