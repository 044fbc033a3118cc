package org.counterpull.reading;

import java.util.List;
import java.util.Optional;
import org.counterpull.reading.Node.Entry;
import org.counterpull.reading.Node.Table;

/** The keys of one group with their values. */
final class Fields {
  private final Notebook book;
  private final String path;
  private final Table table;
  private final KeyTable keys;

  private Fields(Notebook book, String path, Table table, KeyTable keys) {
    this.book = book;
    this.path = path;
    this.table = table;
    this.keys = keys;
  }

  /**
   * The fields of a group; keys that aren't known and keys that are missing are reported. What an
   * entry lacks that is like another is reported there.
   */
  static Fields of(Notebook book, String path, Table table, KeyTable keys) {
    Fields fields = new Fields(book, path, table, keys);
    fields.refuseUnknownKeys();
    for (Key key : keys.keys()) {
      if (key.needed() && !fields.has(key.name()) && !fields.has("like")) {
        fields.problem(
            key.name() + " is missing: " + key.meaning(), key.name() + ": " + key.example());
      }
    }
    return fields;
  }

  private void refuseUnknownKeys() {
    List<String> known = keys.names();
    for (Entry entry : table.entries()) {
      if (!known.contains(entry.key())) {
        book.problems()
            .add(
                entry.keyPlace(),
                path(entry.key()),
                Problems.quote(entry.key()) + " is no key of " + keys.what(),
                book.problems().mend(entry.key(), known));
      }
    }
  }

  Notebook book() {
    return book;
  }

  String path() {
    return path;
  }

  String path(String key) {
    return path.isEmpty() ? key : path + "." + key;
  }

  boolean has(String key) {
    return table.entry(key).isPresent();
  }

  /** The value of a key, whatever it is. */
  Optional<Value> get(String key) {
    String example = keys.key(key).example();
    return table.entry(key).map(e -> new Value(book, path(key), e.value(), example));
  }

  /** Reports something that is wrong with a key, at its value. */
  <T> Optional<T> problem(String key, String what, String tryThis) {
    Place place = table.entry(key).map(e -> e.value().place()).orElse(table.place());
    book.problems().add(place, path(key), what, tryThis);
    return Optional.empty();
  }

  /** Reports something that is wrong with the whole group. */
  <T> Optional<T> problem(String what, String tryThis) {
    book.problems().add(table.place(), path, what, tryThis);
    return Optional.empty();
  }

  /** Reports every key of a list that is there although another key rules it out. */
  void refuse(List<String> refused, String because, String tryThis) {
    for (String key : refused) {
      if (has(key)) {
        table
            .entry(key)
            .ifPresent(
                e ->
                    book.problems()
                        .add(
                            e.keyPlace(),
                            path(key),
                            key + " can't stand here: " + because,
                            tryThis));
      }
    }
  }

  Optional<String> text(String key) {
    return get(key).flatMap(Value::text);
  }

  Optional<String> choice(String key) {
    return get(key).flatMap(v -> v.choice(keys.key(key).form().choices()));
  }

  Optional<Double> size(String key) {
    return get(key).flatMap(Value::size);
  }

  boolean truth(String key, boolean otherwise) {
    return get(key).flatMap(Value::truth).orElse(otherwise);
  }
}
