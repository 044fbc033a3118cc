package org.counterpull.fillet;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Least fillet leg for a base metal thickness: 3 mm to 6 mm of thickness, 5 to 12, 6 to 20, 8
 * above; at exactly 6, 12 or 20 mm the lower class counts.
 *
 * <p>The thickness is that of the thicker part where hydrogen is not low and no preheat was
 * calculated (and then in a single pass), of the thinner part otherwise; the leg never needs to
 * exceed the thinner part. It is a rule about cooling, not about strength.
 *
 * <p><b>Source:</b> AWS D1.1, minimum fillet weld sizes (table 5.7 or 7.7 by edition).
 *
 * <p><b>Valid for:</b> statically loaded structural steel of 3 mm and more; cyclic loading asks for
 * at least 5 mm.
 */
public final class MinimumFillet {
  public static final Formula FORMULA =
      new Formula(
          "minimum-fillet",
          "least fillet leg for a thickness",
          "mm",
          "AWS D1.1, minimum fillet weld sizes");

  private static final double[] THICKNESS_UP_TO_MM = {6, 12, 20, Double.POSITIVE_INFINITY};
  private static final double[] LEG_MM = {3, 5, 6, 8};

  private MinimumFillet() {}

  /**
   * Leg with its warnings.
   *
   * @param thicknessMm base metal thickness, mm, above 0
   */
  public static Computed of(double thicknessMm) {
    return FORMULA.result(
        legMm(thicknessMm),
        new Limits().within("thickness", thicknessMm, 3, Double.POSITIVE_INFINITY, "mm").outside());
  }

  /** Leg, mm; argument as for {@link #of}. */
  public static double legMm(double thicknessMm) {
    Require.positive("thickness", thicknessMm, "mm");
    int row = 0;
    while (thicknessMm > THICKNESS_UP_TO_MM[row]) {
      row++;
    }
    return LEG_MM[row];
  }
}
