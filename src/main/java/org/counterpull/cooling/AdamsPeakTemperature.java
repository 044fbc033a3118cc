package org.counterpull.cooling;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Peak temperature at a distance from the fusion boundary of a full-penetration pass.
 *
 * <p><b>Formula:</b> 1/(Tp - T0) = 4.13 rc d Y / H + 1/(Tm - T0). <b>Source:</b> C. M. Adams,
 * Welding Journal 1958; AWS Welding Handbook, 8th ed., vol. 1, ch. 3 (from memory). <b>Valid
 * for:</b> single full-penetration passes in plate, 10 to 20 %. On plate that is thick for its heat
 * (relative thickness over 0.9) it is answered with a warning; use {@link ThickPlatePeak} there.
 */
public final class AdamsPeakTemperature {
  public static final Formula FORMULA =
      new Formula(
          "peak-temperature",
          "peak temperature beside a full-penetration pass",
          "C",
          "from memory: C. M. Adams, Welding Journal 1958; AWS Welding Handbook, 8th ed., vol. 1");

  private static final double FACTOR = 4.13;

  private AdamsPeakTemperature() {}

  /**
   * Peak temperature.
   *
   * @param netHeatJPerMm net heat
   * @param thicknessMm plate
   * @param distanceMm from the fusion boundary, zero or greater
   * @param preheatC start temperature
   * @param meltingC melting temperature, above the start temperature
   * @param heatCapacityJPerMm3K heat capacity by volume
   */
  public static Computed of(
      double netHeatJPerMm,
      double thicknessMm,
      double distanceMm,
      double preheatC,
      double meltingC,
      double heatCapacityJPerMm3K) {
    Require.notNegative("distance", distanceMm, "mm");
    double inverse =
        perMm(netHeatJPerMm, thicknessMm, heatCapacityJPerMm3K) * distanceMm
            + 1 / meltingRise(preheatC, meltingC);
    double tau =
        AdamsCoolingRate.relativeThickness(
            netHeatJPerMm, thicknessMm, Math.min(preheatC, 500), 550, heatCapacityJPerMm3K);
    return FORMULA.result(
        preheatC + 1 / inverse,
        new Limits()
            .within("relative thickness", tau, 0, AdamsCoolingRate.THICK_FROM, "1")
            .outside());
  }

  /** Distance from the fusion boundary in mm at which the peak is as given. */
  public static double distanceMm(
      double netHeatJPerMm,
      double thicknessMm,
      double peakC,
      double preheatC,
      double meltingC,
      double heatCapacityJPerMm3K) {
    Require.positive("peak over preheat", peakC - preheatC, "K");
    Require.notNegative("melting over peak", meltingC - peakC, "K");
    return (1 / (peakC - preheatC) - 1 / meltingRise(preheatC, meltingC))
        / perMm(netHeatJPerMm, thicknessMm, heatCapacityJPerMm3K);
  }

  private static double perMm(double netHeatJPerMm, double thicknessMm, double heatCapacity) {
    return FACTOR
        * Require.positive("heat capacity", heatCapacity, "J/mm3K")
        * Require.positive("thickness", thicknessMm, "mm")
        / Require.positive("net heat", netHeatJPerMm, "J/mm");
  }

  private static double meltingRise(double preheatC, double meltingC) {
    return Require.positive("melting over preheat", meltingC - preheatC, "K");
  }
}
