package org.counterpull.material;

/**
 * How far carbon steel loses strength and stiffness when hot, as fractions of the values at 20 C.
 *
 * <p><b>Source:</b> EN 1993-1-2, table 3.1 (kp from memory), linear between rows. <b>Valid for:</b>
 * fire rates of heating, 20 to 1200 C; indicative only at the rates of welding. Outside, the end
 * value is kept.
 */
public final class SteelReduction {
  private static final double STEP_C = 100;
  private static final double FIRST_C = 100;
  private static final double[] YIELD = {1, 1, 1, 1, 0.78, 0.47, 0.23, 0.11, 0.06, 0.04, 0.02, 0};
  private static final double[] PROPORTIONAL = {
    1, 0.807, 0.613, 0.420, 0.360, 0.180, 0.075, 0.050, 0.0375, 0.025, 0.0125, 0
  };
  private static final double[] ELASTIC = {
    1, 0.90, 0.80, 0.70, 0.60, 0.31, 0.13, 0.09, 0.0675, 0.045, 0.0225, 0
  };

  private SteelReduction() {}

  /** Effective yield strength, at 2 % strain. */
  public static double yield(double temperatureC) {
    return between(YIELD, temperatureC);
  }

  /** Proportional limit. */
  public static double proportionalLimit(double temperatureC) {
    return between(PROPORTIONAL, temperatureC);
  }

  /** Modulus of elasticity. */
  public static double elasticModulus(double temperatureC) {
    return between(ELASTIC, temperatureC);
  }

  private static double between(double[] column, double temperatureC) {
    double position = (temperatureC - FIRST_C) / STEP_C;
    if (position <= 0) {
      return column[0];
    }
    if (position >= column.length - 1) {
      return column[column.length - 1];
    }
    int i = (int) position;
    return column[i] + (position - i) * (column[i + 1] - column[i]);
  }
}
