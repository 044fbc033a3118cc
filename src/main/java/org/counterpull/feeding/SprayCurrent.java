package org.counterpull.feeding;

import java.util.OptionalDouble;
import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Smallest current of spray transfer for a steel wire and gas: a handbook's values in argon with 2
 * % oxygen, times {@code 1 + 0.012 (CO2 % - 2)}; none below 80 % argon or above 20 % carbon
 * dioxide.
 *
 * <p><b>Source:</b> common practice, no source, for the diameters; from memory: arc welding
 * literature, 10 to 20 % more current at 18 to 20 % carbon dioxide, for the gas.
 *
 * <p><b>Valid for:</b> solid steel wire of 0.76 to 1.6 mm. Between diameters straight lines; 1.1
 * and 1.2 mm share a value. Thinner wire counts as 0.8 mm, thicker as 1.6 mm.
 */
public final class SprayCurrent {
  public static final Formula FORMULA =
      new Formula(
          "spray-current",
          "least current for spray transfer",
          "A",
          "common practice, no source: handbook values in Ar + 2 % O2, raised for CO2");

  /** Least share of argon that carries a spray, %. */
  public static final double LEAST_ARGON_PERCENT = 80;

  /** Most carbon dioxide that carries a spray, %. */
  public static final double MOST_CO2_PERCENT = 20;

  private static final double[] DIAMETER_MM = {0.8, 0.9, 1.1, 1.2, 1.3, 1.6};
  private static final double[] CURRENT_A = {150, 165, 220, 220, 240, 275};

  private SprayCurrent() {}

  /**
   * Spray current in a gas, A; empty where the gas carries no spray.
   *
   * @param diameterMm wire diameter, mm, above 0
   * @param gas shielding gas
   */
  public static OptionalDouble amperes(double diameterMm, ShieldingGas gas) {
    boolean carriesSpray =
        gas.argonPercent() >= LEAST_ARGON_PERCENT && gas.co2Percent() <= MOST_CO2_PERCENT;
    if (!carriesSpray) {
      return OptionalDouble.empty();
    }
    double more = 0.012 * Math.max(0, gas.co2Percent() - 2);
    return OptionalDouble.of(inArgonA(diameterMm) * (1 + more));
  }

  /**
   * Spray current with its source; outside 0.8 to 1.6 mm it answers with a warning.
   *
   * @throws IllegalArgumentException where the gas carries no spray
   */
  public static Computed of(double diameterMm, ShieldingGas gas) {
    double amperes =
        amperes(diameterMm, gas)
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        gas.argonPercent() + " % argon carries no spray: 80 % and more does"));
    return FORMULA.result(
        amperes, new Limits().within("wire diameter", diameterMm, 0.76, 1.6, "mm").outside());
  }

  /** Spray current in argon with 2 % oxygen, A. */
  public static double inArgonA(double diameterMm) {
    Require.positive("wire diameter", diameterMm, "mm");
    int last = DIAMETER_MM.length - 1;
    if (diameterMm <= DIAMETER_MM[0]) {
      return CURRENT_A[0];
    }
    if (diameterMm >= DIAMETER_MM[last]) {
      return CURRENT_A[last];
    }
    int above = 1;
    while (DIAMETER_MM[above] < diameterMm) {
      above++;
    }
    double share =
        (diameterMm - DIAMETER_MM[above - 1]) / (DIAMETER_MM[above] - DIAMETER_MM[above - 1]);
    return CURRENT_A[above - 1] + share * (CURRENT_A[above] - CURRENT_A[above - 1]);
  }
}
