package org.counterpull.fillet;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Effective throat of a partial penetration groove: its depth at 60 degrees; at 45 degrees 3 mm
 * less for stick in every position, and for wire in vertical and overhead positions.
 *
 * <p><b>Source:</b> from memory: AWS D1.1, prequalified partial penetration details.
 *
 * <p><b>Valid for:</b> grooves deep enough to leave a throat. Short-circuit transfer is not
 * prequalified there.
 */
public final class PartialPenetrationThroat {
  public static final Formula FORMULA =
      new Formula(
          "partial-penetration-throat",
          "effective throat of a partial penetration groove",
          "mm",
          "from memory: AWS D1.1, prequalified partial penetration details");

  private static final double LOST_AT_45_MM = 3;
  private static final double[] THINNER_UP_TO_MM = {5, 6, 12, 20, 38, 57};
  private static final double[] LEAST_SIZE_MM = {2, 3, 5, 6, 8, 10};

  private PartialPenetrationThroat() {}

  /** What fills the groove, and where. */
  public enum Manner {
    STICK,
    WIRE_FLAT_OR_HORIZONTAL,
    WIRE_VERTICAL_OR_OVERHEAD
  }

  /**
   * Throat of a single bevel of 45 degrees.
   *
   * @param depthMm depth of preparation, mm, above 0
   * @param manner process and position
   */
  public static Computed bevel45(double depthMm, Manner manner) {
    Require.positive("depth of preparation", depthMm, "mm");
    double lostMm =
        switch (manner) {
          case STICK, WIRE_VERTICAL_OR_OVERHEAD -> LOST_AT_45_MM;
          case WIRE_FLAT_OR_HORIZONTAL -> 0;
        };
    return FORMULA.result(
        Math.max(0, depthMm - lostMm),
        new Limits()
            .expect(depthMm > lostMm, "the groove is too shallow to count: no throat is left")
            .outside());
  }

  /** Throat of a V, U or J of 60 degrees, mm: its depth. */
  public static double sixtyDegreesMm(double depthMm) {
    return Require.positive("depth of preparation", depthMm, "mm");
  }

  /** Throat of a square joint welded from both sides, together, mm. */
  public static double squareBothSidesMm(double thicknessMm) {
    return 0.75 * Require.positive("thickness", thicknessMm, "mm");
  }

  /** Least size of a partial penetration weld by the thinner part, mm; 57 mm and above count 10. */
  public static double leastSizeMm(double thinnerMm) {
    Require.positive("thickness", thinnerMm, "mm");
    int row = 0;
    while (row < LEAST_SIZE_MM.length - 1 && thinnerMm > THINNER_UP_TO_MM[row]) {
      row++;
    }
    return LEAST_SIZE_MM[row];
  }
}
