package org.counterpull.cooling;

import org.counterpull.quantity.Require;

/**
 * Where a bead on thick plate reaches a peak temperature: radius from the arc line.
 *
 * <p><b>Formula:</b> Tp - T0 = 2 H / (pi e rc r2). <b>Source:</b> derived from the instantaneous
 * line source of Rykalin. <b>Valid for:</b> fast beads on plate that is thick for their heat.
 */
public final class ThickPlatePeak {
  private ThickPlatePeak() {}

  /** Radius in mm at which the peak rises by so much; at the melting rise, the fused radius. */
  public static double radiusMm(double netHeatJPerMm, double peakRiseK, double heatCapacity) {
    Require.positive("net heat", netHeatJPerMm, "J/mm");
    Require.positive("peak rise", peakRiseK, "K");
    Require.positive("heat capacity", heatCapacity, "J/mm3K");
    return Math.sqrt(2 * netHeatJPerMm / (Math.PI * Math.E * heatCapacity * peakRiseK));
  }
}
