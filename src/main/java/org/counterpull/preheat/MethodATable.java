package org.counterpull.preheat;

import org.counterpull.quantity.Require;

/**
 * Whether EN 1011-2 method A lets a joint go without preheat.
 *
 * <p><b>Source:</b> EN 1011-2:2001, table C.1. <b>Valid for:</b> CE to 0.49 %, heat input from 1
 * kJ/mm; between 1 and 2 it is interpolated, above 2 the value at 2 is kept, which is safe.
 * Anything else is {@link Answer#OUTSIDE}, never extrapolated.
 */
public final class MethodATable {
  private static final double LOW_CE = 0.43;
  private static final double HIGH_CE = 0.49;

  /** Rows by hydrogen scale A to E; columns CE 0.49 at 1 and 2 kJ/mm, CE 0.43 at 1 and 2 kJ/mm. */
  private static final double[][] MOST_COMBINED_MM = {
    {25, 50, 40, 80},
    {30, 55, 50, 90},
    {35, 65, 60, 100},
    {50, 100, 100, 100},
    {60, 100, 100, 100}
  };

  /** The answer of the table. */
  public enum Answer {
    NO_PREHEAT_NEEDED,
    PREHEAT_NEEDED,
    OUTSIDE
  }

  private MethodATable() {}

  /**
   * Reads the table.
   *
   * @param cePercent CE (IIW) of the parent metal
   * @param heatInputKJPerMm with the factor k
   * @param combinedMm {@link CombinedThickness}
   * @param scale hydrogen scale
   */
  public static Answer answer(
      double cePercent, double heatInputKJPerMm, double combinedMm, HydrogenScale scale) {
    Require.notNegative("CE", cePercent, "%");
    Require.positive("heat input", heatInputKJPerMm, "kJ/mm");
    Require.positive("combined thickness", combinedMm, "mm");
    if (cePercent > HIGH_CE || heatInputKJPerMm < 1) {
      return Answer.OUTSIDE;
    }
    return combinedMm <= mostMm(cePercent, heatInputKJPerMm, scale)
        ? Answer.NO_PREHEAT_NEEDED
        : Answer.PREHEAT_NEEDED;
  }

  private static double mostMm(double cePercent, double heatInputKJPerMm, HydrogenScale scale) {
    double[] row = MOST_COMBINED_MM[scale.ordinal()];
    int column = cePercent <= LOW_CE ? 2 : 0;
    double part = Math.min(heatInputKJPerMm, 2) - 1;
    return row[column] + part * (row[column + 1] - row[column]);
  }
}
