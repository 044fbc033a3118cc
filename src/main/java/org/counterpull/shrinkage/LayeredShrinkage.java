package org.counterpull.shrinkage;

import java.util.List;
import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;

/**
 * Transverse shrinkage of a butt weld that is filled pass by pass.
 *
 * <p>S = sum of kappa_i (alpha / c) Q_i / D_i with D_i the depth filled after pass i; kappa is 1
 * for the first pass and 0.5 (0.35 to 0.7) for those that follow, which shrink against what the
 * first ones hold. The 0.5 is a judgement that puts totals between the handbook forms, not a fit.
 *
 * <p>Valid for: single-sided grooves; a pass with no filled depth is refused.
 */
public final class LayeredShrinkage {
  public static final Formula FORMULA =
      new Formula(
          "layered-shrinkage",
          "transverse shrinkage of a butt weld of several passes",
          "mm",
          "derived; the fall with the number of passes as measured by Watanabe and Satoh, J. Japan"
              + " Welding Society 25(8), 1956, p. 455");

  private static final double FIRST_PASS_KAPPA = 1;
  private static final double LATER_PASS_KAPPA = 0.5;

  private LayeredShrinkage() {}

  /** The sum over the passes, in the order in which they are laid. */
  public static Computed of(List<ButtPass> passes, ShrinkageMaterial material) {
    double sumMm = 0;
    double kappa = FIRST_PASS_KAPPA;
    for (ButtPass pass : passes) {
      sumMm +=
          FreeShrinkage.shrinkageMm(kappa, pass.netHeatJPerMm(), pass.filledDepthMm(), material);
      kappa = LATER_PASS_KAPPA;
    }
    return FORMULA.result(
        sumMm, new Limits().expect(!passes.isEmpty(), "no pass is given").outside());
  }

  /**
   * Shrinkage of n equal layers, each glued on the growing stack, over that of one layer alone: 1 +
   * 1/2 + ... + 1/n.
   */
  public static double equalLayers(int layers) {
    double sum = 0;
    for (int n = 1; n <= layers; n++) {
      sum += 1.0 / n;
    }
    return sum;
  }
}
