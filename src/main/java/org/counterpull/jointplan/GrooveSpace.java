package org.counterpull.jointplan;

import org.counterpull.quantity.Require;

/**
 * The space that one side's beads fill in a groove: straight walls over the root face, then opening
 * at a constant rate.
 *
 * @param gapMm width at the root
 * @param rootFaceMm height of the straight part
 * @param openingPerMm growth of the width for each mm of height above the root face
 * @param depthMm height from the root to the face
 */
record GrooveSpace(double gapMm, double rootFaceMm, double openingPerMm, double depthMm) {

  GrooveSpace {
    Require.notNegative("root gap", gapMm, "mm");
    Require.within("root face", rootFaceMm, 0, depthMm, "mm");
    Require.notNegative("opening", openingPerMm, "mm/mm");
  }

  /** Width at a height above the root, mm. */
  double widthMm(double heightMm) {
    return gapMm + openingPerMm * Math.max(0, heightMm - rootFaceMm);
  }

  /** Area filled up to a height, mm2. */
  double areaMm2(double heightMm) {
    double above = Math.max(0, heightMm - rootFaceMm);
    return gapMm * heightMm + openingPerMm * above * above / 2;
  }

  /** Height that an area fills, mm, at most the depth; by bisection, to a thousandth of a mm. */
  double levelMm(double filledMm2) {
    double low = 0;
    double high = depthMm;
    if (areaMm2(high) <= filledMm2) {
      return high;
    }
    while (high - low > 1e-3) {
      double middle = (low + high) / 2;
      if (areaMm2(middle) < filledMm2) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }
}
