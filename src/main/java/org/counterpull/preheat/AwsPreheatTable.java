package org.counterpull.preheat;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Least preheat and interpass temperature of the prequalified table of AWS D1.1.
 *
 * <p><b>Source:</b> AWS D1.1:2015 table 3.3 (as reprinted in TI 809-26, 2000, table 3-1). <b>Valid
 * for:</b> the steels that the table lists, 3 mm and more; 1018, 1020, 1026, 1045 and 41xx aren't
 * listed. Thinner metal is answered with a warning. Metal below 0 C is warmed to 20 C in any case.
 */
public final class AwsPreheatTable {
  public static final Formula FORMULA =
      new Formula(
          "preheat-aws-table",
          "least preheat and interpass temperature by the table of AWS D1.1",
          "C",
          "AWS D1.1:2015, table 3.3");

  private static final double[] UP_TO_MM = {20, 38, 65};
  private static final double LEAST_MM = 3;

  /** Categories of steel and process in the table. */
  public enum Category {
    /** Structural steels, covered electrodes that aren't low-hydrogen. */
    A(0, 65, 110, 150),
    /** Structural steels, low-hydrogen electrodes, gas-shielded wire, submerged arc. */
    B(0, 10, 65, 110),
    /** Higher-strength steels, low-hydrogen processes. */
    C(10, 65, 110, 150),
    /** Listed steels with consumables of H8 or lower. */
    D(0, 0, 0, 0);

    private final double[] leastC;

    Category(double... leastC) {
      this.leastC = leastC;
    }
  }

  private AwsPreheatTable() {}

  /** Least preheat for the thickest part at the weld. */
  public static Computed of(Category category, double thicknessMm) {
    Require.positive("thickness", thicknessMm, "mm");
    int row = 0;
    while (row < UP_TO_MM.length && thicknessMm > UP_TO_MM[row]) {
      row++;
    }
    return FORMULA.result(
        category.leastC[row],
        new Limits()
            .within("thickness", thicknessMm, LEAST_MM, Double.POSITIVE_INFINITY, "mm")
            .outside());
  }
}
