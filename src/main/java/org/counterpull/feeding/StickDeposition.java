package org.counterpull.feeding;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Deposition of a covered electrode while the arc burns, proportional to the current: 9.5 g/Ah for
 * basic iron powder electrodes (E7018), 8.5 g/Ah for cellulosic (E6010, E6011) and rutile (E6013)
 * ones.
 *
 * <p><b>Source:</b> from memory: electrode handbooks; single values scatter from 8.9 to 11 g/Ah.
 *
 * <p><b>Valid for:</b> 40 to 350 A within the electrode's own range.
 */
public final class StickDeposition {
  public static final Formula FORMULA =
      new Formula(
          "stick-deposition",
          "deposition of a covered electrode while the arc burns",
          "kg/h",
          "from memory: electrode handbooks");

  /** Coating families that the relation tells apart. */
  public enum Coating {
    BASIC(9.5),
    CELLULOSIC(8.5),
    RUTILE(8.5);

    private final double gramsPerAh;

    Coating(double gramsPerAh) {
      this.gramsPerAh = gramsPerAh;
    }
  }

  private StickDeposition() {}

  /**
   * Deposition.
   *
   * @param coating coating family
   * @param currentA welding current, A, above 0
   */
  public static Computed of(Coating coating, double currentA) {
    Require.positive("welding current", currentA, "A");
    return FORMULA.result(
        coating.gramsPerAh * currentA / 1000,
        new Limits().within("welding current", currentA, 40, 350, "A").outside());
  }
}
