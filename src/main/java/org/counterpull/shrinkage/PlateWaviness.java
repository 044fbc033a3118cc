package org.counterpull.shrinkage;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Measured waviness of stiffened plating: w / t = 0.025, 0.1 or 0.3 times beta2 for slight, average
 * and severe, beta = (b / t) sqrt(yield / E).
 *
 * <p>Valid for: beta from 1 to 4; otherwise a warning. An envelope of measurements, not a law.
 */
public final class PlateWaviness {
  public static final Formula FORMULA =
      new Formula(
          "plate-waviness",
          "depth of the waves between stiffeners",
          "mm",
          "from memory: C. S. Smith, P. C. Davidson, J. C. Chapman, P. J. Dowling, Trans. RINA,"
              + " 1988");

  /** How bad it is. */
  public enum Level {
    SLIGHT(0.025),
    AVERAGE(0.1),
    SEVERE(0.3);

    private final double factor;

    Level(double factor) {
      this.factor = factor;
    }
  }

  private PlateWaviness() {}

  /** The depth; panel width and thickness in mm, yield stress and modulus in N/mm2. */
  public static Computed of(
      Level level, double widthMm, double thicknessMm, double yieldMPa, double elasticModulusMPa) {
    double beta = slenderness(widthMm, thicknessMm, yieldMPa, elasticModulusMPa);
    return FORMULA.result(
        level.factor * beta * beta * thicknessMm,
        new Limits().within("plate slenderness", beta, 1, 4, "").outside());
  }

  /** Plate slenderness beta. */
  public static double slenderness(
      double widthMm, double thicknessMm, double yieldMPa, double elasticModulusMPa) {
    Require.positive("width", widthMm, "mm");
    Require.positive("thickness", thicknessMm, "mm");
    Require.positive("yield stress", yieldMPa, "N/mm2");
    Require.positive("modulus of elasticity", elasticModulusMPa, "N/mm2");
    return widthMm / thicknessMm * Math.sqrt(yieldMPa / elasticModulusMPa);
  }
}
