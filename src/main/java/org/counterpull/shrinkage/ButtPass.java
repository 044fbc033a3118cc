package org.counterpull.shrinkage;

import org.counterpull.quantity.Require;

/**
 * One pass of a butt weld.
 *
 * @param netHeatJPerMm net heat of the pass, J/mm
 * @param filledDepthMm depth of the groove that is filled once the pass is in, mm
 * @param side side from which it is laid, 1 or 2
 */
public record ButtPass(double netHeatJPerMm, double filledDepthMm, int side) {
  public ButtPass {
    Require.positive("net heat", netHeatJPerMm, "J/mm");
    Require.positive("filled depth", filledDepthMm, "mm");
    if (side != 1 && side != 2) {
      throw new IllegalArgumentException("side " + side + " must be 1 or 2");
    }
  }
}
