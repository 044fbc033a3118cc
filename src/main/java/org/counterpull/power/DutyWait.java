package org.counterpull.power;

import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Require;

/**
 * Pauses that a duty cycle asks for: {@code wait = arc time (1/X - 1)}.
 *
 * <p><b>Source:</b> derived from the definition of the duty cycle in IEC 60974-1.
 *
 * <p><b>Valid for:</b> work that goes on for longer than one 10 min period, at the plate's ambient
 * temperature. A single arc longer than {@link #longestArcS} from cold may trip the machine however
 * long the pauses are.
 */
public final class DutyWait {
  public static final Formula FORMULA =
      new Formula("duty-wait", "pauses for an arc time", "s", "derived from IEC 60974-1");

  private DutyWait() {}

  /**
   * Total of the pauses, s.
   *
   * @param arcTimeS total arc time, s, 0 or above
   * @param dutyPercent duty cycle at the welding current, %, above 0 to 100
   */
  public static double seconds(double arcTimeS, double dutyPercent) {
    Require.notNegative("arc time", arcTimeS, "s");
    Require.positive("duty cycle", dutyPercent, "%");
    Require.within("duty cycle", dutyPercent, 0, 100, "%");
    return arcTimeS * (100 / dutyPercent - 1);
  }

  /**
   * Longest single arc from cold, s: the duty cycle's share of one period.
   *
   * @param dutyPercent duty cycle at the welding current, %, above 0 to 100
   */
  public static double longestArcS(double dutyPercent) {
    Require.within("duty cycle", dutyPercent, 0, 100, "%");
    return DutyCycle.PERIOD_S * dutyPercent / 100;
  }
}
