package org.counterpull.groove;

import org.counterpull.quantity.Require;

/**
 * A butt joint ready to weld.
 *
 * @param preparation form of the edges
 * @param thicknessMm plate thickness, mm
 * @param gapMm root gap, mm
 * @param rootFaceMm root face, mm; not above the thickness
 * @param angleDegrees included angle for v and double-v, angle of one edge otherwise; not read for
 *     square
 * @param radiusMm root radius of u and j, mm; not read otherwise
 */
public record Groove(
    Preparation preparation,
    double thicknessMm,
    double gapMm,
    double rootFaceMm,
    double angleDegrees,
    double radiusMm) {

  public Groove {
    Require.positive("thickness", thicknessMm, "mm");
    Require.notNegative("root gap", gapMm, "mm");
    if (preparation != Preparation.SQUARE) {
      Require.within("root face", rootFaceMm, 0, thicknessMm, "mm");
      Require.positive("groove angle", angleDegrees, "degrees");
      Require.within(
          "groove angle", angleDegrees, 0, preparation.angleIsIncluded() ? 170 : 85, "degrees");
    }
    if (preparation.hasRadius()) {
      Require.positive("root radius", radiusMm, "mm");
      double arcMm = radiusMm * (1 - Math.sin(Math.toRadians(angleDegrees)));
      Require.within("height of the root arc", arcMm, 0, thicknessMm - rootFaceMm, "mm");
    }
  }

  /** A square butt. */
  public static Groove square(double thicknessMm, double gapMm) {
    return new Groove(Preparation.SQUARE, thicknessMm, gapMm, thicknessMm, 0, 0);
  }

  /** A groove without a root radius. */
  public static Groove straight(
      Preparation preparation,
      double thicknessMm,
      double gapMm,
      double rootFaceMm,
      double angleDegrees) {
    return new Groove(preparation, thicknessMm, gapMm, rootFaceMm, angleDegrees, 0);
  }

  /** Depth of the groove on each prepared side, mm. */
  public double depthMm() {
    return switch (preparation) {
      case SQUARE -> 0;
      case V, BEVEL, U, J -> thicknessMm - rootFaceMm;
      case DOUBLE_V, DOUBLE_BEVEL -> (thicknessMm - rootFaceMm) / 2;
    };
  }

  /** Width of the groove at the plate's face, mm. */
  public double faceWidthMm() {
    return gapMm + sidesOfFace() * edgeReachMm();
  }

  private int sidesOfFace() {
    return switch (preparation) {
      case SQUARE -> 0;
      case BEVEL, DOUBLE_BEVEL, J -> 1;
      case V, DOUBLE_V, U -> 2;
    };
  }

  /** How far one prepared edge lies back at the face, mm. */
  private double edgeReachMm() {
    double edge = edgeRadians();
    return switch (preparation) {
      case SQUARE -> 0;
      case V, DOUBLE_V, BEVEL, DOUBLE_BEVEL -> depthMm() * Math.tan(edge);
      case U, J ->
          radiusMm * Math.cos(edge)
              + (depthMm() - radiusMm * (1 - Math.sin(edge))) * Math.tan(edge);
    };
  }

  /** Angle of one edge from the normal of the plate, rad. */
  double edgeRadians() {
    return Math.toRadians(preparation.angleIsIncluded() ? angleDegrees / 2 : angleDegrees);
  }
}
