package org.counterpull.quantity;

import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * Reads a quantity from text and converts it: the one place where units meet.
 *
 * <p>A bare number is in the unit that the caller names. Understood besides: fractions and mixed
 * numbers, feet with inches, degree signs, typographic marks. A comma is refused, because it means
 * a decimal in one country and thousands in another.
 */
public final class QuantityParser {
  private static final int LONGEST_TEXT = 60;
  private static final double INCHES_IN_A_FOOT = 12;
  private static final Map<String, String> TYPOGRAPHY = typography();

  private QuantityParser() {}

  /** A length in mm, of either sign. */
  public static double parseLengthMm(String text, LengthUnit bare) {
    return canonical(Dimension.LENGTH, text, bare.symbol());
  }

  /** A length in mm that must be greater than zero: a size. */
  public static double parseSizeMm(String text, LengthUnit bare) {
    double lengthMm = parseLengthMm(text, bare);
    if (!(lengthMm > 0)) {
      throw new QuantityException(
          quote(text) + " is not greater than zero", "a size such as " + sizeExample(bare));
    }
    return lengthMm;
  }

  /** A temperature in C; bare numbers are in C. */
  public static double parseTemperatureC(String text) {
    return canonical(Dimension.TEMPERATURE, text, "C");
  }

  /** A temperature difference in K; bare numbers are in K. */
  public static double parseTemperatureDifferenceK(String text) {
    return canonical(Dimension.TEMPERATURE_DIFFERENCE, text, "K");
  }

  /** A speed in mm/s; bare numbers are in mm/s. */
  public static double parseSpeedMmPerS(String text) {
    return canonical(Dimension.SPEED, text, "mm/s");
  }

  /** A force in N; bare numbers are in N. */
  public static double parseForceN(String text) {
    return canonical(Dimension.FORCE, text, "N");
  }

  /** A current in A; bare numbers are in A. */
  public static double parseCurrentA(String text) {
    return canonical(Dimension.CURRENT, text, "A");
  }

  /** A voltage in V; bare numbers are in V. */
  public static double parseVoltageV(String text) {
    return canonical(Dimension.VOLTAGE, text, "V");
  }

  /** A percentage as 20 for 20 %; bare numbers are percent. */
  public static double parsePercent(String text) {
    return canonical(Dimension.PERCENT, text, "%");
  }

  /** A power in W; bare numbers are in W. */
  public static double parsePowerW(String text) {
    return canonical(Dimension.POWER, text, "W");
  }

  /** A pressure or stress in MPa; bare numbers are in MPa. */
  public static double parsePressureMPa(String text) {
    return canonical(Dimension.PRESSURE, text, "MPa");
  }

  /** A time in s; bare numbers are in s. */
  public static double parseTimeS(String text) {
    return canonical(Dimension.TIME, text, "s");
  }

  /** An angle in degrees; bare numbers are degrees. */
  public static double parseAngleDeg(String text) {
    return canonical(Dimension.ANGLE, text, "deg");
  }

  /** A flow of shielding gas in l/min; bare numbers are in l/min. */
  public static double parseGasFlowLPerMin(String text) {
    return canonical(Dimension.GAS_FLOW, text, "l/min");
  }

  /** A mass in kg; bare numbers are in kg. */
  public static double parseMassKg(String text) {
    return canonical(Dimension.MASS, text, "kg");
  }

  /** Heat per length of weld in kJ/mm; bare numbers are in kJ/mm. */
  public static double parseHeatKJPerMm(String text) {
    return canonical(Dimension.HEAT_PER_LENGTH, text, "kJ/mm");
  }

  /**
   * A quantity of any dimension, in the unit named; bare numbers are in that unit too.
   *
   * @throws QuantityException when the text is no such quantity
   * @throws IllegalArgumentException when {@code unit} isn't one of the dimension
   */
  public static double parse(Dimension dimension, String text, String unit) {
    NumberText number = number(dimension, text, clean(dimension, text));
    if (number.rest().isEmpty()) {
      check(dimension, text, dimension.known(unit).toCanonical(number.value()));
      return number.value();
    }
    return dimension.convert(canonical(dimension, text, unit), dimension.canonicalUnit(), unit);
  }

  private static double canonical(Dimension dimension, String text, String bareUnit) {
    NumberText number = number(dimension, text, clean(dimension, text));
    String rest = number.rest();
    if (dimension == Dimension.LENGTH) {
      int inches = endOfFeet(rest);
      if (inches > 0 && inches < rest.length()) {
        return feetAndInches(text, number, rest.substring(inches));
      }
    }
    Unit unit = rest.isEmpty() ? dimension.known(bareUnit) : unit(dimension, text, number);
    return check(dimension, text, unit.toCanonical(number.value()));
  }

