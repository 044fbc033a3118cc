package org.counterpull.fillet;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Require;

/**
 * Largest fillet leg along an edge: the thickness below 6 mm, 2 mm less from 6 mm on, unless the
 * edge is shown built out.
 *
 * <p><b>Source:</b> AWS D1.1 and AISC J2.2b, from memory.
 *
 * <p><b>Valid for:</b> square edges; a rolled edge of an angle carries three quarters of its toe.
 */
public final class MaximumFillet {
  public static final Formula FORMULA =
      new Formula(
          "maximum-fillet",
          "largest fillet leg along an edge",
          "mm",
          "from memory: AWS D1.1 and AISC J2.2b");

  private MaximumFillet() {}

  /**
   * Leg along a square edge.
   *
   * @param edgeThicknessMm thickness of the part with the edge, mm, above 0
   */
  public static Computed of(double edgeThicknessMm) {
    Require.positive("edge thickness", edgeThicknessMm, "mm");
    return FORMULA.result(edgeThicknessMm < 6 ? edgeThicknessMm : edgeThicknessMm - 2);
  }

  /** Leg along the rolled toe of an angle, mm (from memory). */
  public static double alongRolledToeMm(double toeThicknessMm) {
    return 0.75 * Require.positive("toe thickness", toeThicknessMm, "mm");
  }
}
