package org.counterpull.reading;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.counterpull.machine.PlateText;
import org.counterpull.power.DutyPoint;
import org.counterpull.power.PlateDuty;
import org.counterpull.power.Supply;
import org.counterpull.quantity.QuantityParser;

/** Reads the figures of a rating plate: range of current, duty cycle, supply. */
final class RatingPlate {
  private static final Pattern RANGE = Pattern.compile("(.+?)\\s*(?:\\.\\.+|\\bto\\b)\\s*(.+)");
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
    Optional<DutyPoint> point = value.parsed(PlateText::dutyPoint);
    if (point.isEmpty() || range.isEmpty()) {
      return point;
    }
    double currentA = point.get().currentA();
    return currentA <= range.get()[1] && currentA >= LEAST_CURRENT_A
        ? point
        : value.problem(
            "the duty cycle is stated at "
                + Value.shortest(currentA)
                + " A, which the machine does not reach: its largest current is "
                + Value.shortest(range.get()[1])
                + " A",
            "the figures of the rating plate");
  }

  static Optional<Supply> supply(Value value) {
    return value.parsed(PlateText::supply);
  }
}
