package org.counterpull.feeding;

import org.counterpull.quantity.Require;

/**
 * Burn-off of a solid wire as the literature prints it: {@code WFS = alpha I + beta l I^2}, the
 * first term arc heating, the second resistive heating of the extension.
 *
 * <p>Coefficients are those of 1.2 mm plain carbon steel, electrode positive ({@code alpha} 0.30
 * mm/As, {@code beta} 5.0e-5 1/A2s); for other diameters they go with 1/d2 and 1/d4 (derived).
 *
 * <p><b>Source:</b> from memory: J. Norrish, Advanced Welding Processes; form of Lesnewich.
 *
 * <p><b>Known limits:</b> reads high against ten of eleven independent points, by 8 % on average:
 * {@link WireFeed} is the form to set a machine by.
 */
public final class BurnOff {
  private static final double REFERENCE_DIAMETER_MM = 1.2;
  private static final double ALPHA_MM_PER_AS = 0.30;
  private static final double BETA_PER_A2S = 5.0e-5;

  private BurnOff() {}

  /**
   * Wire feed speed, mm/s.
   *
   * @param diameterMm wire diameter, mm, above 0
   * @param currentA welding current, A, above 0
   * @param extensionMm contact tip to arc, mm, 0 or above
   */
  public static double mmPerS(double diameterMm, double currentA, double extensionMm) {
    Require.positive("wire diameter", diameterMm, "mm");
    Require.positive("welding current", currentA, "A");
    Require.notNegative("electrode extension", extensionMm, "mm");
    double square = Math.pow(REFERENCE_DIAMETER_MM / diameterMm, 2);
    double alpha = ALPHA_MM_PER_AS * square;
    double beta = BETA_PER_A2S * square * square;
    return alpha * currentA + beta * extensionMm * currentA * currentA;
  }
}
