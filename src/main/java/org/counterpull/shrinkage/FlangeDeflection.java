package org.counterpull.shrinkage;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Deflection of a flange's edge under the fillets of its web.
 *
 * <p>Delta = 0.1925 W leg^1.3 / t^2 (mm), W the width of the flange. It has no peak: it grows
 * without limit as t falls, so beyond leg = 0.75 t it is returned with a warning.
 */
public final class FlangeDeflection {
  public static final Formula FORMULA =
      new Formula(
          "flange-deflection",
          "deflection of a flange's edge under the fillets of its web",
          "mm",
          "from memory: O. W. Blodgett, Design of Welded Structures, 1966, 7.7");

  /** 0.02 of the inch form times 25.4 to the power 0.7. */
  private static final double COEFFICIENT = 0.02 * Math.pow(25.4, 0.7);

  private FlangeDeflection() {}

  /**
   * The deflection.
   *
   * @param flangeWidthMm width of the flange, mm
   * @param legMm leg of the fillet, mm, up to 0.75 of the thickness
   * @param thicknessMm thickness of the flange, mm
   */
  public static Computed of(double flangeWidthMm, double legMm, double thicknessMm) {
    Require.positive("flange width", flangeWidthMm, "mm");
    Require.positive("leg", legMm, "mm");
    Require.positive("thickness", thicknessMm, "mm");
    double value = COEFFICIENT * flangeWidthMm * Math.pow(legMm, 1.3) / (thicknessMm * thicknessMm);
    return FORMULA.result(
        value,
        new Limits().within("leg over thickness", legMm / thicknessMm, 0, 0.75, "").outside());
  }
}
