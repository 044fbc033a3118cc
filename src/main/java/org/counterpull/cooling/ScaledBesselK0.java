package org.counterpull.cooling;

/**
 * The modified Bessel function K0, multiplied by e^x so that it never underflows behind an arc.
 *
 * <p><b>Formula:</b> integral over t from 0 of exp(-x (cosh t - 1)), by the trapezoidal rule, which
 * converges geometrically for it; near zero the power series. <b>Source:</b> Abramowitz and Stegun,
 * 9.6.13 and 9.6.24. Relative error below 1e-12.
 */
final class ScaledBesselK0 {
  private static final double SERIES_UP_TO = 1;

  /** Step over the width 1/sqrt(x) of the integrand. */
  private static final double STEP = 1.0 / 8;

  private static final double NEGLIGIBLE = 40;
  private static final double EULER = 0.57721566490153286;

  private ScaledBesselK0() {}

  /** e^x K0(x) for x greater than zero. */
  static double of(double x) {
    return x <= SERIES_UP_TO ? Math.exp(x) * series(x) : trapezoid(x);
  }

  private static double series(double x) {
    double quarter = x * x / 4;
    double logTerm = -(Math.log(x / 2) + EULER);
    double term = 1;
    double harmonic = 0;
    double sum = logTerm;
    for (int n = 1; n < 20; n++) {
      term *= quarter / ((double) n * n);
      harmonic += 1.0 / n;
      sum += term * (logTerm + harmonic);
    }
    return sum;
  }

  private static double trapezoid(double x) {
    double step = STEP / Math.sqrt(x);
    double sum = 0.5;
    double exponent = 0;
    for (int i = 1; exponent < NEGLIGIBLE; i++) {
      double half = Math.sinh(i * step / 2);
      exponent = 2 * x * half * half;
      sum += Math.exp(-exponent);
    }
    return sum * step;
  }
}
