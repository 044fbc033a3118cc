package org.counterpull.feeding;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Length of fillet that one electrode lays: {@code L = pi d^2/4 (Le - stub) k / (1.1 z^2/2)}.
 *
 * <p><b>Source:</b> derived, balance of volume with 10 % more than the nominal triangle.
 *
 * <p><b>Valid for:</b> legs of 2 to 8 mm in one pass, recovery 0.85 to 1.3 on the core wire.
 */
public final class StickRun {
  public static final Formula FORMULA =
      new Formula(
          "stick-run", "fillet length that one electrode lays", "mm", "derived: balance of volume");

  private static final double OVER_NOMINAL = 1.1;

  private StickRun() {}

  /**
   * Run length.
   *
   * @param electrode the electrode
   * @param legMm fillet leg, mm, above 0
   */
  public static Computed of(StickElectrode electrode, double legMm) {
    Require.positive("fillet leg", legMm, "mm");
    return FORMULA.result(
        electrode.metalMm3() / (OVER_NOMINAL * legMm * legMm / 2),
        new Limits()
            .within("fillet leg", legMm, 2, 8, "mm")
            .within("metal recovery", electrode.recovery(), 0.85, 1.3, "1")
            .outside());
  }
}
