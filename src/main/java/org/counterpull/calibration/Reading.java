package org.counterpull.calibration;

import org.counterpull.quantity.Require;

/**
 * Something read off a test piece.
 *
 * @param effect which factor it says something about
 * @param measured as read, in any unit
 * @param expected by the published form with a factor of 1, in the same unit
 * @param error of measuring: 90 % of readings of one piece lie within so much, in the same unit
 */
public record Reading(Effect effect, double measured, double expected, double error) {
  public Reading {
    Require.positive("reading", measured, "");
    Require.positive("expected value", expected, "");
    Require.notNegative("error of measuring", error, "");
  }

  /** Measured over expected. */
  public double ratio() {
    return measured / expected;
  }

  /** Variance of its logarithm: the run's scatter and the error of measuring. */
  double varianceLog() {
    double measuring = Math.log(1 + error / measured) / FactorBand.deviate();
    return FactorBand.scatterVariance() + measuring * measuring;
  }
}
