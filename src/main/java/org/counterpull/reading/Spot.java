package org.counterpull.reading;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where a part sits along one direction of the face that it is set onto.
 *
 * @param from which end the distance is counted from
 * @param distanceMm to the part's middle, or to its near edge
 * @param edge true when the near edge is meant
 */
record Spot(From from, double distanceMm, boolean edge) {
  static final Spot MIDDLE = new Spot(From.MIDDLE, 0, false);
  private static final Pattern FROM = Pattern.compile("(edge\\s+)?(.+?)\\s+from\\s+(\\S+)");
  private static final Pattern FLUSH = Pattern.compile("flush\\s+(\\S+)");

  /** Ends of the direction. */
  enum From {
    MIDDLE,
    LOW,
    HIGH
  }

  /**
   * Reads {@code middle}, {@code 120 from left}, {@code edge 10 from front}, {@code flush back}.
   *
   * @param low word for the end where the direction begins
   * @param high word for the other
   */
  static Optional<Spot> read(Value value, String low, String high) {
    Optional<String> text = value.text();
    if (text.isEmpty()) {
      return Optional.empty();
    }
    String plain = text.get().toLowerCase(Locale.ROOT);
    if (plain.equals("middle")) {
      return Optional.of(MIDDLE);
    }
    Matcher flush = FLUSH.matcher(plain);
    if (flush.matches()) {
      return end(value, flush.group(1), low, high).map(f -> new Spot(f, 0, true));
    }
    Matcher from = FROM.matcher(plain);
    if (from.matches()) {
      Optional<From> end = end(value, from.group(3), low, high);
      Optional<Double> mm = value.length(from.group(2));
      return end.flatMap(f -> mm.map(d -> new Spot(f, d, from.group(1) != null)));
    }
    return value.problem(
        Problems.quote(text.get()) + " says no place on the face",
        "middle, 120 from " + low + ", edge 120 from " + high + ", or flush " + low);
  }

  private static Optional<From> end(Value value, String word, String low, String high) {
    if (word.equals(low)) {
      return Optional.of(From.LOW);
    }
    if (word.equals(high)) {
      return Optional.of(From.HIGH);
    }
    return value.problem(
        "on this face the distance runs from "
            + low
            + " to "
            + high
            + ", not from "
            + Problems.quote(word),
        "from " + String.join(" or from ", List.of(low, high)));
  }

  /**
   * The middle of the part, from the middle of the face.
   *
   * @param extentMm of the face
   * @param halfMm half the part's extent
   */
  double middleMm(double extentMm, double halfMm) {
    double inwards = distanceMm + (edge ? halfMm : 0);
    return switch (from) {
      case MIDDLE -> 0;
      case LOW -> inwards - extentMm / 2;
      case HIGH -> extentMm / 2 - inwards;
    };
  }
}
