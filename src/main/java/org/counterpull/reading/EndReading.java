package org.counterpull.reading;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.counterpull.quantity.QuantityParser;
import org.counterpull.space.Face;
import org.counterpull.weldment.EndCut;

/** Reads how the ends of a part are cut. */
final class EndReading {
  private static final double LEAST_DEG = 0.5;
  private static final double MOST_DEG = 75;
  private static final Pattern MITRED =
      Pattern.compile("mit(?:red|ered)\\s+(.+?)\\s+long\\s+(\\S+)");

  /** Both ends. */
  record Ends(EndCut left, EndCut right) {}

  private EndReading() {}

  static Optional<Ends> read(Fields fields, Optional<PartDraft.Body> body) {
    if (!fields.has("ends")) {
      return Optional.of(new Ends(EndCut.SQUARE, EndCut.SQUARE));
    }
    Optional<Fields> ends = fields.get("ends").flatMap(v -> v.fields(PartKeys.ENDS));
    Optional<EndCut> left = ends.flatMap(f -> end(f, "left"));
    Optional<EndCut> right = ends.flatMap(f -> end(f, "right"));
    if (left.isEmpty() || right.isEmpty()) {
      return Optional.empty();
    }
    if (fields.has("outline")) {
      return fields.problem("ends", "an outline has no ends to mitre", "cut them in the outline");
    }
    return body.isEmpty()
        ? Optional.empty()
        : fitted(fields, body.get(), new Ends(left.get(), right.get()));
  }

  private static Optional<EndCut> end(Fields fields, String key) {
    Optional<Value> value = fields.get(key);
    return value.isEmpty() ? Optional.of(EndCut.SQUARE) : cut(value.get());
  }

  private static Optional<EndCut> cut(Value value) {
    Optional<String> text = value.text();
    if (text.isEmpty()) {
      return Optional.empty();
    }
    String plain = text.get().toLowerCase(Locale.ROOT);
    if (plain.equals("square")) {
      return Optional.of(EndCut.SQUARE);
    }
    Matcher mitred = MITRED.matcher(plain);
    if (!mitred.matches()) {
      return value.problem(
          Problems.quote(text.get()) + " says no cut",
          "square, or mitred 45 long front: degrees off square, and the face on which the part is"
              + " longest");
    }
    Optional<Double> degrees = value.parsed(mitred.group(1), QuantityParser::parseAngleDeg);
    Optional<Face> face = Words.face(mitred.group(2));
    if (face.isEmpty() || face.get() == Face.LEFT || face.get() == Face.RIGHT) {
      return value.problem(
          Problems.quote(mitred.group(2)) + " is no long side", "front, back, top or bottom");
    }
    if (degrees.isPresent() && !(degrees.get() >= LEAST_DEG && degrees.get() <= MOST_DEG)) {
      return value.problem(
          "a mitre of " + Value.shortest(degrees.get()) + " degrees off square can't be cut",
          "0.5 to 75 degrees off square; 45 for a square corner");
    }
    return degrees.map(d -> new EndCut(d, face));
  }

  /** The cuts of both ends must leave something of the shortest side. */
  private static Optional<Ends> fitted(Fields fields, PartDraft.Body body, Ends ends) {
    for (Face face : new Face[] {Face.FRONT, Face.BACK, Face.TOP, Face.BOTTOM}) {
      double lost = lostOn(face, ends.left(), body) + lostOn(face, ends.right(), body);
      if (lost > body.lengthMm() + 1e-6) {
        return fields.problem(
            "ends",
            String.format(
                Locale.ROOT,
                "the mitres take %.1f mm off the %s, and the part is %.1f mm long",
                lost,
                face.word(),
                body.lengthMm()),
            "a longer part, a smaller angle, or the other long side");
      }
    }
    return Optional.of(ends);
  }

  private static double lostOn(Face face, EndCut cut, PartDraft.Body body) {
    if (cut.square() || cut.longSide().orElseThrow() != face.opposite()) {
      return 0;
    }
    boolean upright = face == Face.TOP || face == Face.BOTTOM;
    double depth = upright ? body.stock().upMm() : body.stock().acrossMm();
    return depth * Math.tan(Math.toRadians(cut.degreesOffSquare()));
  }
}
