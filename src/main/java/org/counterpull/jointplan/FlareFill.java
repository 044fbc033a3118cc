package org.counterpull.jointplan;

import org.counterpull.quantity.Require;

/**
 * Metal in a flare groove that is filled to a throat.
 *
 * <p>The gap between a round of radius R and a flat grows as g + R - sqrt(R2 - s2) with the
 * distance s from the line where they are nearest. The deepest 3/8 R stay unfused with gas-shielded
 * wire, 11/16 R with stick and self-shielded wire, so that a flush fill has the throat of AWS D1.1;
 * a throat a takes the metal from there to that distance plus a. Derived.
 */
final class FlareFill {
  private static final double UNFUSED_WITH_GAS = 3.0 / 8;
  private static final double UNFUSED_WITHOUT = 11.0 / 16;

  private FlareFill() {}

  /**
   * Metal of one flare bevel, mm2; a flare V takes twice that.
   *
   * @param radiusMm outside radius, above 0
   * @param gapMm gap at the nearest line, 0 or above
   * @param throatMm effective throat, above 0; more than a flush fill gives counts as flush
   * @param gasShielded wire under gas
   */
  static double mm2(double radiusMm, double gapMm, double throatMm, boolean gasShielded) {
    Require.positive("radius", radiusMm, "mm");
    Require.notNegative("gap", gapMm, "mm");
    Require.positive("throat", throatMm, "mm");
    double from = radiusMm * (gasShielded ? UNFUSED_WITH_GAS : UNFUSED_WITHOUT);
    double to = Math.min(radiusMm, from + throatMm);
    return between(radiusMm, to) - between(radiusMm, from) + gapMm * (to - from);
  }

  /** Area between round and flat from the nearest line to a distance. */
  private static double between(double radiusMm, double distanceMm) {
    double root = Math.sqrt(radiusMm * radiusMm - distanceMm * distanceMm);
    double underArc =
        (distanceMm * root + radiusMm * radiusMm * Math.asin(distanceMm / radiusMm)) / 2;
    return radiusMm * distanceMm - underArc;
  }
}
