package org.counterpull.cost;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Shielding gas: {@code flow (arc time + starts (pre-flow + post-flow))}.
 *
 * <p><b>Source:</b> derived. <b>Valid for:</b> flows of 4 to 25 l/min; outside it answers with a
 * warning. Leaks and purging are not in it.
 */
public final class GasUsed {
  public static final Formula FORMULA =
      new Formula("gas-used", "shielding gas", "l", "derived: flow times time");

  private static final double S_PER_MIN = 60;

  private GasUsed() {}

  /**
   * Gas, litres.
   *
   * @param flowLPerMin flow, l/min, 0 or above
   * @param arcTimeS arc-on time, s, 0 or above
   * @param starts how often the arc is started, 0 or above
   * @param beforeAndAfterS gas before and after each arc, s, 0 or above
   */
  public static Computed of(
      double flowLPerMin, double arcTimeS, int starts, double beforeAndAfterS) {
    Require.notNegative("gas flow", flowLPerMin, "l/min");
    Require.notNegative("arc time", arcTimeS, "s");
    Require.notNegative("number of starts", starts, "");
    Require.notNegative("pre-flow and post-flow", beforeAndAfterS, "s");
    return FORMULA.result(
        flowLPerMin * (arcTimeS + starts * beforeAndAfterS) / S_PER_MIN,
        flowLPerMin == 0
            ? new Limits().outside()
            : new Limits().within("gas flow", flowLPerMin, 4, 25, "l/min").outside());
  }
}
