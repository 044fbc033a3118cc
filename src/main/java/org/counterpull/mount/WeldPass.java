package org.counterpull.mount;

import org.counterpull.quantity.Require;

/**
 * One pass of a weld.
 *
 * @param netJPerMm net heat per length, J/mm
 * @param travelMmPerS travel speed
 * @param beadMm2 cross-section of its weld metal
 */
public record WeldPass(double netJPerMm, double travelMmPerS, double beadMm2) {
  private static final double LEAST_REACH_MM = 2;

  public WeldPass {
    Require.positive("net heat", netJPerMm, "J/mm");
    Require.positive("travel speed", travelMmPerS, "mm/s");
    Require.positive("bead", beadMm2, "mm2");
  }

  double powerW() {
    return netJPerMm * travelMmPerS;
  }

  /** How far the bead reaches from its root: the leg of a fillet of its section. */
  double reachMm() {
    return Math.max(LEAST_REACH_MM, Math.sqrt(2 * beadMm2));
  }

  /** One of several smaller passes that lay the same metal, at most at the given speed. */
  WeldPass shared(int count, double fastestMmPerS) {
    return new WeldPass(
        netJPerMm / count, Math.min(fastestMmPerS, travelMmPerS * count), beadMm2 / count);
  }

  WeldPass hotter(double factor) {
    return new WeldPass(netJPerMm * factor, travelMmPerS, beadMm2);
  }
}
