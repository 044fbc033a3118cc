package org.counterpull.power;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Duty cycle at another current than the rated one: {@code X2 = X1 (I1/I2)^2}, at most 100 %.
 *
 * <p><b>Source:</b> IEC 60974-1 defines the duty cycle as a share of a 10 min period; the square
 * law is equal resistive heating (from memory).
 *
 * <p><b>Valid for:</b> currents up to the rated one. Machines with fixed losses give less than the
 * law at low current, transformers on a hot restart trip earlier. Above the rated current the value
 * still comes, with a warning: a plate never promises more than its largest current.
 */
public final class DutyCycle {
  public static final Formula FORMULA =
      new Formula(
          "duty-cycle",
          "duty cycle at a welding current",
          "%",
          "IEC 60974-1 (duty cycle); equal resistive heating, from memory");

  /** Length of the period that a duty cycle is a share of, s. */
  public static final double PERIOD_S = 600;

  private DutyCycle() {}

  /**
   * Duty cycle with its warnings.
   *
   * @param ratedCurrentA current of the plate's rating, A, above 0
   * @param ratedDutyPercent duty cycle at that current, %, above 0 to 100
   * @param currentA welding current asked about, A, above 0
   */
  public static Computed of(double ratedCurrentA, double ratedDutyPercent, double currentA) {
    double dutyPercent = percent(ratedCurrentA, ratedDutyPercent, currentA);
    return FORMULA.result(
        dutyPercent,
        new Limits()
            .within("welding current", currentA, 0, ratedCurrentA, "A (the rated current)")
            .outside());
  }

  /** Duty cycle in %, arguments as for {@link #of}. */
  public static double percent(double ratedCurrentA, double ratedDutyPercent, double currentA) {
    Require.positive("rated current", ratedCurrentA, "A");
    Require.positive("rated duty cycle", ratedDutyPercent, "%");
    Require.within("rated duty cycle", ratedDutyPercent, 0, 100, "%");
    Require.positive("welding current", currentA, "A");
    double ratio = ratedCurrentA / currentA;
    return Math.min(100, ratedDutyPercent * ratio * ratio);
  }

  /**
   * Largest current that may flow without a pause, {@code I1 sqrt(X1)}, A.
   *
   * @param ratedCurrentA current of the plate's rating, A, above 0
   * @param ratedDutyPercent duty cycle at that current, %, above 0 to 100
   */
  public static double continuousCurrentA(double ratedCurrentA, double ratedDutyPercent) {
    Require.positive("rated current", ratedCurrentA, "A");
    Require.positive("rated duty cycle", ratedDutyPercent, "%");
    return ratedCurrentA * Math.sqrt(Math.min(100, ratedDutyPercent) / 100);
  }
}
