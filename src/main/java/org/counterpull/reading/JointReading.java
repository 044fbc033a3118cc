package org.counterpull.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.counterpull.quantity.QuantityParser;
import org.counterpull.weldment.Joint;
import org.counterpull.weldment.Joint.GivenSize;
import org.counterpull.weldment.Joint.Holes;
import org.counterpull.weldment.Joint.Intermittent;
import org.counterpull.weldment.Joint.WeldKind;
import org.counterpull.weldment.Side;

/** Reads joints. */
final class JointReading {
  private static final double LARGEST_WELD_MM = 100;
  private static final double WIDEST_GAP_MM = 50;
  private static final double GREATEST_FORCE_N = 1e8;

  private final List<String> parts;
  private final List<String> machines;
  private final List<Tie> ties = new ArrayList<>();
  private boolean allTiesKnown = true;

  /** That a joint holds two parts together, whatever else is wrong with it. */
  record Tie(String joint, String first, String second) {}

  JointReading(List<String> parts, List<String> machines) {
    this.parts = parts;
    this.machines = machines;
  }

  Optional<Joint> read(String name, Fields fields) {
    Optional<List<String>> between = fields.get("between").flatMap(this::between);
    between.ifPresent(b -> ties.add(new Tie(name, b.get(0), b.get(1))));
    allTiesKnown &= between.isPresent();
    Optional<WeldKind> weld = weld(name, fields);
    Optional<GivenSize> size = size(name, fields);
    Optional<List<Side>> sides = sides(name, fields);
    double gapMm = opening(fields, "gap");
    double clearanceMm = opening(fields, "clearance");
    if (gapMm > 0 && clearanceMm > 0) {
      fields.problem(
          "clearance",
          "a gap is bridged by the weld and a clearance stays open: a joint has one or the other",
          "leave one of them out");
    }
    boolean full = fields.choice("penetration").filter("full"::equals).isPresent();
    Optional<Intermittent> stitch =
        fields.get("stitch").flatMap(v -> v.fields(JointKeys.STITCH)).flatMap(this::stitch);
    Optional<Holes> holes =
        fields.get("holes").flatMap(v -> v.fields(JointKeys.HOLES)).flatMap(this::holes);
    weld.ifPresent(kind -> holesFit(kind, fields));
    Optional<Double> load =
        fields
            .get("load")
            .flatMap(v -> v.quantity(QuantityParser::parseForceN, 0, GREATEST_FORCE_N, "N"));
    Optional<String> machine = fields.get("machine").flatMap(v -> v.known(machines, "machine"));
    if (between.isEmpty() || weld.isEmpty() || sides.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Joint(
            name,
            between.get().get(0),
            between.get().get(1),
            weld.get(),
            size,
            sides.get(),
            gapMm,
            clearanceMm,
            full,
            stitch,
            load,
            machine,
            holes));
  }

  /** The ties of the joints read so far; empty when the parts of one of them aren't known. */
  Optional<List<Tie>> ties() {
    return allTiesKnown ? Optional.of(List.copyOf(ties)) : Optional.empty();
  }

  private Optional<List<String>> between(Value value) {
    List<Value> items = value.items();
    if (items.isEmpty() && !value.isList()) {
      return Optional.empty();
    }
    if (!value.isList() || items.size() != 2) {
      return value.problem(
          "a joint is between two parts, and " + items.size() + " are named",
          "[fitted part, other part]");
    }
    Optional<List<String>> names = value.all(v -> v.known(parts, "part"));
    return names.filter(n -> n.get(0).equals(n.get(1))).isPresent()
        ? value.problem(
            "a joint between " + names.get().get(0) + " and itself", "[fitted part, other part]")
        : names;
  }

  private Optional<WeldKind> weld(String name, Fields fields) {
    if (!fields.has("weld")) {
      fields.book().assumeFor("joints", "weld chosen by shape and thickness", name);
      return Optional.of(WeldKind.AUTO);
    }
    return fields
        .choice("weld")
        .flatMap(
            w ->
                List.of(WeldKind.values()).stream()
                    .filter(k -> Words.weld(k).equals(w))
                    .findFirst());
  }

  private Optional<GivenSize> size(String name, Fields fields) {
    Optional<Double> leg = fields.get("leg").flatMap(v -> v.size(0.5, LARGEST_WELD_MM));
    Optional<Double> throat = fields.get("throat").flatMap(v -> v.size(0.5, LARGEST_WELD_MM));
    if (fields.has("leg") && fields.has("throat")) {
      return fields.problem(
          "throat", "leg and throat are two ways to give one size", "leave one of them out");
    }
    if (!fields.has("leg") && !fields.has("throat")) {
      fields.book().assumeFor("joints", "size is the least for the thickness", name);
    }
    return leg.isPresent() ? leg.map(GivenSize.Leg::new) : throat.map(GivenSize.Throat::new);
  }

  private Optional<List<Side>> sides(String name, Fields fields) {
    Optional<Value> value = fields.get("sides");
    if (value.isEmpty()) {
      fields.book().assumeFor("joints", "sides are all that can be reached", name);
      return Optional.of(List.of());
    }
    if (!value.get().isList()) {
      Optional<String> word =
          value
              .get()
              .choice(Stream.concat(Stream.of("both", "all"), Words.SIDES.stream()).toList());
      return word.map(w -> Words.side(w).map(List::of).orElse(List.of()));
    }
    Optional<List<Side>> sides = value.get().all(v -> v.choice(Words.SIDES).flatMap(Words::side));
    return sides.filter(s -> s.stream().distinct().count() < s.size()).isPresent()
        ? value.get().problem("a side is named twice", "each side once")
        : sides;
  }

  private static double opening(Fields fields, String key) {
    return fields.get(key).flatMap(v -> v.size(0, WIDEST_GAP_MM)).orElse(0.0);
  }

  private Optional<Holes> holes(Fields fields) {
    Optional<Double> width = fields.get("diameter").flatMap(v -> v.size(3, 100));
    Optional<Double> length = fields.get("length").flatMap(v -> v.size(3, 1000));
    Optional<Double> count = fields.get("count").flatMap(v -> v.number(1, 200, ""));
    if (width.isPresent() && length.isPresent() && length.get() <= width.get()) {
      return fields.problem(
          "length", "a slot is longer than it is wide", "leave the length out for round holes");
    }
    return width.map(w -> new Holes(w, length.orElse(w), (int) Math.round(count.orElse(1.0))));
  }

  private static void holesFit(WeldKind kind, Fields fields) {
    boolean filled = kind == WeldKind.PLUG || kind == WeldKind.SLOT;
    if (filled && !fields.has("holes")) {
      fields.problem(
          "weld",
          "a " + Words.weld(kind) + " weld fills holes, and none are given",
          kind == WeldKind.PLUG
              ? "holes: {diameter: 16, count: 3}"
              : "holes: {diameter: 16, length: 40, count: 2}");
    } else if (!filled && fields.has("holes")) {
      fields.problem("holes", "only plug and slot welds fill holes", "weld: plug, or weld: slot");
    }
  }

  private Optional<Intermittent> stitch(Fields fields) {
    Optional<Double> length = fields.get("length").flatMap(v -> v.size(5, 10_000));
    Optional<Double> clear = fields.get("clear").flatMap(v -> v.size(1, 10_000));
    return length.flatMap(l -> clear.map(c -> new Intermittent(l, c)));
  }
}
