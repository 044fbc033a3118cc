package org.counterpull.power;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Multiplier on the rated supply current for the ampacity of the conductors to an arc welder, by
 * steps of duty cycle.
 *
 * <p><b>Source:</b> NEC 2008, table 630.11(A), machines that are not motor-generators.
 *
 * <p><b>Valid for:</b> duty cycles up to 100 %; between the table's rows the next higher duty
 * counts, at 20 % and below 0.45.
 */
public final class NecDutyMultiplier {
  public static final Formula FORMULA =
      new Formula(
          "nec-duty-multiplier",
          "share of the rated supply current that conductors must carry",
          "1",
          "NEC 2008, table 630.11(A)");

  private static final int[] DUTY_PERCENT = {20, 30, 40, 50, 60, 70, 80, 90, 100};
  private static final double[] MULTIPLIER = {.45, .55, .63, .71, .78, .84, .89, .95, 1};

  private NecDutyMultiplier() {}

  /**
   * The multiplier.
   *
   * @param dutyPercent duty cycle, %, above 0 to 100
   */
  public static Computed of(double dutyPercent) {
    Require.positive("duty cycle", dutyPercent, "%");
    Require.within("duty cycle", dutyPercent, 0, 100, "%");
    int row = 0;
    while (DUTY_PERCENT[row] < dutyPercent) {
      row++;
    }
    return FORMULA.result(MULTIPLIER[row], new Limits().outside());
  }
}
