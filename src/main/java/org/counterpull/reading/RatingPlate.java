package org.counterpull.reading;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.counterpull.power.DutyPoint;
import org.counterpull.power.PlateDuty;
import org.counterpull.power.Supply;
import org.counterpull.quantity.QuantityParser;

/** Reads the figures of a rating plate: range of current, duty cycle, supply. */
final class RatingPlate {
  private static final Pattern RANGE = Pattern.compile("(.+?)\\s*(?:\\.\\.+|\\bto\\b)\\s*(.+)");
  private static final Pattern POINT = Pattern.compile("(.+?)\\s*\\bat\\s+(.+)");
  private static final Pattern SUPPLY =
      Pattern.compile("([\\d.]+\\s*k?V)\\s*,?\\s*([\\d.]+\\s*A)(?:\\s*,?\\s*(.+))?");
  private static final double LEAST_CURRENT_A = 1;
  private static final double GREATEST_CURRENT_A = 2000;

  private RatingPlate() {}

  static Optional<double[]> range(Value value) {
    Optional<String> text = value.text();
    if (text.isEmpty()) {
      return Optional.empty();
    }
    Matcher range = RANGE.matcher(text.get());
    if (!range.matches()) {
      return value.problem(
          Problems.quote(text.get()) + " is no range of current", "30..200 A: smallest..largest");
    }
    Optional<Double> low = value.parsed(range.group(1), QuantityParser::parseCurrentA);
    Optional<Double> high = value.parsed(range.group(2), QuantityParser::parseCurrentA);
    if (low.isEmpty() || high.isEmpty()) {
      return Optional.empty();
    }
    boolean sane =
        low.get() >= LEAST_CURRENT_A && high.get() <= GREATEST_CURRENT_A && low.get() <= high.get();
    return sane
        ? Optional.of(new double[] {low.get(), high.get()})
        : value.problem(
            Problems.quote(text.get()) + " does not run from a smaller to a larger current",
            "30..200 A, within 1 to 2000 A");
  }

  static Optional<PlateDuty> duty(Value value, Optional<double[]> range) {
    Optional<List<DutyPoint>> points = value.all(v -> point(v, range));
    if (points.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(new PlateDuty(points.get()));
    } catch (IllegalArgumentException e) {
      return value.problem(
          "the duty cycle must fall as the current rises, one point for each current",
          "[60% at 120 A, 20% at 200 A]");
    }
  }

  private static Optional<DutyPoint> point(Value value, Optional<double[]> range) {
    Optional<String> text = value.text();
    if (text.isEmpty()) {
      return Optional.empty();
    }
    Matcher point = POINT.matcher(text.get());
    if (!point.matches()) {
      return value.problem(Problems.quote(text.get()) + " is no duty cycle", "20% at 200 A");
    }
    Optional<Double> percent = value.parsed(point.group(1), QuantityParser::parsePercent);
    Optional<Double> current = value.parsed(point.group(2), QuantityParser::parseCurrentA);
    if (percent.isEmpty() || current.isEmpty()) {
      return Optional.empty();
    }
    if (!(percent.get() >= 1 && percent.get() <= 100)) {
      return value.problem(
          "a duty cycle of " + Value.shortest(percent.get()) + " % does not exist", "1 to 100 %");
    }
    if (range.isPresent() && (current.get() > range.get()[1] || current.get() < LEAST_CURRENT_A)) {
      return value.problem(
          "the duty cycle is stated at "
              + Value.shortest(current.get())
              + " A, which the machine does not reach: its largest current is "
              + Value.shortest(range.get()[1])
              + " A",
          "the figures of the rating plate");
    }
    return Optional.of(new DutyPoint(current.get(), percent.get()));
  }

  static Optional<Supply> supply(Value value) {
    Optional<String> text = value.text();
    if (text.isEmpty()) {
      return Optional.empty();
    }
    Matcher supply = SUPPLY.matcher(text.get());
    String phases = supply.matches() && supply.group(3) != null ? supply.group(3) : "single-phase";
    boolean three = phases.matches("(?i)(three|3)[ -]?phases?");
    boolean single = phases.matches("(?i)(single|one|1)[ -]?phase");
    if (!supply.matches() || !three && !single) {
      return value.problem(
          Problems.quote(text.get()) + " is no supply", "230 V 16 A, or 400 V 16 A three-phase");
    }
    Optional<Double> volts = value.parsed(supply.group(1), QuantityParser::parseVoltageV);
    Optional<Double> amps = value.parsed(supply.group(2), QuantityParser::parseCurrentA);
    if (volts.isEmpty() || amps.isEmpty()) {
      return Optional.empty();
    }
    boolean sane =
        volts.get() >= 48 && volts.get() <= 1000 && amps.get() >= 1 && amps.get() <= 1000;
    return sane
        ? Optional.of(new Supply(volts.get(), amps.get(), three ? 3 : 1))
        : value.problem(
            Problems.quote(text.get()) + " is outside 48 to 1000 V and 1 to 1000 A", "230 V 16 A");
  }
}
