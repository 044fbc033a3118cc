package org.counterpull.weldment;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Looks for words in what the file names: whole words, one or many of them. */
public final class SpokenOf {
  private SpokenOf() {}

  /** The first name that one of the words stands in. */
  public static Optional<String> name(Weldment weldment, List<String> words) {
    return names(weldment).stream().filter(name -> speaksOf(name, words)).findFirst();
  }

  /** The same in words: {@code the file speaks of "lift cylinder"}. */
  public static Optional<String> first(Weldment weldment, List<String> words) {
    for (String name : names(weldment)) {
      if (speaksOf(name, words)) {
        return Optional.of("the file speaks of \"" + name + "\"");
      }
    }
    return Optional.empty();
  }

  /** True when one of the words stands in a name. */
  public static boolean speaksOf(String name, List<String> words) {
    String plain = plain(name);
    return words.stream()
        .map(word -> plain(word).stripTrailing())
        .anyMatch(word -> plain.contains(word + " ") || plain.contains(word + "s "));
  }

  /**
   * True when a name is that of such a thing and not of something for it: {@code old-tank-2} is a
   * tank, {@code tank bracket} is not.
   */
  public static boolean names(String name, List<String> words) {
    String plain = plain(plain(name).replaceAll("( [0-9]+| [a-z])+ $", " "));
    return words.stream()
        .map(word -> plain(word).stripTrailing())
        .anyMatch(word -> plain.endsWith(word + " ") || plain.endsWith(word + "s "));
  }

  /** Lower case, one blank before and behind each word. */
  private static String plain(String name) {
    return " " + name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9.]+", " ").strip() + " ";
  }

  private static List<String> names(Weldment weldment) {
    List<String> names = new ArrayList<>(List.of(weldment.name()));
    for (Part part : weldment.parts()) {
      names.add(part.name());
      names.add(part.steel().designation());
    }
    weldment.joints().stream().map(Joint::name).forEach(names::add);
    for (Feature feature : weldment.features()) {
      names.add(feature.name());
      feature.material().ifPresent(names::add);
    }
    weldment.fixtures().stream().map(Fixture::name).forEach(names::add);
    return names;
  }
}
