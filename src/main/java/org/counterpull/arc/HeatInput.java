package org.counterpull.arc;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Heat input of EN and ISO: arc energy times the factor k of the process.
 *
 * <p><b>Formula:</b> Q = k U I / v / 1000 (kJ/mm, mm/s). <b>Source:</b> EN 1011-1 / ISO/TR 17671-1.
 * <b>Valid for:</b> comparison with limits and formulas of EN and ISO, never with AWS or ASME
 * limits, which mean arc energy. Outside 0.6 to 1 for k, or usual arc settings, it answers with a
 * warning.
 */
public final class HeatInput {
  public static final Formula FORMULA =
      new Formula(
          "heat-input",
          "heat input per length, with the factor k of the process",
          "kJ/mm",
          "EN 1011-1 / ISO/TR 17671-1");

  private HeatInput() {}

  /**
   * Heat input.
   *
   * @param k factor of the process, 0.6 to 1
   * @param voltageV arc voltage
   * @param currentA arc current
   * @param travelSpeedMmPerS travel speed
   */
  public static Computed of(double k, double voltageV, double currentA, double travelSpeedMmPerS) {
    Limits limits =
        ArcEnergy.usualArc(voltageV, currentA, travelSpeedMmPerS)
            .within("efficiency k", k, 0.6, 1, "1");
    return FORMULA.result(
        kJPerMm(k, ArcEnergy.kJPerMm(voltageV, currentA, travelSpeedMmPerS)), limits.outside());
  }

  /** Heat input from arc energy. */
  public static double kJPerMm(WeldingProcess process, double arcEnergyKJPerMm) {
    return kJPerMm(process.k(), arcEnergyKJPerMm);
  }

  private static double kJPerMm(double k, double arcEnergyKJPerMm) {
    Require.positive("k", k, "");
    return k * Require.positive("arc energy", arcEnergyKJPerMm, "kJ/mm");
  }
}
