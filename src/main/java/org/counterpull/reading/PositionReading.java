package org.counterpull.reading;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.quantity.QuantityParser;
import org.counterpull.reading.Position.Setting;
import org.counterpull.space.Face;
import org.counterpull.space.Frame;

/** Reads how a part is placed: in the weldment's axes, between two points, or onto another part. */
final class PositionReading {
  private static final List<String> ONTO_KEYS =
      List.of("face", "set", "at", "across", "turned", "gap");
  private static final String ONE_WAY = "a part is placed in one way";

  private PositionReading() {}

  /** True when the file says nothing about where the part is. */
  static boolean isOpen(Fields fields) {
    return !fields.has("start")
        && !fields.has("axis start")
        && !fields.has("axis from")
        && !fields.has("axis to")
        && !fields.has("onto");
  }

  /** The position; needs the box of the part unless it is set onto another. */
  static Optional<Position> read(
      String name, Fields fields, List<String> parts, Optional<Box> box) {
    if (fields.has("onto")) {
      fields.refuse(
          List.of("start", "axis start", "axis from", "axis to", "along", "up"),
          ONE_WAY + ", and it is set onto another",
          "leave it out; set and turned say how it stands");
      return onto(name, fields, parts);
    }
    fields.refuse(ONTO_KEYS, "it goes with onto", "onto: PART, or leave it out");
    if (fields.has("axis from") || fields.has("axis to")) {
      fields.refuse(
          List.of("start", "axis start", "along"),
          ONE_WAY + ", and it lies between two points",
          "leave it out");
      return between(fields);
    }
    if (fields.has("start")) {
      fields.refuse(
          List.of("axis start"), ONE_WAY + ", and start is given", "leave one of them out");
    }
    return fixed(fields, box);
  }

  private static Optional<Position> fixed(Fields fields, Optional<Box> box) {
    Optional<Vector3D> along =
        fields.has("along")
            ? fields.get("along").flatMap(Value::direction)
            : Optional.of(Vector3D.PLUS_I);
    boolean corner = fields.has("start") || !fields.has("axis start");
    Optional<Vector3D> start =
        isOpen(fields)
            ? Optional.of(Vector3D.ZERO)
            : fields.get(corner ? "start" : "axis start").flatMap(Value::point);
    Optional<Frame> frame = frame(fields, start, along);
    if (frame.isEmpty() || box.isEmpty()) {
      return Optional.empty();
    }
    Frame f = frame.get();
    Vector3D shift = corner ? f.directionOutOf(box.get().cornerToOrigin()) : Vector3D.ZERO;
    return Optional.of(new Position.Fixed(new Frame(f.origin().add(shift), f.x(), f.y(), f.z())));
  }

  private static Optional<Position> between(Fields fields) {
    for (String key : List.of("axis from", "axis to")) {
      if (!fields.has(key)) {
        fields.problem(key + " is missing: two points are needed", key + ": [300, 0, 400]");
      }
    }
    Optional<Vector3D> from = fields.get("axis from").flatMap(Value::point);
    Optional<Vector3D> to = fields.get("axis to").flatMap(Value::point);
    Optional<Vector3D> along =
        from.flatMap(f -> to.map(t -> t.subtract(f)))
            .filter(d -> d.getNorm() >= Value.LEAST_SIZE_MM);
    return frame(fields, from, along).map(Position.Fixed::new);
  }

  private static Optional<Frame> frame(
      Fields fields, Optional<Vector3D> origin, Optional<Vector3D> along) {
    if (origin.isEmpty() || along.isEmpty()) {
      fields.get("up").flatMap(Value::direction);
      return Optional.empty();
    }
    boolean upright = along.get().normalize().crossProduct(Vector3D.PLUS_K).getNorm() < 1e-6;
    Optional<Vector3D> up =
        fields.has("up")
            ? fields.get("up").flatMap(Value::direction)
            : Optional.of(upright ? Vector3D.MINUS_I : Vector3D.PLUS_K);
    if (up.isEmpty()) {
      return Optional.empty();
    }
    if (up.get().crossProduct(along.get().normalize()).getNorm() < 1e-6) {
      return fields.problem(
          "up",
          "up runs along the part, so that its top looks nowhere",
          "a direction across the part");
    }
    return Optional.of(Frame.of(origin.get(), along.get(), up.get()));
  }

  private static Optional<Position> onto(String name, Fields fields, List<String> parts) {
    Optional<String> base = fields.get("onto").flatMap(v -> v.known(parts, "part"));
    if (base.isPresent() && base.get().equals(name)) {
      base = fields.problem("onto", "a part can't be set onto itself", "another part");
    }
    if (!fields.has("face") && !fields.has("like")) {
      fields.problem("face is missing: the face of that part", "face: top");
    }
    Optional<Face> face = fields.choice("face").flatMap(Words::face);
    Optional<String> set =
        fields.has("set") ? fields.choice("set") : defaulted(fields, name, "set", "lying along");
    Optional<Double> turned =
        fields.has("turned")
            ? fields
                .get("turned")
                .flatMap(v -> v.quantity(QuantityParser::parseAngleDeg, -360, 360, "degrees"))
            : Optional.of(0.0);
    Optional<Double> gap =
        fields.has("gap") ? fields.get("gap").flatMap(v -> v.size(0, 1000)) : Optional.of(0.0);
    Optional<Spot> at = face.flatMap(f -> spot(fields, name, "at", f));
    Optional<Spot> across = face.flatMap(f -> spot(fields, name, "across", f));
    if (base.isEmpty()
        || set.isEmpty()
        || turned.isEmpty()
        || gap.isEmpty()
        || at.isEmpty()
        || across.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Position.Onto(
            base.get(),
            face.get(),
            Setting.of(set.get()),
            at.get(),
            across.get(),
            turned.get(),
            gap.get()));
  }

  private static Optional<Spot> spot(Fields fields, String name, String key, Face face) {
    if (!fields.has(key)) {
      defaulted(fields, name, key, "middle");
      return Optional.of(Spot.MIDDLE);
    }
    boolean isEnd = face == Face.LEFT || face == Face.RIGHT;
    boolean isFlat = face == Face.TOP || face == Face.BOTTOM;
    boolean overY = key.equals("at") ? isEnd : isFlat;
    String low = overY ? "front" : key.equals("at") ? "left" : "bottom";
    String high = overY ? "back" : key.equals("at") ? "right" : "top";
    return fields.get(key).flatMap(v -> Spot.read(v, low, high));
  }

  private static Optional<String> defaulted(Fields fields, String name, String key, String value) {
    fields.book().assumeFor("parts", key + " is " + value, name);
    return Optional.of(value);
  }
}
