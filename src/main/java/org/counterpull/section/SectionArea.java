package org.counterpull.section;

/**
 * Cross-section areas in mm2, from outside dimensions in mm.
 *
 * <p><b>Source:</b> plane geometry. <b>Valid for:</b> sections whose walls and legs have constant
 * thickness; radii zero or greater. Dimensions that make no section throw {@link
 * IllegalArgumentException}.
 */
public final class SectionArea {
  /** Area between a square of unit side and the quarter circle of unit radius in its corner. */
  private static final double CORNER = 1 - Math.PI / 4;

  private SectionArea() {}

  /** A rectangle: flat or square bar, plate. */
  public static double rectangleMm2(double widthMm, double thicknessMm) {
    positive("width", widthMm);
    positive("thickness", thicknessMm);
    return widthMm * thicknessMm;
  }

  /** A full circle: round bar. */
  public static double roundMm2(double diameterMm) {
    positive("diameter", diameterMm);
    return Math.PI / 4 * diameterMm * diameterMm;
  }

  /**
   * A ring: round tube.
   *
   * @param outsideMm outside diameter
   * @param wallMm wall, at most half the diameter
   */
  public static double roundTubeMm2(double outsideMm, double wallMm) {
    positive("outside diameter", outsideMm);
    wall(wallMm, outsideMm);
    return Math.PI * (outsideMm - wallMm) * wallMm;
  }

  /**
   * A hollow rectangle; the inside corner radius is the outside one less the wall, or zero.
   *
   * @param acrossMm one outside dimension
   * @param upMm the other outside dimension
   * @param wallMm wall, at most half the smaller dimension
   * @param outsideRadiusMm outside corner radius; EN 10219-2 calculates with twice the wall up to 6
   *     mm
   */
  public static double rectangularTubeMm2(
      double acrossMm, double upMm, double wallMm, double outsideRadiusMm) {
    positive("width", acrossMm);
    positive("height", upMm);
    wall(wallMm, Math.min(acrossMm, upMm));
    radius(outsideRadiusMm, Math.min(acrossMm, upMm) / 2);
    double insideRadiusMm = Math.max(0, outsideRadiusMm - wallMm);
    return 2 * wallMm * (acrossMm + upMm - 2 * wallMm)
        - 4 * CORNER * (outsideRadiusMm * outsideRadiusMm - insideRadiusMm * insideRadiusMm);
  }

  /**
   * An angle: {@code t (a + b - t) + (1 - pi/4) (r1^2 - 2 r2^2)}.
   *
   * @param legMm one leg, outside
   * @param otherLegMm the other leg, outside
   * @param thicknessMm of both legs
   * @param rootRadiusMm r1, fillet in the corner
   * @param toeRadiusMm r2, rounding of each toe; half of r1 in EN 10056-1
   */
  public static double angleMm2(
      double legMm,
      double otherLegMm,
      double thicknessMm,
      double rootRadiusMm,
      double toeRadiusMm) {
    positive("leg", legMm);
    positive("leg", otherLegMm);
    positive("thickness", thicknessMm);
    double shorterMm = Math.min(legMm, otherLegMm);
    require(thicknessMm < shorterMm, "thickness", thicknessMm, "less than the shorter leg");
    radius(rootRadiusMm, shorterMm - thicknessMm);
    radius(toeRadiusMm, thicknessMm);
    return thicknessMm * (legMm + otherLegMm - thicknessMm)
        + CORNER * (rootRadiusMm * rootRadiusMm - 2 * toeRadiusMm * toeRadiusMm);
  }

  /**
   * A channel with parallel flanges, or an I or H section.
   *
   * @param heightMm over both flanges
   * @param flangeWidthMm of one flange, over the web
   * @param webMm web thickness
   * @param flangeMm flange thickness
   * @param filletRadiusMm between web and flange
   * @param fillets 2 for a channel, 4 for an I section
   */
  private static double flangedMm2(
      double heightMm,
      double flangeWidthMm,
      double webMm,
      double flangeMm,
      double filletRadiusMm,
      int fillets) {
    positive("height", heightMm);
    positive("flange width", flangeWidthMm);
    positive("web", webMm);
    positive("flange", flangeMm);
    require(webMm < flangeWidthMm, "web", webMm, "less than the flange width");
    require(2 * flangeMm < heightMm, "flange", flangeMm, "less than half the height");
    radius(filletRadiusMm, heightMm / 2 - flangeMm);
    return 2 * flangeWidthMm * flangeMm
        + (heightMm - 2 * flangeMm) * webMm
        + fillets * CORNER * filletRadiusMm * filletRadiusMm;
  }

  /** A channel; parameters as {@link #iSectionMm2}. */
  public static double channelMm2(
      double heightMm, double flangeWidthMm, double webMm, double flangeMm, double filletMm) {
    return flangedMm2(heightMm, flangeWidthMm, webMm, flangeMm, filletMm, 2);
  }

  /**
   * An I or H section.
   *
   * @param heightMm over both flanges
   * @param flangeWidthMm over the flange
   * @param webMm web thickness
   * @param flangeMm flange thickness
   * @param filletMm radius between web and flange
   */
  public static double iSectionMm2(
      double heightMm, double flangeWidthMm, double webMm, double flangeMm, double filletMm) {
    return flangedMm2(heightMm, flangeWidthMm, webMm, flangeMm, filletMm, 4);
  }

  private static void wall(double wallMm, double acrossMm) {
    positive("wall", wallMm);
    require(2 * wallMm <= acrossMm, "wall", wallMm, "at most half the outside dimension");
  }

  private static void radius(double radiusMm, double mostMm) {
    require(
        radiusMm >= 0 && radiusMm <= mostMm,
        "radius",
        radiusMm,
        "zero or more and fit the section");
  }

  private static void positive(String what, double valueMm) {
    require(valueMm > 0 && Double.isFinite(valueMm), what, valueMm, "greater than zero");
  }

  private static void require(boolean holds, String what, double valueMm, String must) {
    if (!holds) {
      throw new IllegalArgumentException(what + " " + valueMm + " mm must be " + must);
    }
  }
}
