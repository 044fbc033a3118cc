package org.counterpull.shrinkage;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Transverse shrinkage to allow for where fillets cross a plate.
 *
 * <p>Tee with two continuous fillets S = 1.02 leg / h; lap with two fillets S = 1.52 leg / h; for
 * intermittent fillets times the welded fraction. For small legs the tee form gives 1.7 times
 * {@link FreeShrinkage}: use that one for prediction and this one as an allowance.
 *
 * <p>Valid for: leg up to three quarters of the thickness; beyond it a warning.
 */
public final class FilletShrinkage {
  public static final Formula TEE =
      new Formula(
          "fillet-shrinkage-tee",
          "shrinkage across a plate under two fillets",
          "mm",
          "from memory: AWS Welding Handbook vol. 1");

  public static final Formula LAP =
      new Formula(
          "fillet-shrinkage-lap",
          "shrinkage across a lap of two fillets",
          "mm",
          "from memory: AWS Welding Handbook vol. 1");

  private FilletShrinkage() {}

  /** Tee with two fillets; {@code weldedFraction} 1 for continuous ones. */
  public static Computed tee(double legMm, double thicknessMm, double weldedFraction) {
    return result(TEE, 1.02, legMm, thicknessMm, weldedFraction);
  }

  /** Lap with two fillets; {@code weldedFraction} 1 for continuous ones. */
  public static Computed lap(double legMm, double thicknessMm, double weldedFraction) {
    return result(LAP, 1.52, legMm, thicknessMm, weldedFraction);
  }

  private static Computed result(
      Formula formula, double coefficientMm, double legMm, double thicknessMm, double fraction) {
    Require.positive("leg", legMm, "mm");
    Require.positive("thickness", thicknessMm, "mm");
    Require.notNegative("welded fraction", fraction, "");
    double legOverThickness = legMm / thicknessMm;
    return formula.result(
        coefficientMm * legOverThickness * fraction,
        new Limits()
            .within("leg over thickness", legOverThickness, 0, 0.75, "")
            .within("welded fraction", fraction, 0, 1, "")
            .outside());
  }
}
