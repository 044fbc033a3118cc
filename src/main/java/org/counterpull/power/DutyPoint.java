package org.counterpull.power;

import org.counterpull.quantity.Require;

/**
 * One point of a machine's plate: "20 % at 200 A".
 *
 * @param currentA welding current, A
 * @param dutyPercent share of a 10 min period, %, above 0 to 100
 */
public record DutyPoint(double currentA, double dutyPercent) {
  public DutyPoint {
    Require.positive("current of a duty point", currentA, "A");
    Require.positive("duty cycle", dutyPercent, "%");
    Require.within("duty cycle", dutyPercent, 0, 100, "%");
  }
}
