package org.counterpull.cost;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Electricity: {@code U I t / eta + P_idle (time at the work - t)}.
 *
 * <p><b>Source:</b> derived. <b>Valid for:</b> efficiencies of 0.4 to 0.95; outside it answers with
 * a warning.
 */
public final class EnergyUsed {
  public static final Formula FORMULA =
      new Formula("energy-used", "electricity of the power source", "kWh", "derived");

  /** Draw of a machine that is on without an arc, W: common practice, no source. */
  public static final double IDLE_W = 50;

  private static final double J_PER_KWH = 3.6e6;

  private EnergyUsed() {}

  /** While the arc burns, kWh; arguments as for {@link #of}. */
  public static double arcKWh(
      double currentA, double voltageV, double arcTimeS, double efficiency) {
    Require.positive("welding current", currentA, "A");
    Require.positive("arc voltage", voltageV, "V");
    Require.notNegative("arc time", arcTimeS, "s");
    Require.positive("efficiency", efficiency, "1");
    return currentA * voltageV * arcTimeS / efficiency / J_PER_KWH;
  }

  /**
   * Between arcs, kWh.
   *
   * @param betweenS time that the machine is on without an arc, s, 0 or above
   */
  public static double idleKWh(double betweenS) {
    return IDLE_W * Require.notNegative("time between arcs", betweenS, "s") / J_PER_KWH;
  }

  /**
   * Electricity of one weld.
   *
   * @param currentA welding current, A, above 0
   * @param voltageV arc voltage, V, above 0
   * @param arcTimeS arc-on time, s, 0 or above
   * @param efficiency of the power source, above 0
   * @param betweenS time that the machine is on without an arc, s, 0 or above
   */
  public static Computed of(
      double currentA, double voltageV, double arcTimeS, double efficiency, double betweenS) {
    return FORMULA.result(
        arcKWh(currentA, voltageV, arcTimeS, efficiency) + idleKWh(betweenS),
        new Limits().within("efficiency", efficiency, 0.4, 0.95, "1").outside());
  }
}
