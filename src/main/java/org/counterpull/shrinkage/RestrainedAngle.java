package org.counterpull.shrinkage;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Require;

/**
 * Share of the free angle that is left in a plate with parallel stiffeners.
 *
 * <p>phi / phi_0 = 1 / (1 + 2 D / (l C)), D = E t3 / (12 (1 - nu2)), l the spacing of the
 * stiffeners, C the coefficient of rigidity of the joint. Between two stiffeners the panel sags by
 * phi l / 4.
 */
public final class RestrainedAngle {
  public static final Formula FORMULA =
      new Formula(
          "restrained-angle",
          "share of the free angle left in a stiffened plate",
          "1",
          "from memory: K. Masubuchi, Analysis of Welded Structures, 1980, chapter 7");

  private RestrainedAngle() {}

  /**
   * The share.
   *
   * @param thicknessMm plate thickness, mm
   * @param spacingMm spacing of the stiffeners, mm
   * @param rigidityN coefficient of rigidity, N (N mm per mm of weld and rad)
   * @param elasticModulusMPa modulus of elasticity, N/mm2
   */
  public static Computed of(
      double thicknessMm, double spacingMm, double rigidityN, double elasticModulusMPa) {
    Require.positive("spacing", spacingMm, "mm");
    Require.positive("rigidity", rigidityN, "N");
    double plate = plateRigidityNmm(thicknessMm, elasticModulusMPa);
    return FORMULA.result(1 / (1 + 2 * plate / (spacingMm * rigidityN)));
  }

  /** Bending rigidity of a plate, N mm. */
  public static double plateRigidityNmm(double thicknessMm, double elasticModulusMPa) {
    Require.positive("thickness", thicknessMm, "mm");
    Require.positive("modulus of elasticity", elasticModulusMPa, "N/mm2");
    return elasticModulusMPa * Math.pow(thicknessMm, 3) / (12 * (1 - 0.3 * 0.3));
  }

  /** Sag half-way between two stiffeners that both turn the plate by {@code angleRad}, mm. */
  public static double panelSagMm(double angleRad, double spacingMm) {
    Require.finite("angle", angleRad, "rad");
    Require.positive("spacing", spacingMm, "mm");
    return angleRad * spacingMm / 4;
  }
}
