package org.counterpull.quantity;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The number at the head of a text, as people in a shop write it, and what follows it: {@code 12},
 * {@code 0.080}, {@code .5}, {@code 1e-3}, {@code 1/2}, {@code 1-1/4}, {@code 1 1/4}.
 *
 * @param value the number
 * @param rest the text behind it, stripped
 */
record NumberText(double value, String rest) {
  private static final Pattern MIXED =
      Pattern.compile(
          "([+-]?)(\\d{1,9})(?:\\s*-\\s*|\\s+)(\\d{1,9})\\s*/\\s*(\\d{1,9})(?!\\d)(.*)");
  private static final Pattern FRACTION =
      Pattern.compile("([+-]?)(\\d{1,9})\\s*/\\s*(\\d{1,9})(?![\\d.])(.*)");
  private static final Pattern DECIMAL =
      Pattern.compile("([+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?)(.*)");

  /** Empty when the text starts with no number, or with a fraction over zero. */
  static Optional<NumberText> of(String text) {
    Matcher mixed = MIXED.matcher(text);
    if (mixed.matches()) {
      double fraction = number(mixed, 3) / number(mixed, 4);
      return signed(mixed.group(1), number(mixed, 2) + fraction, mixed.group(5));
    }
    Matcher fraction = FRACTION.matcher(text);
    if (fraction.matches()) {
      return signed(
          fraction.group(1), number(fraction, 2) / number(fraction, 3), fraction.group(4));
    }
    Matcher decimal = DECIMAL.matcher(text);
    if (decimal.matches()) {
      return signed("", Double.parseDouble(decimal.group(1)), decimal.group(2));
    }
    return Optional.empty();
  }

  private static double number(Matcher matcher, int group) {
    return Double.parseDouble(matcher.group(group));
  }

  private static Optional<NumberText> signed(String sign, double size, String rest) {
    double value = sign.equals("-") ? -size : size;
    return Double.isNaN(value)
        ? Optional.empty()
        : Optional.of(new NumberText(value, rest.strip()));
  }
}
