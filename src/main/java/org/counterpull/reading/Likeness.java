package org.counterpull.reading;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.counterpull.reading.Node.Entry;
import org.counterpull.reading.Node.Table;

/** Carries out {@code like}: an entry takes over the keys of another and puts its own over them. */
final class Likeness {
  private static final String LIKE = "like";
  private static final int LONGEST_CHAIN = 50;

  /** A key that, written anew, makes the keys of another way of saying the same thing void. */
  private record Replaces(String key, Set<String> voided) {}

  private static final Set<String> FREE = Set.of("start", "axis start", "along");
  private static final Set<String> BETWEEN = Set.of("axis from", "axis to");
  private static final Set<String> ONTO =
      Set.of("onto", "face", "set", "at", "across", "turned", "gap");
  private static final List<Replaces> PARTS =
      List.of(
          new Replaces("start", union(Set.of("axis start"), BETWEEN, ONTO)),
          new Replaces("axis start", union(Set.of("start"), BETWEEN, ONTO)),
          new Replaces("axis from", union(FREE, ONTO, Set.of("length"))),
          new Replaces("onto", union(FREE, BETWEEN, Set.of("up"))),
          new Replaces("outline", Set.of("length", "width")),
          new Replaces("width", Set.of("outline")));
  private static final List<Replaces> JOINTS =
      List.of(
          new Replaces("leg", Set.of("throat")),
          new Replaces("throat", Set.of("leg")),
          new Replaces("gap", Set.of("clearance")),
          new Replaces("clearance", Set.of("gap")));
  private static final List<Replaces> FEATURES =
      List.of(new Replaces("on", Set.of("of")), new Replaces("of", Set.of("on")));
  private static final Map<String, List<Replaces>> SECTIONS =
      Map.of("parts", PARTS, "joints", JOINTS, "features", FEATURES, "machines", List.of());

  private final Notebook book;
  private final String section;
  private final Table table;
  private final List<Replaces> replacements;
  private final Map<String, Table> done = new LinkedHashMap<>();
  private final Set<String> underWay = new LinkedHashSet<>();

  private Likeness(Notebook book, String section, Table table) {
    this.book = book;
    this.section = section;
    this.table = table;
    this.replacements = SECTIONS.get(section);
  }

  /** The file with every {@code like} carried out. */
  static Table carriedOut(Notebook book, Table file) {
    List<Entry> entries = new ArrayList<>();
    for (Entry entry : file.entries()) {
      boolean takes = SECTIONS.containsKey(entry.key()) && entry.value() instanceof Table;
      entries.add(
          takes
              ? new Entry(
                  entry.key(),
                  entry.keyPlace(),
                  new Likeness(book, entry.key(), (Table) entry.value()).resolved())
              : entry);
    }
    return new Table(file.place(), entries);
  }

  private Table resolved() {
    List<Entry> entries = new ArrayList<>();
    for (Entry entry : table.entries()) {
      Node value = entry.value() instanceof Table own ? resolve(entry.key(), own) : entry.value();
      entries.add(new Entry(entry.key(), entry.keyPlace(), value));
    }
    return new Table(table.place(), entries);
  }

  private Table resolve(String name, Table own) {
    Table before = done.get(name);
    if (before != null) {
      return before;
    }
    underWay.add(name);
    Table result = model(name, own).map(model -> merged(model, own)).orElse(own);
    underWay.remove(name);
    done.put(name, result);
    return result;
  }

  /** The entry that this one is like, resolved itself; empty when there is none that can be. */
  private Optional<Table> model(String name, Table own) {
    Optional<Entry> like = own.entry(LIKE);
    if (like.isEmpty()) {
      return Optional.empty();
    }
    String path = section + "." + name + "." + LIKE;
    Value value = new Value(book, path, like.get().value(), "NAME of another entry");
    Optional<String> wanted =
        value.text().flatMap(t -> value.known(t, table.keys(), "entry in " + section));
    if (wanted.isPresent() && underWay.contains(wanted.get())) {
      List<String> circle = new ArrayList<>(underWay);
      circle = circle.subList(circle.indexOf(wanted.get()), circle.size());
      return value.problem(
          "\"like\" goes round in a circle: " + String.join(", ", circle),
          "write the keys out in one of them");
    }
    if (underWay.size() > LONGEST_CHAIN) {
      return value.problem(
          "\"like\" leads on through more than " + LONGEST_CHAIN + " entries",
          "like: the entry that has the keys");
    }
    return wanted
        .flatMap(table::entry)
        .filter(e -> e.value() instanceof Table)
        .map(e -> resolve(e.key(), (Table) e.value()));
  }

  private Table merged(Table model, Table own) {
    Map<String, Entry> entries = new LinkedHashMap<>();
    model.entries().forEach(e -> entries.put(e.key(), e));
    entries.remove(LIKE);
    for (Replaces rule : replacements) {
      if (own.entry(rule.key()).isPresent()) {
        rule.voided().forEach(entries::remove);
      }
    }
    own.entries().forEach(e -> entries.put(e.key(), e));
    return new Table(own.place(), List.copyOf(entries.values()));
  }

  @SafeVarargs
  private static Set<String> union(Set<String>... sets) {
    Set<String> all = new LinkedHashSet<>();
    for (Set<String> set : sets) {
      all.addAll(set);
    }
    return all;
  }
}
