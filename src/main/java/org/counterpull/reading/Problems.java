package org.counterpull.reading;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.counterpull.naming.NearestNames;

/** Collects what is wrong with a file; one thing at one place is said once. */
final class Problems {
  private static final int MOST = 200;
  private static final int LONGEST_QUOTE = 60;
  private static final int MOST_NAMED = 40;
  private static final int MOST_COMPARED = 1000;
  private static final Comparator<Problem> BY_PLACE =
      Comparator.comparing(Problem::file)
          .thenComparingInt(Problem::line)
          .thenComparingInt(Problem::column);

  private record Key(Place place, String what) {}

  private final Map<Key, Problem> found = new LinkedHashMap<>();
  private int beyond;

  /** Adds one problem, unless the same was said of the same place before. */
  void add(Place place, String path, String what, String tryThis) {
    Key key = new Key(place, what);
    if (found.containsKey(key)) {
      return;
    }
    if (found.size() >= MOST) {
      beyond++;
      return;
    }
    found.put(key, new Problem(place.file(), place.line(), place.column(), path, what, tryThis));
  }

  boolean isEmpty() {
    return found.isEmpty();
  }

  int count() {
    return found.size() + beyond;
  }

  /** All problems, those of the main file first, by line and column. */
  List<Problem> sorted(String mainFile) {
    List<Problem> sorted = new ArrayList<>(found.values());
    sorted.sort(
        Comparator.comparing((Problem p) -> !p.file().equals(mainFile)).thenComparing(BY_PLACE));
    if (beyond > 0) {
      Problem last = sorted.get(sorted.size() - 1);
      sorted.add(
          new Problem(
              last.file(),
              last.line(),
              last.column(),
              "",
              "there are " + beyond + " more problems than the " + MOST + " listed",
              "mend these first and check again"));
    }
    return List.copyOf(sorted);
  }

  /** A text of the user's as it is repeated in a message. */
  static String quote(String text) {
    String plain = text.replaceAll("\\p{Cntrl}", "?");
    return "\""
        + (plain.length() > LONGEST_QUOTE ? plain.substring(0, LONGEST_QUOTE) + "..." : plain)
        + "\"";
  }

  /**
   * As {@link #didYouMean}, without the search once so many problems are listed that it is lost.
   */
  String mend(String typed, Collection<String> known) {
    return found.size() >= MOST ? "" : didYouMean(typed, known);
  }

  /** The mend for a word that isn't known: the nearest ones, otherwise all of them. */
  static String didYouMean(String typed, Collection<String> known) {
    List<String> near = typed.length() > LONGEST_QUOTE ? List.of() : NearestNames.of(typed, known);
    if (!near.isEmpty()) {
      return "did you mean " + String.join(" or ", near) + "?";
    }
    if (known.isEmpty()) {
      return "leave it out";
    }
    String some = known.stream().limit(MOST_NAMED).collect(Collectors.joining(", "));
    return "one of: " + some + (known.size() > MOST_NAMED ? ", ..." : "");
  }
}