  private static Unit unit(Dimension dimension, String text, NumberText number) {
    return dimension
        .find(number.rest())
        .orElseThrow(
            () ->
                new QuantityException(
                    quote(number.rest())
                        + " in "
                        + quote(text)
                        + " is no unit of "
                        + dimension.words(),
                    allowed(dimension)));
  }

  /** Where the inches begin behind a foot mark; 0 when there is no foot mark. */
  private static int endOfFeet(String rest) {
    int end = rest.startsWith("'") ? 1 : rest.startsWith("ft") ? 2 : 0;
    while (end > 0 && end < rest.length() && " -".indexOf(rest.charAt(end)) >= 0) {
      end++;
    }
    return end;
  }

  private static double feetAndInches(String text, NumberText feet, String inchText) {
    NumberText inches = number(Dimension.LENGTH, text, inchText);
    boolean isInch =
        inches.rest().isEmpty()
            || Dimension.LENGTH.find(inches.rest()).equals(Dimension.LENGTH.find("in"));
    if (!isInch || feet.value() != Math.rint(feet.value()) || inches.value() < 0) {
      throw new QuantityException(
          quote(text) + " is no length in feet and inches", "3 ft 6-1/2 in");
    }
    if (inches.value() >= INCHES_IN_A_FOOT) {
      throw new QuantityException(
          quote(text) + " has a foot or more of inches behind the feet", "3 ft 6-1/2 in");
    }
    double sign = text.strip().startsWith("-") ? -1 : 1;
    double feetMm = LengthUnit.FT.toMm(Math.abs(feet.value()));
    return check(Dimension.LENGTH, text, sign * (feetMm + LengthUnit.IN.toMm(inches.value())));
  }

  private static NumberText number(Dimension dimension, String text, String clean) {
    NumberText number =
        NumberText.of(clean)
            .orElseThrow(
                () ->
                    new QuantityException(
                        quote(text) + " is no " + dimension.words() + ": it has no number in front",
                        allowed(dimension)));
    if (!Double.isFinite(number.value())) {
      throw new QuantityException(quote(text) + " is not a finite number", allowed(dimension));
    }
    return number;
  }

  private static double check(Dimension dimension, String text, double canonical) {
    if (!(canonical >= dimension.low() && canonical <= dimension.high())) {
      throw new QuantityException(
          String.format(
              Locale.ROOT,
              "%s is no plausible %s: it must lie from %s to %s %s",
              quote(text),
              dimension.words(),
              shortest(dimension.low()),
              shortest(dimension.high()),
              dimension.canonicalUnit()),
          "a value such as " + dimension.example());
    }
    return canonical;
  }

  private static String shortest(double bound) {
    return bound == Math.rint(bound)
        ? String.format(Locale.ROOT, "%.0f", bound)
        : Double.toString(bound);
  }

  private static String clean(Dimension dimension, String text) {
    if (text.isBlank()) {
      throw new QuantityException("a " + dimension.words() + " is missing", allowed(dimension));
    }
    if (text.length() > LONGEST_TEXT) {
      throw new QuantityException(
          quote(text) + " is too long for a " + dimension.words(), allowed(dimension));
    }
    String clean = text;
    for (Map.Entry<String, String> mark : TYPOGRAPHY.entrySet()) {
      clean = clean.replace(mark.getKey(), mark.getValue());
    }
    if (clean.indexOf(',') >= 0) {
      throw new QuantityException(
          quote(text) + " has a comma", "a point before decimals and no mark between thousands");
    }
    return clean.strip();
  }

  private static String allowed(Dimension dimension) {
    return dimension.example() + " (units: " + String.join(", ", dimension.unitSymbols()) + ")";
  }

  private static String sizeExample(LengthUnit bare) {
    return switch (bare) {
      case MM, CM, M -> "12 mm";
      case IN, FT -> "1/2 in";
    };
  }

  private static String quote(String text) {
    String shown = text.length() > LONGEST_TEXT ? text.substring(0, LONGEST_TEXT) + "..." : text;
    return "\"" + shown.replaceAll("\\p{Cntrl}", "?") + "\"";
  }

  /** Marks that a word processor or another keyboard puts in place of the plain ones. */
  private static Map<String, String> typography() {
    Map<String, String> marks = new TreeMap<>();
    marks.put("\u2033", "\"");
    marks.put("\u201d", "\"");
    marks.put("''", "\"");
    marks.put("\u2032", "'");
    marks.put("\u2019", "'");
    marks.put("\u2212", "-");
    marks.put("\u00b0", "");
    marks.put("\u00b2", "2");
    marks.put("\u00b3", "3");
    marks.put("\u00bc", " 1/4");
    marks.put("\u00bd", " 1/2");
    marks.put("\u00be", " 3/4");
    marks.put("\u215b", " 1/8");
    marks.put("\u00a0", " ");
    return marks;
  }
}
