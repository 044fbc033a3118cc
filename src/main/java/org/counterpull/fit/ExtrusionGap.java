package org.counterpull.fit;

import java.util.List;
import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Greatest clearance on diameter that a plain O-ring without a back-up ring bridges.
 *
 * <p><b>Source:</b> common practice, no source; another table gives 0.05 to 0.15 mm for 70 Shore at
 * 8 MPa and 3.5 mm section, so this one lies at the upper end. <b>Valid for:</b> 70 or 90 Shore A,
 * up to 70 C and 20.7 MPa; beyond that pressure the last row's value with a warning: use back-up
 * rings.
 */
public final class ExtrusionGap {
  public static final Formula FORMULA =
      new Formula(
          "extrusion-gap",
          "greatest clearance on diameter that an O-ring bridges",
          "mm",
          "common practice, no source");

  private static final List<String[]> ROWS = Rows.of("extrusion.csv");
  private static final double HARD_SHORE = 90;

  private ExtrusionGap() {}

  /**
   * The clearance.
   *
   * @param pressureMPa working pressure, MPa, zero or more
   * @param shoreA hardness of the ring; 90 and above reads the column of 90, less that of 70
   */
  public static Computed of(double pressureMPa, double shoreA) {
    Require.notNegative("pressure", pressureMPa, "MPa");
    double highest = Double.parseDouble(ROWS.get(ROWS.size() - 1)[0]);
    String[] row = ToleranceGrade.row(ROWS, pressureMPa);
    return FORMULA.result(
        Double.parseDouble(row[shoreA >= HARD_SHORE ? 2 : 1]),
        new Limits()
            .within("pressure", pressureMPa, 0, highest, "MPa")
            .within("hardness", shoreA, 70, 95, "Shore A")
            .outside());
  }
}
