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
 * @param radiusMm root radius of u and j forms, mm; not read otherwise
 * @param secondDepthMm depth from the second face, mm; 0 for forms that open to one face
 */
public record Groove(
    Preparation preparation,
    double thicknessMm,
    double gapMm,
    double rootFaceMm,
    double angleDegrees,
    double radiusMm,
    double secondDepthMm) {

  public Groove {
    Require.positive("thickness", thicknessMm, "mm");
    Require.notNegative("root gap", gapMm, "mm");
    if (preparation != Preparation.SQUARE) {
      Require.within("root face", rootFaceMm, 0, thicknessMm, "mm");
      Require.positive("groove angle", angleDegrees, "degrees");
      Require.within(
          "groove angle", angleDegrees, 0, preparation.angleIsIncluded() ? 170 : 85, "degrees");
    }
    double depthsMm = thicknessMm - rootFaceMm;
    if (preparation.isDouble()) {
      Require.within("second depth", secondDepthMm, 0, depthsMm, "mm");
    } else {
      Require.within("second depth of a one-sided form", secondDepthMm, 0, 0, "mm");
    }
    if (preparation.hasRadius()) {
      Require.positive("root radius", radiusMm, "mm");
      double arcMm = radiusMm * (1 - Math.sin(Math.toRadians(angleDegrees)));
      double leastMm =
          preparation.isDouble() ? Math.min(secondDepthMm, depthsMm - secondDepthMm) : depthsMm;
      Require.within("height of the root arc", arcMm, 0, leastMm, "mm");
    }
  }

  /** A groove whose two sides, where it has two, are equally deep. */
  public Groove(
      Preparation preparation,
      double thicknessMm,
      double gapMm,
      double rootFaceMm,
      double angleDegrees,
      double radiusMm) {
    this(
        preparation,
        thicknessMm,
        gapMm,
        rootFaceMm,
        angleDegrees,
        radiusMm,
        preparation.isDouble() ? Math.max(0, thicknessMm - rootFaceMm) / 2 : 0);
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

  /** The same groove with its second side that deep, mm. */
  public Groove withSecondDepth(double depthMm) {
    return new Groove(preparation, thicknessMm, gapMm, rootFaceMm, angleDegrees, radiusMm, depthMm);
  }

  /** Depth of the groove on its first side, mm. */
  public double depthMm() {
    return preparation == Preparation.SQUARE ? 0 : thicknessMm - rootFaceMm - secondDepthMm;
  }

  /** Width of the groove at the first face, mm. */
  public double faceWidthMm() {
    GrooveSide side = firstSide();
    return side.widthMm(side.heightMm());
  }

  /** The room of the first side; it takes in the gap between the root faces. */
  public GrooveSide firstSide() {
    double straightMm = preparation == Preparation.SQUARE ? thicknessMm : rootFaceMm;
    return side(straightMm, depthMm());
  }

  /** The room of the second side of a double form. */
  public GrooveSide secondSide() {
    return side(0, secondDepthMm);
  }

  private GrooveSide side(double straightMm, double depthMm) {
    return new GrooveSide(
        gapMm,
        straightMm,
        depthMm,
        preparation == Preparation.SQUARE ? 0 : edgeRadians(),
        preparation.preparedEdges(),
        preparation.hasRadius() ? radiusMm : 0);
  }

  /** Angle of one edge from the normal of the plate, rad. */
  double edgeRadians() {
    return Math.toRadians(preparation.angleIsIncluded() ? angleDegrees / 2 : angleDegrees);
  }
}
