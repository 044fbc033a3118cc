package org.counterpull.quantity;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers as they stand in sentences: a few significant digits, no trailing zeros. */
public final class Printed {
  private Printed() {}

  /**
   * A number to some significant digits, without trailing zeros or an exponent: 0.3, 12.7, 20.
   *
   * @param value any double; what isn't finite is printed as Java does
   * @param digits significant digits, at least 1
   */
  public static String number(double value, int digits) {
    if (!Double.isFinite(value)) {
      return Double.toString(value);
    }
    BigDecimal rounded = new BigDecimal(value).round(new MathContext(digits));
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** A number to four significant digits with its unit; a bare ratio (unit "1") gets none. */
  public static String quantity(double value, String unit) {
    return number(value, 4) + (unit.equals("1") ? "" : " " + unit);
  }
}
