package org.counterpull.machine;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.counterpull.feeding.ShieldingGas;
import org.counterpull.power.DutyPoint;
import org.counterpull.power.Supply;
import org.counterpull.quantity.LengthUnit;
import org.counterpull.quantity.QuantityException;
import org.counterpull.quantity.QuantityParser;

/** Reads what stands on a machine's plate and bottle, as people write it. */
public final class PlateText {
  private static final Pattern DUTY =
      Pattern.compile("\\s*([^%]+%)\\s*(?:at|@)\\s*(.+?)\\s*", Pattern.CASE_INSENSITIVE);
  private static final Pattern SUPPLY =
      Pattern.compile(
          "\\s*([\\d.]+\\s*V)[\\s,]+([\\d.]+\\s*A)[\\s,]*((?:three|3)[- ]phase|(?:single|1)[- ]phase)?\\s*",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern MIXTURE =
      Pattern.compile(
          "ar(?:gon)?\\s*(?:\\+|/)\\s*([\\d.]+)\\s*%?\\s*co2", Pattern.CASE_INSENSITIVE);
  private static final Map<String, ShieldingGas> PURE =
      Map.of(
          "co2", ShieldingGas.CO2,
          "ar", ShieldingGas.ARGON,
          "argon", ShieldingGas.ARGON,
          "none", ShieldingGas.NONE);

  private PlateText() {}

  /**
   * Duty points such as {@code 20% at 90 A, 60% at 60 A}.
   *
   * @throws QuantityException when the text is none
   */
  public static List<DutyPoint> duty(String text) {
    List<DutyPoint> points = new ArrayList<>();
    for (String one : text.split(",")) {
      Matcher match = DUTY.matcher(one);
      if (!match.matches()) {
        throw new QuantityException("\"" + one.strip() + "\" is no duty cycle", "20% at 90 A");
      }
      points.add(
          new DutyPoint(
              QuantityParser.parseCurrentA(match.group(2)),
              QuantityParser.parsePercent(match.group(1))));
    }
    return List.copyOf(points);
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
    return new Supply(
        QuantityParser.parseVoltageV(match.group(1)),
        QuantityParser.parseCurrentA(match.group(2)),
        three ? 3 : 1);
  }

  /**
   * A gas such as {@code Ar + 18 % CO2}, {@code CO2}, {@code Ar} or {@code none}.
   *
   * @throws QuantityException when the text is none
   */
  public static ShieldingGas gas(String text) {
    String words = text.strip().toLowerCase(Locale.ROOT);
    if (PURE.containsKey(words)) {
      return PURE.get(words);
    }
    Matcher mixture = MIXTURE.matcher(words);
    if (mixture.matches()) {
      double co2 = QuantityParser.parsePercent(mixture.group(1));
      if (co2 > 0 && co2 < 100) {
        return new ShieldingGas(100 - co2, co2);
      }
    }
    throw new QuantityException(
        "\"" + text + "\" is no shielding gas", "Ar + 18 CO2, CO2, Ar or none");
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
