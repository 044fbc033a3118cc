package org.counterpull.feeding;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Wire feed speed of metal-cored wire, electrode positive, argon with carbon dioxide: {@code WFS =
 * a I + b I^2}, fitted to published settings of 1.1 and 1.6 mm wire within 9 %.
 *
 * <p><b>Source:</b> common practice, no source; fit derived.
 *
 * <p><b>Valid for:</b> 1.1 mm at 90 to 275 A with a tip distance of 19 to 25 mm, 1.6 mm at 235 to
 * 325 A with 25 to 32 mm. The nearer of the two diameters counts; other diameters are out of range.
 */
public final class MetalCoredFeed {
  public static final Formula FORMULA =
      new Formula(
          "metal-cored-feed",
          "wire feed speed of metal-cored wire",
          "m/min",
          "common practice, no source; fit derived");

  private MetalCoredFeed() {}

  /**
   * Wire feed speed.
   *
   * @param diameterMm wire diameter, mm, above 0
   * @param currentA welding current, A, above 0
   */
  public static Computed of(double diameterMm, double currentA) {
    Require.positive("wire diameter", diameterMm, "mm");
    Require.positive("welding current", currentA, "A");
    boolean thin = diameterMm < 1.35;
    double mmPerS =
        thin
            ? 0.3578 * currentA + 1.246e-3 * currentA * currentA
            : 0.1089 * currentA + 6.642e-4 * currentA * currentA;
    return FORMULA.result(
        mmPerS * 0.06,
        new Limits()
            .within("wire diameter", diameterMm, thin ? 1.1 : 1.6, thin ? 1.2 : 1.6, "mm")
            .within("welding current", currentA, thin ? 90 : 235, thin ? 275 : 325, "A")
            .outside());
  }
}
