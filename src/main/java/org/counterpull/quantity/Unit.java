package org.counterpull.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * One unit of a {@link Dimension}: {@code canonical = value * factor + offset}.
 *
 * @param symbol how the unit is printed
 * @param factor canonical units in one of these
 * @param offset canonical value at zero of this unit (temperature scales)
 * @param words every way of writing it, lower case and without spaces
 */
record Unit(String symbol, double factor, double offset, List<String> words) {

  Unit {
    words = List.copyOf(words);
  }

  static Unit of(String symbol, double factor, String... otherWords) {
    return scale(symbol, factor, 0, otherWords);
  }

  static Unit scale(String symbol, double factor, double offset, String... otherWords) {
    List<String> words = new ArrayList<>();
    words.add(plain(symbol));
    words.addAll(List.of(otherWords));
    return new Unit(symbol, factor, offset, words);
  }

  double toCanonical(double value) {
    return value * factor + offset;
  }

  double fromCanonical(double canonical) {
    return (canonical - offset) / factor;
  }

  boolean isWritten(String plainWord) {
    return words.contains(plainWord);
  }

  /** The spelling under which units are compared: case and spaces don't matter. */
  static String plain(String word) {
    return word.replaceAll("[\\s·*]", "").toLowerCase(Locale.ROOT);
  }
}
