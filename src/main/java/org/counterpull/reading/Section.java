package org.counterpull.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.regex.Pattern;
import org.counterpull.reading.Node.Entry;
import org.counterpull.reading.Node.Table;

/** A section of named entries: parts, joints, machines and the like. */
final class Section {
  private static final int LONGEST_NAME = 60;
  private static final Pattern FORBIDDEN = Pattern.compile("[/#\\[\\]{}\"\\p{Cntrl}]");

  private final Notebook book;
  private final String name;
  private final KeyTable keys;
  private final Table table;
  private final boolean readable;
  private final List<String> names;

  private Section(Notebook book, String name, KeyTable keys, Table table, boolean readable) {
    this.book = book;
    this.name = name;
    this.keys = keys;
    this.table = table;
    this.readable = readable;
    this.names = table.keys();
  }

  /** The section of a file; an empty one where there is none, or none that can be read. */
  static Section of(Fields file, String name, KeyTable keys) {
    Notebook book = file.book();
    Optional<Node> node = file.get(name).map(Value::node);
    Table nothing = new Table(new Place("", 1, 1), List.of());
    if (node.isPresent() && node.get() instanceof Table table) {
      return new Section(book, name, keys, table, true);
    }
    boolean empty = node.isPresent() && node.get() instanceof Node.Scalar s && s.isNothing();
    if (node.isPresent() && !empty && !(node.get() instanceof Node.Refused)) {
      Value value = file.get(name).get();
      value.problem(
          Node.words(value.node()) + " where entries with names are expected",
          name + ": {" + value.example() + "}");
    }
    return new Section(book, name, keys, nothing, empty);
  }

  Notebook book() {
    return book;
  }

  /** False where there is no such section, or something else in its place. */
  boolean isReadable() {
    return readable;
  }

  List<String> names() {
    return names;
  }

  Optional<Entry> entry(String entryName) {
    return table.entry(entryName);
  }

  /** Reads every entry, given its name and fields; entries that are wrong are left out. */
  <T> List<T> read(BiFunction<String, Fields, Optional<T>> reader) {
    List<T> read = new ArrayList<>();
    for (Entry entry : table.entries()) {
      Value value = new Value(book, name + "." + entry.key(), entry.value(), "");
      value.fields(keys).flatMap(f -> reader.apply(entry.key(), f)).ifPresent(read::add);
    }
    return read;
  }

  /** Reports names that would be mistaken for something else. */
  Section namesChecked() {
    for (Entry entry : table.entries()) {
      String entryName = entry.key();
      String path = name + "." + entryName;
      if (FORBIDDEN.matcher(entryName).find()) {
        book.problems()
            .add(
                entry.keyPlace(),
                path,
                "a name can't have / # [ ] { } or quotation marks in it: runs are named joint/side",
                entryName.replaceAll(FORBIDDEN.pattern(), "-"));
      } else if (entryName.length() > LONGEST_NAME) {
        book.problems()
            .add(
                entry.keyPlace(),
                name,
                "the name " + Problems.quote(entryName) + " is longer than 60 characters",
                "a short name, and the rest in a comment");
      }
    }
    return this;
  }
}
