package org.counterpull.heat.solve;

/**
 * Stage weights of the second-order stabilised Runge-Kutta method on Legendre polynomials:
 * explicit, stable for any step if it is given enough stages, because its stable range grows with
 * their square.
 *
 * <p>Source: C. D. Meyer, D. S. Balsara, T. D. Aslam, A stabilized Runge-Kutta-Legendre method for
 * explicit super-time-stepping of parabolic and mixed equations, Journal of Computational Physics
 * 257, 2014, 594-626, equations 16 to 18.
 */
final class LegendreStages {
  private static final double MARGIN = 1.05;

  final int stages;
  private final double[] mu;
  private final double[] nu;
  final double[] rate;
  private final double[] firstRate;

  LegendreStages(int stages) {
    this.stages = stages;
    this.mu = new double[stages + 1];
    this.nu = new double[stages + 1];
    this.rate = new double[stages + 1];
    this.firstRate = new double[stages + 1];
    double w = 4.0 / (stages * (double) stages + stages - 2);
    rate[1] = b(1) * w;
    for (int j = 2; j <= stages; j++) {
      mu[j] = (2.0 * j - 1) / j * b(j) / b(j - 1);
      nu[j] = -(j - 1.0) / j * b(j) / b(j - 2);
      rate[j] = mu[j] * w;
      firstRate[j] = -(1 - b(j - 1)) * rate[j];
    }
  }

  /** Weights of a stage from the second on, for a step. */
  Kernel.Weights of(int stage, double stepS) {
    return new Kernel.Weights(
        mu[stage],
        nu[stage],
        1 - mu[stage] - nu[stage],
        rate[stage] * stepS,
        firstRate[stage] * stepS);
  }

  private static double b(int j) {
    return j < 2 ? 1.0 / 3 : (j * (double) j + j - 2) / (2.0 * j * (j + 1.0));
  }

  /**
   * Stages that keep a step stable.
   *
   * @param stiffness step times the largest rate of decay of the model
   */
  static int needed(double stiffness) {
    // Stable while stiffness <= (s^2 + s - 2)/2; odd numbers damp better.
    double s = 0.5 * (Math.sqrt(9 + 8 * MARGIN * stiffness) - 1);
    int stages = Math.max(3, (int) Math.ceil(s));
    return stages % 2 == 0 ? stages + 1 : stages;
  }
}
