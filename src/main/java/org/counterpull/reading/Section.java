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

  private Section(Notebook book, String name, KeyTable keys, Table table) {
    this.book = book;
    this.name = name;
    this.keys = keys;
    this.table = table;
  }

  /** The section of a file; an empty one where there is none, or none that can be read. */
  static Section of(Fields file, String name, KeyTable keys) {
    Optional<Value> value = file.get(name);
    Notebook book = file.book();
    Table nothing = new Table(new Place("", 1, 1), List.of());
    Table table = value.isPresent() && value.get().node() instanceof Table t ? t : nothing;
    if (value.isPresent() && !(value.get().node() instanceof Table)) {
      boolean empty = value.get().node() instanceof Node.Scalar s && s.isNothing();
      if (!empty && !(value.get().node() instanceof Node.Refused)) {
        value
            .get()
            .problem(
                Node.words(value.get().node()) + " where entries with names are expected",
                name + ": {" + value.get().example() + "}");
      }
    }
    return new Section(book, name, keys, table);
  }

  Notebook book() {
    return book;
  }

  List<String> names() {
    return table.keys();
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
