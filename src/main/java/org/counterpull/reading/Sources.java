package org.counterpull.reading;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.counterpull.quantity.LengthUnit;
import org.counterpull.reading.Node.Entry;
import org.counterpull.reading.Node.Table;

/** Reads a file and what it includes into one tree; names in the including file win. */
final class Sources {
  private static final int MOST_FILES = 30;
  private static final List<String> SHARED =
      List.of(
          "machines", "fixtures", "rules", "prices", "stock room", "surroundings", "calibration");
  private static final List<String> IN_INCLUDED =
      List.of(
          "units",
          "include",
          "machines",
          "fixtures",
          "rules",
          "prices",
          "stock room",
          "surroundings",
          "calibration");

  private final Notebook book;
  private final Map<Path, String> loaded = new LinkedHashMap<>();
  private final List<Path> underWay = new ArrayList<>();

  Sources(Notebook book) {
    this.book = book;
  }

  /** Every file that was opened, in the order of opening. */
  List<Path> files() {
    return List.copyOf(loaded.keySet());
  }

  /** The tree of a file with its includes; empty when the text itself can't be read. */
  Optional<Table> read(Path path) {
    return table(path, path.toString())
        .map(table -> withIncludes(table, path, path.toString(), LengthUnit.MM));
  }

  private Optional<Table> table(Path path, String shownAs) {
    loaded.put(path.toAbsolutePath().normalize(), shownAs);
    Place start = new Place(shownAs, 1, 1);
    try {
      String text = FileText.read(path, shownAs);
      boolean json = shownAs.toLowerCase(Locale.ROOT).endsWith(".json");
      Optional<Node> root =
          json
              ? JsonTree.read(text, shownAs, book.problems())
              : YamlTree.read(text, shownAs, book.problems());
      if (root.isEmpty() || root.get() instanceof Node.Scalar s && s.isNothing()) {
        throw new FaultyText(start, "the file is empty", "weldment: NAME, then parts and joints");
      }
      if (root.get() instanceof Table table) {
        return Optional.of(table);
      }
      throw new FaultyText(
          root.get().place(),
          Node.words(root.get()) + " where keys are expected",
          "weldment: NAME, then parts and joints");
    } catch (FaultyText e) {
      e.report(book.problems());
      return Optional.empty();
    }
  }

  private Table withIncludes(Table table, Path path, String shownAs, LengthUnit otherwise) {
    LengthUnit unit = unit(table, otherwise);
    book.unit(shownAs, unit);
    Optional<Entry> include = table.entry("include");
    if (include.isEmpty()) {
      return table;
    }
    underWay.add(path.toAbsolutePath().normalize());
    Value value = new Value(book, "include", include.get().value(), "shop.yaml");
    Table brought = new Table(table.place(), List.of());
    for (Value item : value.items()) {
      Optional<Table> one = included(item, path, shownAs, unit);
      if (one.isPresent()) {
        refuseTwice(brought, one.get());
        brought = merged(brought, one.get());
      }
    }
    underWay.remove(underWay.size() - 1);
    return merged(table, brought);
  }

  private LengthUnit unit(Table table, LengthUnit otherwise) {
    Optional<String> word =
        table
            .entry("units")
            .flatMap(e -> new Value(book, "units", e.value(), "mm").choice(Words.UNITS));
    return word.map(w -> w.equals("in") ? LengthUnit.IN : LengthUnit.MM).orElse(otherwise);
  }

  private Optional<Table> included(Value item, Path includer, String shownAs, LengthUnit unit) {
    Optional<String> text = item.text();
    if (text.isEmpty()) {
      return Optional.empty();
    }
    Path path;
    String name;
    try {
      path = includer.resolveSibling(text.get());
      name = Path.of(shownAs).resolveSibling(text.get()).normalize().toString();
      if (Path.of(text.get()).isAbsolute()) {
        return item.problem("an included file is named from this file's folder", "shop.yaml");
      }
    } catch (InvalidPathException e) {
      return item.problem(Problems.quote(text.get()) + " is no file name", "shop.yaml");
    }
    Path key = path.toAbsolutePath().normalize();
    if (underWay.contains(key)) {
      return item.problem(
          "the files include each other in a circle: " + circle(key), "delete one of the includes");
    }
    if (loaded.containsKey(key)) {
      return Optional.empty();
    }
    if (loaded.size() >= MOST_FILES) {
      return item.problem("more than " + MOST_FILES + " files are included", "fewer files");
    }
    if (!Files.isRegularFile(path)) {
      return item.problem(
          "there is no file " + Problems.quote(name), "the name of a file in this file's folder");
    }
    return table(path, name).map(t -> withIncludes(shopOnly(t, name), path, name, unit));
  }

  private String circle(Path key) {
    List<String> names = new ArrayList<>();
    for (Path path : underWay.subList(underWay.indexOf(key), underWay.size())) {
      names.add(loaded.get(path));
    }
    return String.join(", ", names);
  }

  private Table shopOnly(Table table, String name) {
    List<Entry> kept = new ArrayList<>();
    for (Entry entry : table.entries()) {
      if (IN_INCLUDED.contains(entry.key())) {
        kept.add(entry);
      } else {
        boolean known = FileKeys.TOP.names().contains(entry.key());
        book.problems()
            .add(
                entry.keyPlace(),
                entry.key(),
                Problems.quote(entry.key())
                    + (known ? " does not belong in an included file" : " is no key of a file"),
                known
                    ? entry.key() + " in the file that includes " + name
                    : Problems.didYouMean(entry.key(), IN_INCLUDED));
      }
    }
    return new Table(table.place(), kept);
  }

  private void refuseTwice(Table one, Table other) {
    for (String section : List.of("machines", "fixtures", "rules", "calibration")) {
      if (inner(one, section).isPresent() && inner(other, section).isPresent()) {
        Table first = inner(one, section).get();
        for (Entry entry : inner(other, section).get().entries()) {
          first
              .entry(entry.key())
              .ifPresent(
                  e ->
                      book.problems()
                          .add(
                              entry.keyPlace(),
                              section + "." + entry.key(),
                              Problems.quote(entry.key()) + " is also in " + e.keyPlace().file(),
                              "another name in one of the two files"));
        }
      }
    }
  }

  private static Optional<Table> inner(Table table, String section) {
    return table
        .entry(section)
        .map(Entry::value)
        .filter(Table.class::isInstance)
        .map(Table.class::cast);
  }

  /** The file's own entries, then those that only the included one has. */
  private static Table merged(Table own, Table included) {
    Map<String, Entry> entries = new LinkedHashMap<>();
    own.entries().forEach(e -> entries.put(e.key(), e));
    for (Entry entry : included.entries()) {
      if (!SHARED.contains(entry.key())) {
        continue;
      }
      Entry before = entries.get(entry.key());
      if (before == null) {
        entries.put(entry.key(), entry);
      } else if (before.value() instanceof Table mine && entry.value() instanceof Table theirs) {
        Map<String, Entry> inner = new LinkedHashMap<>();
        mine.entries().forEach(e -> inner.put(e.key(), e));
        theirs.entries().forEach(e -> inner.putIfAbsent(e.key(), e));
        Table both = new Table(mine.place(), List.copyOf(inner.values()));
        entries.put(entry.key(), new Entry(entry.key(), before.keyPlace(), both));
      }
    }
    return new Table(own.place(), List.copyOf(entries.values()));
  }
}
