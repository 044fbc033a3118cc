package org.counterpull.machine;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.counterpull.feeding.ShieldingGas;
import org.counterpull.power.DutyPoint;
import org.counterpull.power.Supply;
import org.counterpull.quantity.LengthUnit;
import org.counterpull.quantity.Printed;
import org.counterpull.quantity.QuantityException;
import org.counterpull.quantity.QuantityParser;

/** Reads what stands on a machine's plate and bottle, as people write it. */
public final class PlateText {
  private static final Pattern DUTY =
      Pattern.compile("\\s*([^%]+%)\\s*(?:at|@)\\s*(.+?)\\s*", Pattern.CASE_INSENSITIVE);
  private static final Pattern SUPPLY =
      Pattern.compile(
          "\\s*([\\d.]+\\s*k?V)[\\s,]+([\\d.]+\\s*A)[\\s,]*"
              + "((?:three|3)[- ]?phases?|(?:single|one|1)[- ]?phase)?\\s*",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern TERM =
      Pattern.compile("(?:(\\d{1,3}(?:\\.\\d{1,3})?)\\s*%?\\s*)?(ar|argon|co2|o2|he|helium)");

  private static final Pattern LEAD =
      Pattern.compile(
          "\\s*([\\d.]+\\s*(?:m|ft))[\\s,x]+([\\d.]+)\\s*(mm2|mm\u00b2|awg)\\s*",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern MARK =
      Pattern.compile("\\s*([A-Za-z0-9.+-]{1,8})\\s*=\\s*([\\d.]+)\\s*(A|V|m/min|in/min)?\\s*");
  private static final double LEAST_AWG = 1;
  private static final double MOST_AWG = 18;

  private PlateText() {}

  /**
   * An extension lead such as {@code 25 m 2.5 mm2} or {@code 50 ft 12 AWG}.
   *
   * @throws QuantityException when the text is none
   */
  public static ExtensionLead lead(String text) {
    Matcher match = LEAD.matcher(text);
    if (!match.matches()) {
      throw new QuantityException(
          "\"" + text + "\" is no extension lead", "25 m 2.5 mm2, or 50 ft 12 AWG");
    }
    double lengthM = QuantityParser.parseLengthMm(match.group(1), LengthUnit.MM) / 1000;
    double number = Double.parseDouble(match.group(2));
    boolean gauge = match.group(3).equalsIgnoreCase("awg");
    double sectionMm2 = gauge ? sectionOfGaugeMm2(number) : number;
    try {
      return new ExtensionLead(lengthM, sectionMm2);
    } catch (IllegalArgumentException e) {
      throw new QuantityException(e.getMessage(), "25 m 2.5 mm2, or 50 ft 12 AWG");
    }
  }

  /** American wire gauge: 0.127 mm times 92 to the power (36 - n)/39, squared. */
  private static double sectionOfGaugeMm2(double gauge) {
    if (!(gauge >= LEAST_AWG && gauge <= MOST_AWG)) {
      throw new QuantityException(
          "AWG " + Printed.number(gauge, 3) + " is outside 1 to 18", "50 ft 12 AWG");
    }
    double diameterMm = 0.127 * Math.pow(92, (36 - gauge) / 39);
    return Math.PI * diameterMm * diameterMm / 4;
  }

  /**
   * A mark of a dial such as {@code 3 = 18.5 V} or {@code C = 120 A}.
   *
   * @throws QuantityException when the text is none
   */
  public static Dial.Mark mark(String text, Panel.Reading reading) {
    Matcher match = MARK.matcher(text);
    boolean inches =
        match.matches() && reading == Panel.Reading.WIRE_FEED && "in/min".equals(match.group(3));
    boolean fits =
        match.matches()
            && (inches || match.group(3) == null || match.group(3).equals(reading.unit()))
            && Double.parseDouble(match.group(2)) > 0;
    if (!fits) {
      throw new QuantityException(
          "\"" + text + "\" is no mark of a dial for the " + reading.word(),
          "3 = 20 " + reading.unit());
    }
    double metricPerWritten = inches ? LengthUnit.IN.mm() / 1000 : 1;
    return new Dial.Mark(match.group(1), metricPerWritten * Double.parseDouble(match.group(2)));
  }

  /**
   * Duty points such as {@code 20% at 90 A, 60% at 60 A}.
   *
   * @throws QuantityException when the text is none
   */
  public static List<DutyPoint> duty(String text) {
    List<DutyPoint> points = new ArrayList<>();
    for (String one : text.split(",")) {
      points.add(dutyPoint(one.strip()));
    }
    return List.copyOf(points);
  }

  /**
   * One duty point such as {@code 20% at 200 A}.
   *
   * @throws QuantityException when the text is none
   */
  public static DutyPoint dutyPoint(String text) {
    Matcher match = DUTY.matcher(text);
    if (!match.matches()) {
      throw new QuantityException("\"" + text + "\" is no duty cycle", "20% at 90 A");
    }
    double percent = QuantityParser.parsePercent(match.group(1));
    if (!(percent >= 1 && percent <= 100)) {
      throw new QuantityException(
          "a duty cycle of " + Printed.number(percent, 4) + " % does not exist", "1 to 100 %");
    }
    double currentA = QuantityParser.parseCurrentA(match.group(2));
    if (!(currentA >= 1)) {
      throw new QuantityException(
          Printed.quantity(currentA, "A") + " is no welding current", "20% at 90 A");
    }
    return new DutyPoint(currentA, percent);
  }

  /**
   * A socket such as {@code 120 V 20 A} or {@code 400 V 16 A three-phase}.
   *
   * @throws QuantityException when the text is none
   */
  public static Supply supply(String text) {
    Matcher match = SUPPLY.matcher(text);
    if (!match.matches()) {
      throw new QuantityException(
          "\"" + text + "\" is no supply", "230 V 16 A, or 400 V 16 A three-phase");
    }
    boolean three = match.group(3) != null && match.group(3).matches("(?i)(three|3).*");
    double volts = QuantityParser.parseVoltageV(match.group(1));
    double amperes = QuantityParser.parseCurrentA(match.group(2));
    if (!(volts >= 48 && volts <= 1000 && amperes >= 1 && amperes <= 1000)) {
      throw new QuantityException(
          "\"" + text + "\" is outside 48 to 1000 V and 1 to 1000 A", "230 V 16 A");
    }
    return new Supply(volts, amperes, three ? 3 : 1);
  }

  /**
   * A gas such as {@code Ar + 18 CO2}, {@code 82 Ar + 18 CO2}, {@code CO2}, {@code Ar} or {@code
   * none}; one term may leave its share out and gets the rest.
   *
   * @throws QuantityException when the text is none
   */
  public static ShieldingGas gas(String text) {
    String plain = text.strip().toLowerCase(Locale.ROOT);
    if (plain.equals("none")) {
      return ShieldingGas.NONE;
    }
    Map<String, Double> shares = new TreeMap<>();
    String rest = "";
    double sum = 0;
    for (String piece : plain.split("\\+", -1)) {
      Matcher term = TERM.matcher(piece.strip());
      if (!term.matches() || shares.containsKey(gasWord(term)) || rest.equals(gasWord(term))) {
        throw noGas(text);
      } else if (term.group(1) != null) {
        shares.put(gasWord(term), Double.parseDouble(term.group(1)));
        sum += Double.parseDouble(term.group(1));
      } else if (rest.isEmpty()) {
        rest = gasWord(term);
      } else {
        throw noGas(text);
      }
    }
    boolean closes = rest.isEmpty() ? Math.abs(sum - 100) <= 0.5 : sum < 100;
    if (!closes) {
      throw noGas(text);
    }
    if (!rest.isEmpty()) {
      shares.put(rest, 100 - sum);
    }
    double argon = Math.min(100, shares.getOrDefault("ar", 0.0));
    // Without argon or carbon dioxide it would be taken for no gas at all.
    if (!shares.containsKey("ar") && !shares.containsKey("co2")) {
      throw noGas(text);
    }
    return new ShieldingGas(argon, Math.min(100 - argon, shares.getOrDefault("co2", 0.0)));
  }

  private static String gasWord(Matcher term) {
    String word = term.group(2);
    return word.startsWith("ar") ? "ar" : word.startsWith("he") ? "he" : word;
  }

  private static QuantityException noGas(String text) {
    return new QuantityException(
        "\"" + text + "\" is no shielding gas that adds up to 100 %",
        "Ar + 18 CO2, CO2, Ar, or none");
  }

  /**
   * A bar's two sides such as {@code 1/2 x 2 in}; a side without a unit takes that of the other.
   *
   * @throws QuantityException when the text is none
   */
  public static BarSection bar(String text) {
    String[] sides = text.toLowerCase(Locale.ROOT).split("x");
    if (sides.length != 2) {
      throw new QuantityException("\"" + text + "\" is no bar", "1/2 x 2 in");
    }
    Matcher unit = Pattern.compile(".*?([a-z\"]+)\\s*").matcher(sides[1]);
    boolean firstIsBare = !sides[0].matches(".*[a-z\"]\\s*");
    String first = sides[0] + (firstIsBare && unit.matches() ? " " + unit.group(1) : "");
    double oneMm = QuantityParser.parseSizeMm(first, LengthUnit.MM);
    double otherMm = QuantityParser.parseSizeMm(sides[1], LengthUnit.MM);
    return new BarSection(Math.min(oneMm, otherMm), Math.max(oneMm, otherMm));
  }
}
