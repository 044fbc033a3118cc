package org.counterpull.reading;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Puts a tree together from the events of a parser: finds keys written twice and bounds the depth.
 */
final class TreeBuilder {
  private static final int DEEPEST = 24;
  private static final int LONGEST = 5000;

  /** A list or table that is still open; {@code items} or {@code entries} is in use. */
  private static final class Open {
    final Place place;
    final boolean isTable;
    final List<Node> items = new ArrayList<>();
    final Map<String, Node.Entry> entries = new LinkedHashMap<>();
    Node.Scalar key;

    Open(Place place, boolean isTable) {
      this.place = place;
      this.isTable = isTable;
    }
  }

  private final Problems problems;
  private final Deque<Open> open = new ArrayDeque<>();
  private Node root;

  TreeBuilder(Problems problems) {
    this.problems = problems;
  }

  void begin(Place place, boolean isTable) throws FaultyText {
    if (open.size() >= DEEPEST) {
      throw new FaultyText(
          place,
          "lists and groups are nested deeper than " + DEEPEST,
          "no more than four or five levels, as the manual shows");
    }
    refuseAsKey(place);
    open.push(new Open(place, isTable));
  }

  void end() {
    Open done = open.pop();
    add(
        done.isTable
            ? new Node.Table(done.place, List.copyOf(done.entries.values()))
            : new Node.Items(done.place, done.items));
  }

  /** A scalar: a key where a key is due, otherwise a value. */
  void scalar(Node.Scalar scalar) throws FaultyText {
    Open top = open.peek();
    if (top != null && Math.max(top.items.size(), top.entries.size()) >= LONGEST) {
      throw new FaultyText(
          scalar.place(),
          "there are more than " + LONGEST + " entries in one group or list",
          "a smaller weldment; 200 parts is a large one");
    }
    if (top != null && top.isTable && top.key == null) {
      if (scalar.text().isBlank() || scalar.isNothing()) {
        throw new FaultyText(
            scalar.place(), "a key is missing in front of \":\"", "write the key, such as length");
      }
      top.key = scalar;
    } else {
      add(scalar);
    }
  }

  void refused(Place place) throws FaultyText {
    refuseAsKey(place);
    add(new Node.Refused(place));
  }

  Optional<Node> root() {
    return Optional.ofNullable(root);
  }

  private void refuseAsKey(Place place) throws FaultyText {
    Open top = open.peek();
    if (top != null && top.isTable && top.key == null) {
      throw new FaultyText(
          place,
          "a key is due here, and a list, a group or a reference is no key",
          "a plain word in front of \":\"; put a text with braces or brackets in quotation marks");
    }
  }

  private void add(Node node) {
    Open top = open.peek();
    if (top == null) {
      root = node;
    } else if (top.isTable) {
      addEntry(top, node);
    } else {
      top.items.add(node);
    }
  }

  private void addEntry(Open table, Node value) {
    String key = table.key.text().strip();
    Place place = table.key.place();
    Node.Entry before = table.entries.get(key);
    if (before == null) {
      table.entries.put(key, new Node.Entry(key, place, value));
    } else {
      problems.add(
          place,
          pathTo(key),
          Problems.quote(key) + " is written twice: first in line " + before.keyPlace().line(),
          "give one of the two another name, or delete it");
    }
    table.key = null;
  }

  private String pathTo(String key) {
    StringBuilder path = new StringBuilder();
    open.descendingIterator()
        .forEachRemaining(
            o -> {
              if (o != open.peek() && o.key != null) {
                path.append(o.key.text().strip()).append('.');
              } else if (!o.isTable) {
                path.append('[').append(o.items.size() + 1).append("].");
              }
            });
    return path.append(key).toString().replace(".[", "[");
  }
}
