package org.counterpull.cooling;

import org.counterpull.quantity.Require;

/**
 * Cooling time between two temperatures on the centre line of a bead on plate of any thickness,
 * from the instantaneous line source and its images: no step between thick and thin.
 *
 * <p><b>Source:</b> derived from Rykalin 1957. <b>Valid for:</b> constant properties and fast
 * beads. It shows how far the larger of the thick and thin forms overstates near the transition: up
 * to 25 %.
 */
public final class FiniteThicknessCooling {
  private static final int HALVINGS = 200;

  private FiniteThicknessCooling() {}

  /** Seconds from 800 to 500 C. */
  public static double t85S(
      double netHeatJPerMm, Conductor metal, double thicknessMm, double startC) {
    return timeToS(netHeatJPerMm, metal, thicknessMm, 500 - startC)
        - timeToS(netHeatJPerMm, metal, thicknessMm, 800 - startC);
  }

  /** Seconds after the arc passed until the centre line is down to a rise. */
  static double timeToS(double netHeatJPerMm, Conductor metal, double thicknessMm, double riseK) {
    Require.positive("rise", riseK, "K");
    double low = 0;
    double high =
        PlateCooling.thickS(netHeatJPerMm, metal, riseK)
            + PlateCooling.thinWithoutLossS(netHeatJPerMm, metal, thicknessMm, riseK);
    while (InstantSources.lineOnPlateK(netHeatJPerMm, metal, thicknessMm, 0, 0, high) > riseK) {
      high *= 2;
    }
    for (int i = 0; i < HALVINGS && high - low > 1e-12 * high; i++) {
      double middle = (low + high) / 2;
      if (InstantSources.lineOnPlateK(netHeatJPerMm, metal, thicknessMm, 0, 0, middle) > riseK) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }
}
