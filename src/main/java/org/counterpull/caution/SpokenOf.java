package org.counterpull.caution;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.counterpull.weldment.Feature;
import org.counterpull.weldment.Fixture;
import org.counterpull.weldment.Joint;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.Weldment;

/** Looks for words in what the file names: whole words, one or many of them. */
final class SpokenOf {
  private SpokenOf() {}

  /** The first of the words that the file speaks of, with the name that it stands in. */
  static Optional<String> first(Weldment weldment, List<String> words) {
    for (String name : names(weldment)) {
      String plain = plain(name);
      for (String word : words) {
        String wanted = plain(word).stripTrailing();
        if (plain.contains(wanted + " ") || plain.contains(wanted + "s ")) {
          return Optional.of("the file speaks of \"" + name + "\"");
        }
      }
    }
    return Optional.empty();
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
