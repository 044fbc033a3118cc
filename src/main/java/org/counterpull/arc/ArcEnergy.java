package org.counterpull.arc;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Arc energy: electrical energy of the arc per length of weld, without any efficiency.
 *
 * <p><b>Formula:</b> E = U I / v / 1000 (kJ/mm, mm/s). <b>Source:</b> ISO/TR 18491:2015, methods A,
 * B and C; ASME IX QW-409.1 and AWS D1.1 use the same quantity in J/in. <b>Valid for:</b> mean
 * volts and amperes only where the source doesn't shape the waveform; otherwise method B or C.
 * Outside usual arc settings it answers with a warning.
 */
public final class ArcEnergy {
  public static final Formula FORMULA =
      new Formula("arc-energy", "arc energy per length", "kJ/mm", "ISO/TR 18491:2015, method A");

  private static final double J_PER_KJ = 1000;

  private ArcEnergy() {}

  /**
   * Method A.
   *
   * @param voltageV arc voltage, measured near the arc
   * @param currentA arc current
   * @param travelSpeedMmPerS travel speed
   */
  public static Computed of(double voltageV, double currentA, double travelSpeedMmPerS) {
    return FORMULA.result(
        kJPerMm(voltageV, currentA, travelSpeedMmPerS),
        usualArc(voltageV, currentA, travelSpeedMmPerS).outside());
  }

  /** Method A without the trace. */
  public static double kJPerMm(double voltageV, double currentA, double travelSpeedMmPerS) {
    Require.positive("arc voltage", voltageV, "V");
    Require.positive("current", currentA, "A");
    return fromPowerKJPerMm(voltageV * currentA, travelSpeedMmPerS);
  }

  /** Method C: from the mean instantaneous power in W. */
  public static double fromPowerKJPerMm(double powerW, double travelSpeedMmPerS) {
    Require.positive("arc power", powerW, "W");
    Require.positive("travel speed", travelSpeedMmPerS, "mm/s");
    return powerW / travelSpeedMmPerS / J_PER_KJ;
  }

  /** Method B: from the energy in J that a run took, and its length. */
  public static double fromEnergyKJPerMm(double energyJ, double lengthMm) {
    Require.positive("arc energy", energyJ, "J");
    Require.positive("run length", lengthMm, "mm");
    return energyJ / lengthMm / J_PER_KJ;
  }

  static Limits usualArc(double voltageV, double currentA, double travelSpeedMmPerS) {
    return new Limits()
        .within("arc voltage", voltageV, 8, 50, "V")
        .within("current", currentA, 5, 1500, "A")
        .within("travel speed", travelSpeedMmPerS, 0.5, 50, "mm/s");
  }
}
