package org.counterpull.reading;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.weldment.Fixture;
import org.counterpull.weldment.Fixture.Kind;

/** Reads fixtures. */
final class FixtureReading {
  private final List<String> parts;

  FixtureReading(List<String> parts) {
    this.parts = parts;
  }

  Optional<Fixture> read(String name, Fields fields) {
    Optional<Kind> kind =
        fields
            .choice("kind")
            .flatMap(
                w -> Arrays.stream(Kind.values()).filter(k -> k.words().equals(w)).findFirst());
    Optional<List<String>> on =
        fields.has("on")
            ? fields.get("on").flatMap(v -> v.all(i -> i.known(parts, "part")))
            : Optional.of(List.of());
    Optional<List<Vector3D>> at =
        fields.has("at")
            ? fields.get("at").flatMap(FixtureReading::points)
            : Optional.of(List.of());
    Optional<Double> diameter = fields.size("diameter");
    if (kind.isEmpty() || on.isEmpty() || at.isEmpty()) {
      return Optional.empty();
    }
    if (!fields.has("on") && kind.get() != Kind.TABLE) {
      return fields.problem("on is missing: the parts that it holds", "on: [PART, PART]");
    }
    if (kind.get() == Kind.THROUGH_ROD && !fields.has("diameter")) {
      return fields.problem("a through rod needs its diameter", "diameter: 16.9");
    }
    if (kind.get() != Kind.THROUGH_ROD) {
      fields.refuse(List.of("diameter"), "only a through rod has one", "leave it out");
    }
    return Optional.of(new Fixture(name, kind.get(), on.get(), at.get(), diameter));
  }

  /** A list of points, or one point. */
  private static Optional<List<Vector3D>> points(Value value) {
    boolean one = value.isList() && value.items().stream().noneMatch(Value::isList);
    return one ? value.point().map(List::of) : value.all(Value::point);
  }
}
