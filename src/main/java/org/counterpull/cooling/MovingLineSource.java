package org.counterpull.cooling;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Temperature rise around an arc that moves steadily through a thin plate.
 *
 * <p><b>Formula:</b> q/(2 pi lambda d) exp(-v x/(2a)) K0(r sqrt((v/2a)2 + b/a)), r2 = x2 + y2, b =
 * (h_top + h_bottom)/(rc d). <b>Source:</b> Rosenthal, Trans. ASME 1946; surface loss after Rykalin
 * 1957. <b>Valid for:</b> full penetration, constant properties, outside the fused zone: a rise
 * over 1500 K is answered with a warning. At the source itself the temperature is infinite and
 * refused.
 */
public final class MovingLineSource {
  public static final Formula FORMULA =
      new Formula(
          "moving-line-source",
          "temperature rise around a line source moving through a thin plate",
          "K",
          "D. Rosenthal, Trans. ASME 68 (1946)");

  private MovingLineSource() {}

  /**
   * The rise without surface loss.
   *
   * @param powerW net power
   * @param travelSpeedMmPerS travel speed
   * @param metal constant properties
   * @param thicknessMm plate
   * @param xMm ahead of the arc (behind it: negative)
   * @param yMm to the side
   */
  public static Computed of(
      double powerW,
      double travelSpeedMmPerS,
      Conductor metal,
      double thicknessMm,
      double xMm,
      double yMm) {
    double riseK = riseK(powerW, travelSpeedMmPerS, metal, thicknessMm, xMm, yMm, 0);
    return FORMULA.result(
        riseK,
        new Limits()
            .within("temperature rise", riseK, 0, MovingPointSource.FUSED_RISE_K, "K")
            .outside());
  }

  /**
   * The rise in K with surface loss.
   *
   * @param bothFacesWPerM2K film coefficients of both faces added
   */
  public static double riseK(
      double powerW,
      double travelSpeedMmPerS,
      Conductor metal,
      double thicknessMm,
      double xMm,
      double yMm,
      double bothFacesWPerM2K) {
    Require.positive("power", powerW, "W");
    Require.positive("travel speed", travelSpeedMmPerS, "mm/s");
    Require.positive("thickness", thicknessMm, "mm");
    Require.notNegative("film coefficient", bothFacesWPerM2K, "W/m2K");
    double a = metal.diffusivityMm2PerS();
    double perMm = travelSpeedMmPerS / (2 * a);
    double lossPerS = metal.plateLossPerS(bothFacesWPerM2K, thicknessMm);
    double distanceMm = Require.positive("distance from the source", Math.hypot(xMm, yMm), "mm");
    double argument = distanceMm * Math.sqrt(perMm * perMm + lossPerS / a);
    return powerW
        / (2 * Math.PI * metal.conductivityWPerMmK() * thicknessMm)
        * Math.exp(-perMm * xMm - argument)
        * ScaledBesselK0.of(argument);
  }
}
