package org.counterpull.fit;

import java.util.List;
import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Width of a tolerance: how far apart the limits of a size may lie.
 *
 * <p>Table of the standard; beside it the rule that the table was rounded from: i = 0.45 D^(1/3) +
 * 0.001 D micrometres, D the geometric mean of the step's ends in mm, grades 6 to 11 being 10, 16,
 * 25, 40, 64 and 100 i.
 *
 * <p><b>Source:</b> from memory: ISO 286-1, table 1. <b>Valid for:</b> grades 6 to 11, sizes above
 * 0 up to 500 mm; beyond it the largest step's value with a warning.
 */
public final class ToleranceGrade {
  public static final Formula FORMULA =
      new Formula(
          "tolerance-grade",
          "width of an ISO tolerance grade",
          "mm",
          "from memory: ISO 286-1, table 1");

  public static final int FINEST = 6;
  public static final int COARSEST = 11;

  private static final double[] UNITS = {10, 16, 25, 40, 64, 100};
  private static final List<String[]> ROWS = Rows.of("grades.csv");

  private ToleranceGrade() {}

  /**
   * The width.
   *
   * @param grade number of the grade, 6 to 11
   * @param nominalMm nominal size, mm, above 0
   */
  public static Computed of(int grade, double nominalMm) {
    Require.positive("nominal size", nominalMm, "mm");
    Require.within("tolerance grade", grade, FINEST, COARSEST, "");
    double micrometres = Double.parseDouble(row(ROWS, nominalMm)[grade - FINEST + 1]);
    return FORMULA.result(
        micrometres / 1000, new Limits().within("nominal size", nominalMm, 0, 500, "mm").outside());
  }

  /**
   * What the rule gives before rounding, mm.
   *
   * @param grade number of the grade, 6 to 11
   * @param aboveMm lower end of the step, mm, above 0
   * @param upToMm its upper end, mm
   */
  public static double byRuleMm(int grade, double aboveMm, double upToMm) {
    Require.within("tolerance grade", grade, FINEST, COARSEST, "");
    double mean =
        Math.sqrt(Require.positive("step", aboveMm, "mm") * Require.positive("step", upToMm, "mm"));
    return UNITS[grade - FINEST] * (0.45 * Math.cbrt(mean) + 0.001 * mean) / 1000;
  }

  static String[] row(List<String[]> rows, double nominalMm) {
    for (String[] row : rows.subList(1, rows.size())) {
      if (nominalMm <= Double.parseDouble(row[0])) {
        return row;
      }
    }
    return rows.get(rows.size() - 1);
  }
}
