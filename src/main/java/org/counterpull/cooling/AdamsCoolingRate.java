package org.counterpull.cooling;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Cooling rate on the weld centre line at a temperature, usually 550 C.
 *
 * <p><b>Formula:</b> thick 2 pi lambda (Tc - T0)2 / H; thin 2 pi lambda rc (d/H)2 (Tc - T0)3;
 * relative thickness tau = d sqrt(rc (Tc - T0)/H), split at 0.75. <b>Source:</b> C. M. Adams 1958;
 * AWS Welding Handbook, 8th ed., vol. 1, ch. 3 (from memory). <b>Valid for:</b> tau below 0.6 or
 * above 0.9; between, up to 25 % off and answered with a warning.
 */
public final class AdamsCoolingRate {
  public static final Formula FORMULA =
      new Formula(
          "cooling-rate",
          "cooling rate on the weld centre line",
          "K/s",
          "from memory: C. M. Adams, Welding Journal 1958; AWS Welding Handbook, 8th ed., vol. 1");

  static final double THIN_TO = 0.6;
  static final double THICK_FROM = 0.9;
  private static final double SPLIT = 0.75;

  private AdamsCoolingRate() {}

  /**
   * Cooling rate.
   *
   * @param netHeatJPerMm net heat
   * @param thicknessMm plate
   * @param preheatC start temperature
   * @param atC temperature asked about, above the start
   * @param metal constant properties
   */
  public static Computed of(
      double netHeatJPerMm, double thicknessMm, double preheatC, double atC, Conductor metal) {
    double tau =
        relativeThickness(netHeatJPerMm, thicknessMm, preheatC, atC, metal.heatCapacityJPerMm3K());
    double riseK = atC - preheatC;
    double thick = 2 * Math.PI * metal.conductivityWPerMmK() * riseK * riseK / netHeatJPerMm;
    return FORMULA.result(
        tau > SPLIT ? thick : thick * tau * tau,
        new Limits()
            .expect(
                tau <= THIN_TO || tau >= THICK_FROM,
                "the plate is neither thin nor thick for its heat: up to 25 % off")
            .outside());
  }

  /** Relative thickness tau. */
  public static double relativeThickness(
      double netHeatJPerMm,
      double thicknessMm,
      double preheatC,
      double atC,
      double heatCapacityJPerMm3K) {
    Require.positive("temperature over preheat", atC - preheatC, "K");
    return Require.positive("thickness", thicknessMm, "mm")
        * Math.sqrt(
            Require.positive("heat capacity", heatCapacityJPerMm3K, "J/mm3K")
                * (atC - preheatC)
                / Require.positive("net heat", netHeatJPerMm, "J/mm"));
  }

  /** Start temperature in C that gives a cooling rate by the thin form. */
  public static double thinPreheatC(
      double rateKPerS, double netHeatJPerMm, double thicknessMm, double atC, Conductor metal) {
    double relative = netHeatJPerMm / thicknessMm;
    return atC
        - Math.cbrt(
            rateKPerS
                * relative
                * relative
                / (2 * Math.PI * metal.conductivityWPerMmK() * metal.heatCapacityJPerMm3K()));
  }

  /** Start temperature in C that gives a cooling rate by the thick form. */
  public static double thickPreheatC(
      double rateKPerS, double netHeatJPerMm, double atC, Conductor metal) {
    return atC - Math.sqrt(rateKPerS * netHeatJPerMm / (2 * Math.PI * metal.conductivityWPerMmK()));
  }
}
