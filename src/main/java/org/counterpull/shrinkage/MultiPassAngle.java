package org.counterpull.shrinkage;

import java.util.List;
import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;

/**
 * Angle of a butt weld that is filled pass by pass, positive towards side 1.
 *
 * <p>phi = sum of +- phi_bead(Q_i / D_i2), D_i the depth filled after pass i, phi_bead the smooth
 * form of {@link FreeAngle}.
 *
 * <p>Valid for: single-V up to 20 mm. For a double-V its balance point wanders between 40 and 80 %
 * of the deposit where sources say 60 % on the first side ({@link #FIRST_SIDE_SHARE}): it may
 * compare orders of passes there, with a warning, and not predict the angle. Band: {@code angle of
 * a multi-pass single-V} of {@link ErrorBand}.
 */
public final class MultiPassAngle {
  public static final Formula FORMULA =
      new Formula(
          "multi-pass-angle",
          "angle of a butt weld of several passes",
          "rad",
          "derived; same structure as Seong et al., Materials 12(9), 2019, 1435");

  /** Share of the deposit on the first side for no angle (Watanabe and Satoh 1956). */
  public static final double FIRST_SIDE_SHARE = 0.60;

  private MultiPassAngle() {}

  /** The sum over the passes, in the order in which they are laid. */
  public static Computed of(List<ButtPass> passes) {
    double sumRad = 0;
    double depthMm = 0;
    for (ButtPass pass : passes) {
      double x = FreeShrinkage.heatParameterJPerMm3(pass.netHeatJPerMm(), pass.filledDepthMm());
      sumRad += (pass.side() == 1 ? 1 : -1) * FreeAngle.smoothRad(x);
      depthMm = Math.max(depthMm, pass.filledDepthMm());
    }
    boolean oneSide = passes.stream().allMatch(pass -> pass.side() == 1);
    return FORMULA.result(
        sumRad,
        new Limits()
            .expect(!passes.isEmpty(), "no pass is given")
            .expect(oneSide, "welded from both sides: the rule compares orders only")
            .within("filled depth", depthMm, 0, 20, "mm")
            .outside());
  }
}
