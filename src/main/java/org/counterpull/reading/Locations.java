package org.counterpull.reading;

import java.util.HashMap;
import java.util.Map;

/**
 * Where everything that was read stands, by its path in the file: a later look at the model, at the
 * contacts for example, can report at the right line.
 */
public final class Locations {
  private final Map<String, Place> places = new HashMap<>();
  private final Place start;

  private Locations(Place start) {
    this.start = start;
  }

  /** All places of a tree; a group or list is placed at its key. */
  static Locations of(Node root) {
    Locations locations = new Locations(root.place());
    locations.add("", root);
    return locations;
  }

  private void add(String path, Node node) {
    if (node instanceof Node.Table table) {
      for (Node.Entry entry : table.entries()) {
        String inner = path.isEmpty() ? entry.key() : path + "." + entry.key();
        boolean single = entry.value() instanceof Node.Scalar;
        places.put(inner, single ? entry.value().place() : entry.keyPlace());
        add(inner, entry.value());
      }
    } else if (node instanceof Node.Items list) {
      int number = 1;
      for (Node item : list.items()) {
        String inner = path + "[" + number++ + "]";
        places.put(inner, item.place());
        add(inner, item);
      }
    }
  }

  /**
   * The place of a path such as {@code joints.lug.gap}; of the nearest group around it where the
   * file doesn't have that path itself.
   */
  public Place at(String path) {
    for (String p = path; !p.isEmpty(); p = parent(p)) {
      Place place = places.get(p);
      if (place != null) {
        return place;
      }
    }
    return start;
  }

  private static String parent(String path) {
    return path.substring(0, Math.max(0, Math.max(path.lastIndexOf('.'), path.lastIndexOf('['))));
  }

  /** A problem at the place of a path. */
  public Problem problem(String path, String what, String tryThis) {
    Place place = at(path);
    return new Problem(place.file(), place.line(), place.column(), path, what, tryThis);
  }
}
