package org.counterpull.power;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Current drawn from the supply: {@code I1 = U2 I2 / (eta lambda U1)}, with root 3 U1 on three
 * phases, and its effective value over a duty cycle {@code I1eff = sqrt(I1^2 X + I0^2 (1 - X))}.
 *
 * <p><b>Source:</b> the terms are those of IEC 60974-1 and NEC article 630; formula from memory.
 *
 * <p><b>Valid for:</b> steady welding at the conventional load voltage; starting peaks are above
 * it.
 */
public final class SupplyCurrent {
  public static final Formula FORMULA =
      new Formula(
          "supply-current",
          "current drawn from the supply while welding",
          "A",
          "from memory: IEC 60974-1, rated supply current");

  public static final Formula EFFECTIVE =
      new Formula(
          "effective-supply-current",
          "effective supply current over a duty cycle",
          "A",
          "NEC article 630 (terms); formula from memory: IEC 60974-1");

  private SupplyCurrent() {}

  /**
   * Current while the arc burns, with its warnings.
   *
   * @param loadVoltageV arc side voltage, V, above 0
   * @param currentA welding current, A, above 0
   * @param conversion efficiency and power factor
   * @param supply the socket
   */
  public static Computed of(
      double loadVoltageV, double currentA, Conversion conversion, Supply supply) {
    return FORMULA.result(
        amperes(loadVoltageV, currentA, conversion, supply),
        new Limits().within("welding current", currentA, 5, 1000, "A").outside());
  }

  /** Current while the arc burns, A; arguments as for {@link #of}. */
  public static double amperes(
      double loadVoltageV, double currentA, Conversion conversion, Supply supply) {
    Require.positive("load voltage", loadVoltageV, "V");
    Require.positive("welding current", currentA, "A");
    return loadVoltageV
        * currentA
        / (conversion.wattsPerVoltAmpere() * supply.voltAmperesPerAmpere());
  }

  /**
   * Effective supply current, A.
   *
   * @param peakA supply current while the arc burns, A, 0 or above
   * @param idleA supply current between arcs, A, 0 or above
   * @param dutyPercent duty cycle, %, 0 to 100
   */
  public static double effectiveA(double peakA, double idleA, double dutyPercent) {
    Require.notNegative("supply current", peakA, "A");
    Require.notNegative("idle supply current", idleA, "A");
    double duty = Require.within("duty cycle", dutyPercent, 0, 100, "%") / 100;
    return Math.sqrt(peakA * peakA * duty + idleA * idleA * (1 - duty));
  }
}
