package org.counterpull.reading;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.quantity.QuantityParser;
import org.counterpull.weldment.Feature;
import org.counterpull.weldment.Probe;
import org.counterpull.weldment.RunGiven.OnPart;

/** Reads features and probes: things at a place on a part. */
final class FeatureReading {
  private static final Pattern ISO_286 = Pattern.compile("[A-Za-z]{1,2}\\d{1,2}");
  private static final double OUTSIDE_MM = 50;

  /** How far a bead may be drawn outside of the part that it lies on. */
  private static final double BEAD_OUTSIDE_MM = 1;

  private final List<String> parts;
  private final Map<String, Box> boxes;

  /**
   * Reads features.
   *
   * @param parts names of all parts
   * @param boxes of the parts that could be read
   */
  FeatureReading(List<String> parts, Map<String, Box> boxes) {
    this.parts = parts;
    this.boxes = boxes;
  }

  Optional<Feature> feature(String name, Fields fields) {
    Optional<List<String>> on = parts(fields);
    Optional<Feature.Kind> kind =
        fields
            .choice("kind")
            .flatMap(
                w ->
                    Arrays.stream(Feature.Kind.values())
                        .filter(k -> k.words().equals(w))
                        .findFirst());
    Optional<Vector3D> at =
        fields.get("at").flatMap(v -> v.point().flatMap(p -> onPart(v, p, on, OUTSIDE_MM)));
    Optional<Vector3D> axis = fields.choice("axis").flatMap(FeatureReading::axis);
    Optional<Double> diameter = fields.size("diameter");
    Optional<Double> length = fields.size("length");
    Optional<String> tolerance = fields.get("tolerance").flatMap(FeatureReading::tolerance);
    Optional<String> material = fields.text("material");
    Optional<Double> limit =
        fields
            .get("limit")
            .flatMap(v -> v.quantity(QuantityParser::parseTemperatureC, -50, 1500, "C"));
    Optional<Double> pin = fields.get("turns on").flatMap(FeatureReading::pin);
    boolean removable = fields.truth("removable", false);
    if (pin.isPresent() && diameter.isPresent() && pin.get() > diameter.get()) {
      fields.problem(
          "turns on",
          "a pin of "
              + Value.shortest(pin.get())
              + " mm can't turn in a diameter of "
              + Value.shortest(diameter.get())
              + " mm",
          "a pin smaller than the bore");
    }
    Optional<List<Feature.State>> states =
        fields.has("state")
            ? fields.get("state").flatMap(v -> v.all(FeatureReading::state))
            : Optional.of(List.of());
    if (on.isEmpty() || kind.isEmpty() || states.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Feature(
            name,
            kind.get(),
            on.get(),
            at,
            axis,
            diameter,
            length,
            tolerance,
            material,
            limit,
            pin,
            removable,
            new TreeSet<>(states.get())));
  }

  Optional<Probe> probe(String name, Fields fields) {
    Optional<String> on = fields.get("on").flatMap(v -> v.known(parts, "part"));
    Optional<Vector3D> at = place(fields, "at", on, OUTSIDE_MM);
    return on.flatMap(part -> at.map(point -> new Probe(name, part, point)));
  }

  /** A bead of its own on a part. */
  Optional<OnPart> bead(Fields fields) {
    for (String key : List.of("from", "to")) {
      if (!fields.has(key)) {
        return fields.problem(
            key + " is missing: a bead on a part runs from a point to another",
            key + ": [50, 75, 12], from the left front bottom corner of the part");
      }
    }
    Optional<String> on = fields.get("on").flatMap(v -> v.known(parts, "part"));
    Optional<Vector3D> from = place(fields, "from", on, BEAD_OUTSIDE_MM);
    Optional<Vector3D> to = place(fields, "to", on, BEAD_OUTSIDE_MM);
    if (from.isPresent() && to.isPresent() && from.get().distance(to.get()) < 1) {
      return fields.problem("to", "the bead is shorter than 1 mm", "another place than from");
    }
    return on.flatMap(part -> from.flatMap(f -> to.map(t -> new OnPart(part, f, t))));
  }

