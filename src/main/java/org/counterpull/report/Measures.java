package org.counterpull.report;

import java.util.Locale;
import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Dimension;
import org.counterpull.quantity.LengthUnit;
import org.counterpull.quantity.Printed;

/** Puts quantities in words as a shop reads them: its own units first, the others beside them. */
final class Measures {
  private static final double SIXTEENTH_MM = 25.4 / 16;
  private static final double CLOSE_MM = 0.1;
  private static final double ROUGH_FROM_MM = 25;

  private final boolean inchesFirst;

  Measures(LengthUnit fileUnits) {
    inchesFirst =
        switch (fileUnits) {
          case IN, FT -> true;
          case MM, CM, M -> false;
        };
  }

  /** Sentences with measures in the units of the file. */
  Sentences sentences() {
    return new Sentences(this, inchesFirst);
  }

  Shown length(double mm) {
    String metric = Printed.number(Math.round(mm * 10) / 10.0, 6) + " mm";
    return inOrder(metric, inches(mm));
  }

  /** A small deviation or tolerance: 0.01 mm, thousandths of an inch. */
  Shown fine(double mm) {
    String metric = Printed.number(Math.round(mm * 100) / 100.0, 6) + " mm";
    return inOrder(metric, String.format(Locale.ROOT, "%.3f in", mm / 25.4));
  }

  Shown temperature(double celsius) {
    double fahrenheit = Dimension.TEMPERATURE.convert(celsius, "C", "F");
    return inOrder(Math.round(celsius) + " \u00b0C", Math.round(fahrenheit) + " \u00b0F");
  }

  Shown travel(double mmPerS) {
    return inOrder(
        Printed.number(mmPerS, 2) + " mm/s",
        Printed.number(Dimension.SPEED.convert(mmPerS, "mm/s", "in/min"), 2) + " in/min");
  }

  Shown wireFeed(double mPerMin) {
    return inOrder(
        Printed.number(mPerMin, 2) + " m/min",
        Printed.number(Dimension.SPEED.convert(mPerMin, "m/min", "in/min"), 3) + " in/min");
  }

  Shown mass(double kg) {
    return inOrder(
        Printed.number(kg, 3) + " kg",
        Printed.number(Dimension.MASS.convert(kg, "kg", "lb"), 3) + " lb");
  }

  Shown heat(double kJPerMm) {
    return inOrder(
        Printed.number(kJPerMm, 2) + " kJ/mm",
        Printed.number(Dimension.HEAT_PER_LENGTH.convert(kJPerMm, "kJ/mm", "kJ/in"), 2) + " kJ/in");
  }

  /** A computed number in its own unit, three digits; lengths and temperatures in both systems. */
  Shown of(Computed computed) {
    return switch (computed.unit()) {
      case "mm" -> length(computed.value());
      case "C" -> temperature(computed.value());
      case "kg" -> mass(computed.value());
      case "kJ/mm" -> heat(computed.value());
      case "m/min" -> wireFeed(computed.value());
      default -> Shown.only(plain(computed.value(), computed.unit()));
    };
  }

  static String plain(double value, String unit) {
    return Printed.number(value, 3) + (unit.equals("1") ? "" : " " + unit);
  }

  /** A duration: 45 s, 12 min, 2 h 05 min. */
  static String duration(double seconds) {
    long whole = Math.round(seconds);
    if (whole < 90) {
      return whole + " s";
    }
    long minutes = Math.round(seconds / 60);
    return minutes < 90
        ? minutes + " min"
        : String.format(Locale.ROOT, "%d h %02d min", minutes / 60, minutes % 60);
  }

  /** A wait to the second: 45 s, 2 min 15 s, 12 min. */
  static String exactly(double seconds) {
    long whole = Math.round(seconds);
    long left = whole % 60;
    if (whole < 90 || whole >= 600 || left == 0) {
      return duration(seconds);
    }
    return whole / 60 + " min " + left + " s";
  }

  /** Time from the beginning of the job: 0:42. */
  static String clock(double seconds) {
    long minutes = (long) Math.floor(seconds / 60 + 1e-9);
    return String.format(Locale.ROOT, "%d:%02d", minutes / 60, minutes % 60);
  }

  private Shown inOrder(String metric, String inch) {
    return inchesFirst ? new Shown(inch, metric) : new Shown(metric, inch);
  }

  /** To the nearest sixteenth where that is close or the length is long, else to 0.001 in. */
  private static String inches(double mm) {
    long sixteenths = Math.round(mm / SIXTEENTH_MM);
    boolean close = Math.abs(mm - sixteenths * SIXTEENTH_MM) <= CLOSE_MM;
    if (sixteenths > 0 && (close || mm >= ROUGH_FROM_MM)) {
      return fraction(sixteenths) + " in";
    }
    return String.format(Locale.ROOT, "%.3f in", mm / 25.4);
  }

  /** Inches of a length that a sentence gives: exact where it was said to a tenth. */
  String inSentence(String mm) {
    double value = Double.parseDouble(mm);
    if (value == 0) {
      return "0";
    }
    long sixteenths = Math.round(value / SIXTEENTH_MM);
    boolean close = Math.abs(value - sixteenths * SIXTEENTH_MM) <= CLOSE_MM;
    return mm.contains(".") && !close
        ? String.format(Locale.ROOT, "%.3f", value / 25.4)
        : inches(value).replace(" in", "");
  }

  private static String fraction(long sixteenths) {
    long whole = sixteenths / 16;
    long top = sixteenths % 16;
    long bottom = 16;
    while (top % 2 == 0 && top > 0) {
      top /= 2;
      bottom /= 2;
    }
    if (top == 0) {
      return Long.toString(whole);
    }
    return whole == 0 ? top + "/" + bottom : whole + "-" + top + "/" + bottom;
  }
}
