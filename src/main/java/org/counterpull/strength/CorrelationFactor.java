package org.counterpull.strength;

import java.util.Map;

/**
 * Correlation factor beta_w between a fillet and its steel: 0.80 for S235, 0.85 for S275, 0.90 for
 * S355, 1.00 for S420 and S460. A grade that is not listed gets 1.00, which is safe.
 *
 * <p><b>Source:</b> EN 1993-1-8, table 4.1 (from memory).
 */
public final class CorrelationFactor {
  /** For a grade that is not listed. */
  public static final double UNLISTED = 1.0;

  private static final Map<String, Double> BY_STRENGTH_CLASS =
      Map.of("S235", 0.80, "S275", 0.85, "S355", 0.90, "S420", 1.00, "S460", 1.00);

  private CorrelationFactor() {}

  /** The factor of a designation such as S275JR. */
  public static double of(String designation) {
    String strengthClass = designation.strip();
    return BY_STRENGTH_CLASS.getOrDefault(
        strengthClass.substring(0, Math.min(4, strengthClass.length())), UNLISTED);
  }
}
