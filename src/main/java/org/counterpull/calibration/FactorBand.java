package org.counterpull.calibration;

import org.counterpull.quantity.Require;
import org.counterpull.shrinkage.ErrorBand;

/**
 * A factor on a published form as it is known: log-normal, by its median and its 90 % band.
 *
 * <p>A reading says measured over expected; its logarithm scatters about that of the factor by the
 * scatter of a run and the error of measuring. With precisions 1 / sigma2 of both, the factor's
 * logarithm after the reading has their sum as precision and their weighted mean as mean (conjugate
 * normal update, e.g. A. Gelman et al., Bayesian Data Analysis, from memory).
 *
 * @param median as likely above as below
 * @param within 90 % lies from median / within to median x within
 */
public record FactorBand(double median, double within) {

  /** Scatter of equal runs about their mean, as a share of it (P. Ferro et al. 2021, n = 6). */
  public static final double RUN_SCATTER = 0.12;

  /** Standard normal deviate that leaves 5 % on each side. */
  private static final double NINETY_PERCENT = 1.6448536269514722;

  public FactorBand {
    Require.positive("factor", median, "");
    if (!(within >= 1) || Double.isInfinite(within)) {
      throw new IllegalArgumentException(
          "a band within a factor of " + within + ": it must be a finite number from 1");
    }
  }

  /** As published, before anything was measured. */
  public static FactorBand published(Effect effect) {
    ErrorBand band = effect.published();
    return new FactorBand(
        Math.sqrt(band.lowFactor() * band.highFactor()),
        Math.sqrt(band.highFactor() / band.lowFactor()));
  }

  /** Low end of the 90 % band. */
  public double low() {
    return median / within;
  }

  /** High end of the 90 % band. */
  public double high() {
    return median * within;
  }

  /** Standard deviation of the factor's logarithm. */
  public double sigmaLog() {
    return Math.log(within) / NINETY_PERCENT;
  }

  /** What is known after a reading on a test piece. */
  public FactorBand after(Reading reading) {
    double known = sigmaLog() * sigmaLog();
    double read = reading.varianceLog();
    if (known == 0) {
      return this;
    }
    double variance = 1 / (1 / known + 1 / read);
    double mean = variance * (Math.log(median) / known + Math.log(reading.ratio()) / read);
    return new FactorBand(Math.exp(mean), Math.exp(NINETY_PERCENT * Math.sqrt(variance)));
  }

  /** The band of one run to come: the factor's own and the run's scatter. */
  public FactorBand ofOneRun() {
    double variance = sigmaLog() * sigmaLog() + scatterVariance();
    return new FactorBand(median, Math.exp(NINETY_PERCENT * Math.sqrt(variance)));
  }

  static double scatterVariance() {
    return Math.log(1 + RUN_SCATTER) * Math.log(1 + RUN_SCATTER);
  }

  static double deviate() {
    return NINETY_PERCENT;
  }
}
