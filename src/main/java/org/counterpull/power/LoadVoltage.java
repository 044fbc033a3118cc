package org.counterpull.power;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Conventional load voltage of a process at a current: MMA {@code 20 + 0.04 I}, MIG/MAG and cored
 * wire {@code 14 + 0.05 I}, TIG {@code 10 + 0.04 I}, level at 44, 44 and 34 V.
 *
 * <p><b>Source:</b> IEC 60974-1, conventional load voltages, from memory.
 *
 * <p><b>Valid for:</b> rating and comparing machines; a real arc may burn a few volts to either
 * side. Out of range above 1000 A.
 */
public final class LoadVoltage {
  public static final Formula FORMULA =
      new Formula(
          "load-voltage",
          "conventional load voltage",
          "V",
          "from memory: IEC 60974-1, conventional load voltages");

  private LoadVoltage() {}

  /**
   * Load voltage with its warnings.
   *
   * @param line the process's load line
   * @param currentA welding current, A, above 0
   */
  public static Computed of(LoadLine line, double currentA) {
    return FORMULA.result(
        volts(line, currentA),
        new Limits().within("welding current", currentA, 5, 1000, "A").outside());
  }

  /** Load voltage, V; arguments as for {@link #of}. */
  public static double volts(LoadLine line, double currentA) {
    return line.voltageV(Require.positive("welding current", currentA, "A"));
  }
}
