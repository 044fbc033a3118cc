package org.counterpull.shrinkage;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Require;

/**
 * Transverse shrinkage of a butt weld by the historic form that tells processes apart.
 *
 * <p>S = 1.3 (0.6 * 0.0044 k A / h + 0.0093 b), with k = 43 for bare, 45 for thin-coated, 55 for
 * thick-coated electrodes and 64 to 75 for gas, A the area of deposited metal, h the thickness, b
 * the mean width of the groove A / h.
 *
 * <p>Valid for: stick and gas welds of its time. Not warned outside: it is shown beside others.
 */
public final class MalisiusButtShrinkage {
  public static final Formula FORMULA =
      new Formula(
          "butt-shrinkage-malisius",
          "transverse shrinkage of a butt weld, historic form",
          "mm",
          "from memory: R. Malisius, 1936");

  private MalisiusButtShrinkage() {}

  /**
   * The shrinkage.
   *
   * @param processFactor k, 43 to 75
   * @param weldAreaMm2 area of deposited metal, mm2
   * @param thicknessMm plate thickness, mm
   */
  public static Computed of(double processFactor, double weldAreaMm2, double thicknessMm) {
    Require.positive("process factor", processFactor, "");
    Require.notNegative("weld area", weldAreaMm2, "mm2");
    Require.positive("thickness", thicknessMm, "mm");
    double meanWidthMm = weldAreaMm2 / thicknessMm;
    return FORMULA.result(
        1.3 * (0.6 * 0.0044 * processFactor * meanWidthMm + 0.0093 * meanWidthMm));
  }
}
