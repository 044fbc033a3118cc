package org.counterpull.cooling;

import org.counterpull.quantity.Require;

/**
 * Temperature rise from an arc that moves a finite length over a thick plate and stops: starts,
 * stops and short beads.
 *
 * <p><b>Formula:</b> integral over the time welded of 2q/(rc (4 pi a (t-s))^1.5) exp(-((x-vs)2 + y2
 * + z2)/(4a(t-s))). <b>Source:</b> Carslaw and Jaeger; Rykalin 1957. <b>Valid for:</b> constant
 * properties, outside the fused zone; a point on the line of the arc while it burns is refused.
 */
public final class FiniteBeadSource {
  private static final int INTERVALS = 4000;

  private FiniteBeadSource() {}

  /**
   * The rise in K at a time after the start. The arc starts at x = 0 and moves towards positive x.
   *
   * @param powerW net power
   * @param travelSpeedMmPerS travel speed
   * @param metal constant properties
   * @param lengthMm length of the bead
   * @param xMm along the bead from its start
   * @param offsetMm distance from the line of the arc, greater than zero
   * @param tS time since the start
   */
  public static double riseK(
      double powerW,
      double travelSpeedMmPerS,
      Conductor metal,
      double lengthMm,
      double xMm,
      double offsetMm,
      double tS) {
    Require.positive("power", powerW, "W");
    Require.positive("travel speed", travelSpeedMmPerS, "mm/s");
    Require.positive("length", lengthMm, "mm");
    Require.positive("offset", offsetMm, "mm");
    Require.positive("time", tS, "s");
    double weldedS = Math.min(tS, lengthMm / travelSpeedMmPerS);
    // With w = sqrt(age) the integrand stays smooth while the arc burns: d(age) = 2 w dw.
    double least = Math.sqrt(tS - weldedS);
    double step = (Math.sqrt(tS) - least) / INTERVALS;
    double sum = 0;
    for (int i = 0; i < INTERVALS; i++) {
      double w = least + (i + 0.5) * step;
      double alongMm = xMm - travelSpeedMmPerS * (tS - w * w);
      double distanceMm = Math.hypot(alongMm, offsetMm);
      sum += 2 * w * InstantSources.pointOnThickK(powerW, metal, distanceMm, w * w);
    }
    return sum * step;
  }
}
