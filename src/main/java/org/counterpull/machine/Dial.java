package org.counterpull.machine;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import org.counterpull.machine.Panel.Reading;

/**
 * A dial without a display: what its marks stand for.
 *
 * <p>Between two marks with numbers the dial is read straight; marks with letters are steps, of
 * which the nearest is taken. Outside the marks the last mark stands, and the answer says so.
 *
 * @param reading the figure that it sets
 * @param marks at least two, kept by rising figure
 */
public record Dial(Reading reading, List<Mark> marks) {
  private static final Pattern NUMBER = Pattern.compile("[\\d.]+");

  /**
   * One mark.
   *
   * @param label as on the front
   * @param value what it stands for, in the unit of the reading
   */
  public record Mark(String label, double value) {
    private OptionalDouble number() {
      return NUMBER.matcher(label).matches()
          ? OptionalDouble.of(Double.parseDouble(label))
          : OptionalDouble.empty();
    }
  }

  public Dial {
    marks = marks.stream().sorted(Comparator.comparingDouble(Mark::value)).toList();
    if (marks.size() < 2 || marks.stream().map(Mark::value).distinct().count() < marks.size()) {
      throw new IllegalArgumentException(
          "a dial needs two marks or more, each with a figure of its own");
    }
  }

  /** Position for a figure, as printed: {@code 5.5}, {@code C}, {@code 10 (its end)}. */
  public String position(double value) {
    Mark first = marks.get(0);
    Mark last = marks.get(marks.size() - 1);
    if (value <= first.value() || value >= last.value()) {
      Mark end = value <= first.value() ? first : last;
      boolean at = Math.abs(value - end.value()) <= 0.005 * end.value();
      return end.label() + (at ? "" : " (its end)");
    }
    int upper = 1;
    while (marks.get(upper).value() < value) {
      upper++;
    }
    return between(marks.get(upper - 1), marks.get(upper), value);
  }

  private static String between(Mark low, Mark high, double value) {
    double share = (value - low.value()) / (high.value() - low.value());
    if (low.number().isEmpty() || high.number().isEmpty()) {
      return share < 0.5 ? low.label() : high.label();
    }
    double from = low.number().getAsDouble();
    double position = from + share * (high.number().getAsDouble() - from);
    return String.format(Locale.ROOT, "%.1f", position);
  }
}
