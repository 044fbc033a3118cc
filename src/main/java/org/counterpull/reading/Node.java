package org.counterpull.reading;

import java.util.List;
import java.util.Optional;

/** A value of a file with the place where it begins. */
sealed interface Node {
  Place place();

  /**
   * A text, number, truth value or nothing, as written.
   *
   * @param text without quotation marks
   * @param quoted true when it stood in quotation marks
   */
  record Scalar(Place place, String text, boolean quoted) implements Node {
    /** True where a key has nothing behind it. */
    boolean isNothing() {
      return !quoted && (text.isEmpty() || text.equals("~") || text.equals("null"));
    }
  }

  /** A list. */
  record Items(Place place, List<Node> items) implements Node {
    public Items {
      items = List.copyOf(items);
    }
  }

  /** Keys with values, no key twice. */
  record Table(Place place, List<Entry> entries) implements Node {
    public Table {
      entries = List.copyOf(entries);
    }

    Optional<Entry> entry(String key) {
      return entries.stream().filter(e -> e.key().equals(key)).findFirst();
    }

    List<String> keys() {
      return entries.stream().map(Entry::key).toList();
    }
  }

  /** Something that has been reported already: readers pass over it in silence. */
  record Refused(Place place) implements Node {}

  /**
   * A key with its value.
   *
   * @param keyPlace where the key begins
   */
  record Entry(String key, Place keyPlace, Node value) {}

  /** What kind of thing it is, in words. */
  static String words(Node node) {
    if (node instanceof Items) {
      return "a list";
    }
    return node instanceof Table ? "a group of keys" : "a single value";
  }
}
