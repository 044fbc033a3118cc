package org.counterpull.cooling;

import java.util.function.DoubleUnaryOperator;
import org.counterpull.quantity.Require;

/**
 * What is left of equal tacks or beads at one place just before the next: the sum of the
 * single-shot rises at 1, 2, ... N intervals.
 *
 * <p><b>Source:</b> superposition; Carslaw and Jaeger. <b>Valid for:</b> constant properties. On a
 * thick body the sum converges to 2.612 times the first; on plate it grows as ln N, on a bar as 2
 * sqrt(N): a bar overheats with every tack while a block doesn't.
 */
public final class Accumulation {
  private Accumulation() {}

  /** Residual rise in K on a thick body. */
  public static double onThickK(double netHeatJ, Conductor metal, double intervalS, int shots) {
    return residualK(t -> InstantSources.pointOnThickK(netHeatJ, metal, 0, t), intervalS, shots);
  }

  /** Residual rise in K on thin plate without loss. */
  public static double onPlateK(
      double netHeatJ, Conductor metal, double thicknessMm, double intervalS, int shots) {
    return residualK(
        t -> InstantSources.pointOnThinK(netHeatJ, metal, thicknessMm, 0, t, 0), intervalS, shots);
  }

  /** Residual rise in K in the middle of a bar. */
  public static double onBarK(double netHeatJ, BarCooling bar, double intervalS, int shots) {
    return residualK(t -> bar.riseK(netHeatJ, 0, t), intervalS, shots);
  }

  /** Residual rise in K of any single-shot solution of time in s. */
  public static double residualK(DoubleUnaryOperator riseAfterS, double intervalS, int shots) {
    Require.positive("interval", intervalS, "s");
    double sum = 0;
    for (int n = shots; n >= 1; n--) {
      sum += riseAfterS.applyAsDouble(n * intervalS);
    }
    return sum;
  }
}