  private Optional<Vector3D> place(
      Fields fields, String key, Optional<String> on, double outsideMm) {
    return fields
        .get(key)
        .flatMap(v -> v.point().flatMap(p -> onPart(v, p, on.map(List::of), outsideMm)));
  }

  private Optional<List<String>> parts(Fields fields) {
    if (fields.has("on") && fields.has("of")) {
      return fields.problem("of", "on and of both say where it is", "leave one of them out");
    }
    if (fields.has("of")) {
      return fields.get("of").flatMap(this::several);
    }
    if (fields.has("on")) {
      return fields.get("on").flatMap(v -> v.known(parts, "part")).map(List::of);
    }
    return fields.has("like")
        ? Optional.empty()
        : fields.problem("on is missing: the part that it is on", "on: PART, or of: [PART, PART]");
  }

  private Optional<List<String>> several(Value value) {
    Optional<List<String>> names = value.all(v -> v.known(parts, "part"));
    return names.filter(n -> n.stream().distinct().count() < n.size()).isPresent()
        ? value.problem("a part is named twice", "each part once")
        : names;
  }

  /** From the corner of the part's box to the axes of the part. */
  private Optional<Vector3D> onPart(
      Value value, Vector3D corner, Optional<List<String>> on, double outsideMm) {
    if (on.isEmpty() || !boxes.keySet().containsAll(on.get())) {
      return Optional.empty();
    }
    Box box = boxes.get(on.get().get(0));
    for (String other : on.get()) {
      if (!boxes.get(other).cornerToOrigin().equals(box.cornerToOrigin())) {
        return value.problem(
            "one place for parts of different sections", "a feature for each section");
      }
      if (!near(corner, boxes.get(other), outsideMm)) {
        return value.problem(
            "the place is more than "
                + Value.shortest(outsideMm)
                + " mm outside "
                + other
                + ", which is "
                + words(boxes.get(other)),
            "distances from the left front bottom corner of the part: along it, to the back, up");
      }
    }
    return Optional.of(corner.subtract(box.cornerToOrigin()));
  }

  private static boolean near(Vector3D p, Box box, double outsideMm) {
    return within(p.getX(), box.lengthMm(), outsideMm)
        && within(p.getY(), box.acrossMm(), outsideMm)
        && within(p.getZ(), box.upMm(), outsideMm);
  }

  private static boolean within(double place, double extent, double outsideMm) {
    return place >= -outsideMm && place <= extent + outsideMm;
  }

  private static String words(Box box) {
    return Value.shortest(box.lengthMm())
        + " x "
        + Value.shortest(box.acrossMm())
        + " x "
        + Value.shortest(box.upMm())
        + " mm";
  }

  private static Optional<Feature.State> state(Value value) {
    return value.choice(Words.STATES).map(w -> Feature.State.valueOf(w.toUpperCase(Locale.ROOT)));
  }

  private static Optional<Vector3D> axis(String word) {
    return Optional.of(
        switch (word) {
          case "x" -> Vector3D.PLUS_I;
          case "y" -> Vector3D.PLUS_J;
          default -> Vector3D.PLUS_K;
        });
  }

  private static Optional<String> tolerance(Value value) {
    Optional<String> text = value.text();
    return text.filter(t -> !ISO_286.matcher(t).matches()).isPresent()
        ? value.problem(Problems.quote(text.get()) + " is no ISO 286 class", "H8 or f7")
        : text;
  }

  private static Optional<Double> pin(Value value) {
    Optional<String> text = value.text();
    if (text.isEmpty()) {
      return Optional.empty();
    }
    String size = text.get().replaceFirst("(?i)^pin\\s+", "");
    return value.withText(size).size();
  }
}
