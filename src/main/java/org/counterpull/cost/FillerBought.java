package org.counterpull.cost;

import org.counterpull.feeding.DepositionEfficiency;
import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Filler to buy: {@code weld metal / deposition efficiency}.
 *
 * <p><b>Source:</b> balance of mass; efficiencies as {@link DepositionEfficiency}. <b>Valid
 * for:</b> 0.5 to 1; outside it answers with a warning.
 */
public final class FillerBought {
  public static final Formula FORMULA =
      new Formula(
          "filler-bought",
          "filler to buy, losses included",
          "kg",
          "derived; deposition efficiencies: common practice, no source");

  private FillerBought() {}

  /**
   * Mass to buy.
   *
   * @param weldMetalKg weld metal, kg, 0 or above
   * @param efficiency weld metal over filler, above 0 to 1
   */
  public static Computed of(double weldMetalKg, double efficiency) {
    Require.notNegative("weld metal", weldMetalKg, "kg");
    Require.positive("deposition efficiency", efficiency, "1");
    return FORMULA.result(
        weldMetalKg / efficiency,
        new Limits().within("deposition efficiency", efficiency, 0.5, 1, "1").outside());
  }
}
