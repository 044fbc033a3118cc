package org.counterpull.stock;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Checks and prints dimensions alike for every shape. */
final class Dimensions {
  /** Stock beyond this is a slip of the pen: the largest rolled sections are about 1.1 m high. */
  private static final double LARGEST_MM = 20_000;

  private static final double SMALLEST_MM = 0.1;
  private static final int PRINTED_DECIMALS = 3;

  private Dimensions() {}

  /** Throws unless every dimension is plausible for stock. */
  static void plausible(String shape, String example, double... dimensionsMm) {
    for (double mm : dimensionsMm) {
      if (!(mm >= SMALLEST_MM && mm <= LARGEST_MM)) {
        throw new StockException(
            shape
                + ": a dimension of "
                + print(mm)
                + " mm is not plausible for stock, which has 0.1 to 20000 mm",
            example);
      }
    }
  }

  static void require(boolean holds, String problem, String example) {
    if (!holds) {
      throw new StockException(problem, example);
    }
  }

  static void radius(String shape, double radiusMm, double mostMm, String example) {
    require(
        radiusMm >= 0 && radiusMm <= mostMm,
        shape
            + ": a radius of "
            + print(radiusMm)
            + " mm does not fit, at most "
            + print(mostMm)
            + " mm does",
        example);
  }

  /** Up to three decimals, no trailing zeros, never an exponent. */
  static String print(double mm) {
    if (!Double.isFinite(mm)) {
      return Double.toString(mm);
    }
    return new BigDecimal(mm)
        .setScale(PRINTED_DECIMALS, RoundingMode.HALF_EVEN)
        .stripTrailingZeros()
        .toPlainString();
  }

  static String times(double... dimensionsMm) {
    StringBuilder text = new StringBuilder();
    for (double mm : dimensionsMm) {
      text.append(text.length() == 0 ? "" : " x ").append(print(mm));
    }
    return text.toString();
  }

  static String withRadius(double radiusMm) {
    return radiusMm == 0 ? "" : " radius " + print(radiusMm);
  }
}
