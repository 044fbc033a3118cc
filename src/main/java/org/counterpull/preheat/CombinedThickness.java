package org.counterpull.preheat;

import org.counterpull.quantity.Require;

/**
 * Combined thickness of EN 1011-2 method A: the sum over the paths that lead heat away, each leg's
 * thickness averaged over 75 mm from the weld line.
 *
 * <p><b>Source:</b> EN 1011-2, C.2.4. <b>Valid for:</b> method A only; method B takes the plate
 * thickness.
 */
public final class CombinedThickness {
  /** Distance from the weld line over which a leg's thickness is averaged. */
  public static final double AVERAGED_OVER_MM = 75;

  private CombinedThickness() {}

  /** Butt weld: both sides. */
  public static double buttMm(double oneMm, double otherMm) {
    return thickness(oneMm) + thickness(otherMm);
  }

  /** Fillet weld: the two sides of the through plate and the standing one. */
  public static double filletMm(double throughLeftMm, double throughRightMm, double standingMm) {
    return thickness(throughLeftMm) + thickness(throughRightMm) + thickness(standingMm);
  }

  /** Two fillets laid at the same time on both sides: half of that of one. */
  public static double twinFilletMm(
      double throughLeftMm, double throughRightMm, double standingMm) {
    return filletMm(throughLeftMm, throughRightMm, standingMm) / 2;
  }

  private static double thickness(double mm) {
    return Require.positive("thickness", mm, "mm");
  }
}
