package org.counterpull.machine;

import java.util.OptionalDouble;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Require;

/**
 * Preheat that makes a weak pass cool like a stronger one on thick plate: {@code f(T0)/f(Ta) =
 * E_min/E} with {@code f(T) = (6700 - 5 T)(1/(500 - T) - 1/(800 - T))}.
 *
 * <p><b>Source:</b> derived from the thick-plate cooling time of EN 1011-2, annex D.
 *
 * <p><b>Valid for:</b> up to 250 C; above that the machine is too small, and no value is given.
 */
public final class WeakPassPreheat {
  public static final Formula FORMULA =
      new Formula(
          "weak-pass-preheat",
          "preheat that makes a weak pass cool like a stronger one",
          "C",
          "derived: EN 1011-2, annex D, thick plate");

  /** Preheat above which a bigger machine is the answer, C. */
  public static final double HIGHEST_C = 250;

  private static final double SOLVED_UP_TO_C = 450;

  private WeakPassPreheat() {}

  /**
   * Preheat, C; empty above {@link #HIGHEST_C}.
   *
   * @param energyRatio arc energy needed over arc energy at hand; 1 and less needs none
   * @param ambientC temperature without preheat, C
   */
  public static OptionalDouble celsius(double energyRatio, double ambientC) {
    double preheatC = solvedC(energyRatio, ambientC);
    return preheatC <= HIGHEST_C ? OptionalDouble.of(preheatC) : OptionalDouble.empty();
  }

  /** The equation's own answer, whatever it is, up to 450 C. */
  static double solvedC(double energyRatio, double ambientC) {
    Require.positive("energy ratio", energyRatio, "");
    double wanted = energyRatio * cooling(ambientC);
    double low = ambientC;
    double high = SOLVED_UP_TO_C;
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      if (cooling(middle) < wanted) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return energyRatio <= 1 ? ambientC : high;
  }

  /** Cooling time of thick plate per heat input, s mm/kJ. */
  static double cooling(double plateTempC) {
    return (6700 - 5 * plateTempC) * (1 / (500 - plateTempC) - 1 / (800 - plateTempC));
  }
}
