package org.counterpull.cooling;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Temperature rise around an arc that moves steadily over a thick plate.
 *
 * <p><b>Formula:</b> q/(2 pi lambda R) exp(-v (x + R)/(2a)), R2 = x2 + y2 + z2. <b>Source:</b>
 * Rosenthal, Welding Journal 1941 and Trans. ASME 1946. <b>Valid for:</b> constant properties,
 * outside the fused zone: a rise over 1500 K is answered with a warning. At the source itself the
 * temperature is infinite and refused.
 */
public final class MovingPointSource {
  public static final Formula FORMULA =
      new Formula(
          "moving-point-source",
          "temperature rise around a point source moving on a thick plate",
          "K",
          "D. Rosenthal, Trans. ASME 68 (1946)");

  static final double FUSED_RISE_K = 1500;

  private MovingPointSource() {}

  /**
   * The rise.
   *
   * @param powerW net power
   * @param travelSpeedMmPerS travel speed
   * @param metal constant properties
   * @param xMm ahead of the arc (behind it: negative)
   * @param yMm to the side
   * @param zMm down
   */
  public static Computed of(
      double powerW,
      double travelSpeedMmPerS,
      Conductor metal,
      double xMm,
      double yMm,
      double zMm) {
    double riseK = riseK(powerW, travelSpeedMmPerS, metal, xMm, yMm, zMm);
    return FORMULA.result(
        riseK, new Limits().within("temperature rise", riseK, 0, FUSED_RISE_K, "K").outside());
  }

  /** The rise in K without the trace. */
  public static double riseK(
      double powerW,
      double travelSpeedMmPerS,
      Conductor metal,
      double xMm,
      double yMm,
      double zMm) {
    Require.positive("power", powerW, "W");
    Require.positive("travel speed", travelSpeedMmPerS, "mm/s");
    double distanceMm = Math.sqrt(xMm * xMm + yMm * yMm + zMm * zMm);
    Require.positive("distance from the source", distanceMm, "mm");
    double perMm = travelSpeedMmPerS / (2 * metal.diffusivityMm2PerS());
    return powerW
        / (2 * Math.PI * metal.conductivityWPerMmK() * distanceMm)
        * Math.exp(-perMm * (xMm + distanceMm));
  }
}
