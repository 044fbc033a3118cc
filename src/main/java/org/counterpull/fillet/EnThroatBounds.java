package org.counterpull.fillet;

import java.util.List;
import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Bounds of a fillet's throat in European practice: at least 3 mm (EN 1993-1-8) and {@code
 * sqrt(t_max) - 0.5} (German national annex), at most {@code 0.7 t_min}.
 *
 * <p><b>Source:</b> EN 1993-1-8, 4.5.2; DIN 18800 element 519 and the German annex.
 *
 * <p><b>Valid for:</b> parts of 3 mm and more; the root bound may be waived by welding conditions.
 */
public final class EnThroatBounds {
  public static final Formula LEAST =
      new Formula(
          "en-least-throat",
          "least throat by the thicker part",
          "mm",
          "DIN 18800 element 519; German annex to EN 1993-1-8");

  public static final Formula LARGEST =
      new Formula(
          "en-largest-throat", "largest throat by the thinner part", "mm", "DIN 18800 element 519");

  /** Throat below which EN 1993-1-8 does not count a fillet, mm. */
  public static final double LEAST_COUNTED_MM = 3;

  private EnThroatBounds() {}

  /**
   * {@code sqrt(t_max) - 0.5}.
   *
   * @param thickerMm thickness of the thicker part, mm, above 0
   */
  public static Computed least(double thickerMm) {
    Require.positive("thickness", thickerMm, "mm");
    return LEAST.result(Math.sqrt(thickerMm) - 0.5, fromThree(thickerMm));
  }

  /**
   * {@code 0.7 t_min}.
   *
   * @param thinnerMm thickness of the thinner part, mm, above 0
   */
  public static Computed largest(double thinnerMm) {
    Require.positive("thickness", thinnerMm, "mm");
    return LARGEST.result(0.7 * thinnerMm, fromThree(thinnerMm));
  }

  private static List<String> fromThree(double thicknessMm) {
    return new Limits()
        .within("thickness", thicknessMm, 3, Double.POSITIVE_INFINITY, "mm")
        .outside();
  }
}
