package org.counterpull.groove;

import org.counterpull.quantity.Require;

/**
 * The room that the beads of one side fill: straight walls at the root, then one or both edges
 * leaning back, with a root radius where the form has one. Heights are measured from the root.
 *
 * @param gapMm width at the root
 * @param straightMm height of the straight part: the root face
 * @param depthMm depth of the cut edge above it
 * @param edgeRadians lean of a cut edge from the normal of the plate
 * @param edges cut edges: 0, 1 or 2
 * @param radiusMm root radius; 0 for none
 */
public record GrooveSide(
    double gapMm,
    double straightMm,
    double depthMm,
    double edgeRadians,
    int edges,
    double radiusMm) {
  private static final int MOST_STEPS = 200;

  public GrooveSide {
    Require.notNegative("root gap", gapMm, "mm");
    Require.notNegative("root face", straightMm, "mm");
    Require.notNegative("depth", depthMm, "mm");
    Require.within("edges", edges, 0, 2, "1");
    Require.within("lean of an edge", edgeRadians, 0, Math.toRadians(85), "rad");
    Require.notNegative("root radius", radiusMm, "mm");
  }

  /** From the root to the face, mm. */
  public double heightMm() {
    return straightMm + depthMm;
  }

  /** Width at a height, mm. */
  public double widthMm(double heightMm) {
    return gapMm + edges * reachMm(heightMm - straightMm);
  }

  /** Area up to a height, mm2. */
  public double areaMm2(double heightMm) {
    return gapMm * heightMm + edges * besideMm2(heightMm - straightMm);
  }

  /** Area up to the face, mm2. */
  public double areaMm2() {
    return areaMm2(heightMm());
  }

  /**
   * Height that an area fills, mm; the face where the area is more than the room. By bisection down
   * to the last bit, so that the area below the answer is the area asked for.
   *
   * @param filledMm2 area, 0 or above
   */
  public double levelMm(double filledMm2) {
    Require.notNegative("filled area", filledMm2, "mm2");
    double low = gapMm > 0 ? 0 : Math.min(straightMm, heightMm());
    double high = heightMm();
    if (areaMm2(high) <= filledMm2) {
      return high;
    }
    for (int i = 0; i < MOST_STEPS && high - low > Math.ulp(high); i++) {
      double middle = (low + high) / 2;
      if (areaMm2(middle) < filledMm2) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  /** How far one cut edge has leant back at a height above the root face, mm. */
  private double reachMm(double aboveMm) {
    if (aboveMm <= 0) {
      return 0;
    }
    if (aboveMm < arcHeightMm()) {
      double down = radiusMm - aboveMm;
      return Math.sqrt(Math.max(0, radiusMm * radiusMm - down * down));
    }
    return radiusMm * Math.cos(edgeRadians) + (aboveMm - arcHeightMm()) * Math.tan(edgeRadians);
  }

  /** Area beside one cut edge up to a height above the root face, mm2. */
  private double besideMm2(double aboveMm) {
    if (aboveMm <= 0) {
      return 0;
    }
    double arcMm = Math.min(aboveMm, arcHeightMm());
    double turned = radiusMm > 0 ? Math.acos(1 - arcMm / radiusMm) : 0;
    double arcMm2 = radiusMm * radiusMm * (turned / 2 - Math.sin(2 * turned) / 4);
    double flankMm = aboveMm - arcMm;
    return arcMm2
        + flankMm * radiusMm * Math.cos(edgeRadians)
        + flankMm * flankMm * Math.tan(edgeRadians) / 2;
  }

  private double arcHeightMm() {
    return radiusMm * (1 - Math.sin(edgeRadians));
  }
}
