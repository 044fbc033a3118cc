package org.counterpull.power;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Require;

/**
 * Largest welding current for a supply current: {@code U2(I) I = eta lambda U1 I1} solved for I on
 * the process's conventional load line.
 *
 * <p><b>Source:</b> derived from IEC 60974-1 load lines.
 *
 * <p><b>Valid for:</b> a supply current held as long as the arc burns. Breakers carry more for
 * minutes: {@link SupplyGate} says how that is used.
 */
public final class WeldingCurrentLimit {
  public static final Formula FORMULA =
      new Formula(
          "welding-current-limit",
          "largest welding current for a supply current",
          "A",
          "derived from the load lines of IEC 60974-1");

  private WeldingCurrentLimit() {}

  /**
   * The current as a computed number.
   *
   * @param line load line of the process
   * @param conversion efficiency and power factor
   * @param supply the socket
   * @param supplyCurrentA supply current to stay within, A, above 0
   */
  public static Computed of(
      LoadLine line, Conversion conversion, Supply supply, double supplyCurrentA) {
    return FORMULA.result(amperes(line, conversion, supply, supplyCurrentA));
  }

  /** The current, A; arguments as for {@link #of}. */
  public static double amperes(
      LoadLine line, Conversion conversion, Supply supply, double supplyCurrentA) {
    Require.positive("supply current", supplyCurrentA, "A");
    return line.currentA(
        conversion.wattsPerVoltAmpere() * supply.voltAmperesPerAmpere() * supplyCurrentA);
  }
}
