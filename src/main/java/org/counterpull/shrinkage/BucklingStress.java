package org.counterpull.shrinkage;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Stress at which a plate strip buckles: k pi2 E / (12 (1 - nu2)) (h / b)2, steel with E 206 000
 * N/mm2 and nu 0.3.
 *
 * <p>k = 4 for a panel between stiffeners, b its spacing; for a plate with one bead in its middle
 * and free long edges each half is a strip b = B / 2 with {@link #freeEdgeCoefficient}. The plate
 * buckles when the weld's force exceeds this stress times the area that shares the compression
 * ({@link #loadN}). Elastic onset; reality spreads by 30 %.
 *
 * <p>Valid for: strips at least ten times as wide as thick; otherwise a warning.
 */
public final class BucklingStress {
  public static final Formula FORMULA =
      new Formula(
          "buckling-stress",
          "compressive stress at which the strip buckles",
          "MPa",
          "from memory: S. Timoshenko and J. Gere, Theory of Elastic Stability, 1961");

  /** Coefficient of a panel that is supported along both long edges. */
  public static final double PANEL_COEFFICIENT = 4;

  private static final double ELASTIC_MODULUS_MPA = 206_000;
  private static final double POISSON = 0.3;

  private BucklingStress() {}

  /**
   * The stress.
   *
   * @param coefficient k, 0.4 to 7
   * @param thicknessMm h, mm
   * @param widthMm b, mm
   */
  public static Computed of(double coefficient, double thicknessMm, double widthMm) {
    Require.positive("coefficient", coefficient, "");
    Require.positive("thickness", thicknessMm, "mm");
    Require.positive("width", widthMm, "mm");
    double slenderness = thicknessMm / widthMm;
    double modulus = Math.PI * Math.PI * ELASTIC_MODULUS_MPA / (12 * (1 - POISSON * POISSON));
    return FORMULA.result(
        coefficient * modulus * slenderness * slenderness,
        new Limits()
            .within("coefficient", coefficient, 0.4, 7, "")
            .within("width over thickness", 1 / slenderness, 10, 1000, "")
            .outside());
  }

  /** Coefficient of a strip with one long edge free: 0.425 + (b / L)2. */
  public static double freeEdgeCoefficient(double widthMm, double lengthMm) {
    Require.positive("width", widthMm, "mm");
    Require.positive("length", lengthMm, "mm");
    return 0.425 + Math.pow(widthMm / lengthMm, 2);
  }

  /** Weld force at which it buckles, N; area that shares the compression in mm2. */
  public static double loadN(double stressMPa, double areaMm2) {
    Require.positive("stress", stressMPa, "N/mm2");
    Require.positive("area", areaMm2, "mm2");
    return stressMPa * areaMm2;
  }
}
