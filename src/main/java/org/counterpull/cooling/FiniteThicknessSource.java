package org.counterpull.cooling;

import org.counterpull.quantity.Require;

/**
 * Temperature rise around an arc that moves over a plate of any thickness, its faces without loss.
 *
 * <p><b>Formula:</b> the point source and its mirror images at 2 i d. <b>Source:</b> Grong,
 * Metallurgical Modelling of Welding, 1.10.4. <b>Valid for:</b> constant properties, outside the
 * fused zone. The sum stops when a pair adds less than 1e-12 of it.
 */
public final class FiniteThicknessSource {
  private static final double NEGLIGIBLE = 1e-12;
  private static final int MOST_PAIRS = 100_000;

  private FiniteThicknessSource() {}

  /**
   * The rise in K.
   *
   * @param powerW net power
   * @param travelSpeedMmPerS travel speed
   * @param metal constant properties
   * @param thicknessMm plate
   * @param xMm ahead of the arc (behind it: negative)
   * @param yMm to the side
   * @param zMm down, 0 to the thickness
   */
  public static double riseK(
      double powerW,
      double travelSpeedMmPerS,
      Conductor metal,
      double thicknessMm,
      double xMm,
      double yMm,
      double zMm) {
    Require.positive("thickness", thicknessMm, "mm");
    double sum = MovingPointSource.riseK(powerW, travelSpeedMmPerS, metal, xMm, yMm, zMm);
    for (int i = 1; i <= MOST_PAIRS; i++) {
      double imageMm = 2.0 * i * thicknessMm;
      double pair =
          MovingPointSource.riseK(powerW, travelSpeedMmPerS, metal, xMm, yMm, zMm - imageMm)
              + MovingPointSource.riseK(powerW, travelSpeedMmPerS, metal, xMm, yMm, zMm + imageMm);
      sum += pair;
      if (pair < NEGLIGIBLE * sum) {
        break;
      }
    }
    return sum;
  }
}
