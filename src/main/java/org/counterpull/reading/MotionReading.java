package org.counterpull.reading;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.quantity.QuantityParser;
import org.counterpull.weldment.OwnRule;
import org.counterpull.weldment.Swing;

/** Reads swings and the rules of order of a file's or a shop's own. */
final class MotionReading {
  /** Farther than once round, an angle is a slip. */
  private static final double MOST_DEG = 360;

  private static final double MOST_MPA = 100;
  private static final double USUAL_RESERVE_MM = 5;

  private final List<String> parts;

  MotionReading(List<String> parts) {
    this.parts = parts;
  }

  Optional<Swing> swing(String name, Fields fields) {
    Optional<List<String>> moves =
        fields.get("moves").flatMap(v -> v.all(i -> i.known(parts, "part")));
    Optional<String> about = fields.get("about").flatMap(v -> v.known(parts, "part"));
    Optional<Double> from = fields.has("from") ? angle(fields, "from") : Optional.of(0.0);
    Optional<Double> to = angle(fields, "to");
    Optional<Optional<Swing.Cylinder>> cylinder =
        fields.has("cylinder")
            ? fields
                .get("cylinder")
                .flatMap(v -> v.fields(MotionKeys.CYLINDER))
                .flatMap(MotionReading::cylinder)
                .map(Optional::of)
            : Optional.of(Optional.empty());
    if (moves.isEmpty()
        || about.isEmpty()
        || from.isEmpty()
        || to.isEmpty()
        || cylinder.isEmpty()) {
      return Optional.empty();
    }
    if (from.get().equals(to.get())) {
      return fields.problem("to", "the range begins and ends at the same angle", "to: 95 deg");
    }
    return Optional.of(
        new Swing(name, moves.get(), about.get(), from.get(), to.get(), cylinder.get()));
  }

  private static Optional<Double> angle(Fields fields, String key) {
    return fields
        .get(key)
        .flatMap(v -> v.quantity(QuantityParser::parseAngleDeg, -MOST_DEG, MOST_DEG, "degrees"));
  }

  private static Optional<Swing.Cylinder> cylinder(Fields fields) {
    Optional<Vector3D> fixed = fields.get("fixed at").flatMap(Value::point);
    Optional<Vector3D> moving = fields.get("moving at").flatMap(Value::point);
    Optional<Double> bore = fields.size("bore");
    Optional<Double> rod = fields.size("rod");
    Optional<Double> closed = fields.size("closed");
    Optional<Double> stroke = fields.size("stroke");
    Optional<Double> pressure =
        fields.get("pressure").flatMap(v -> v.quantity(MotionReading::mpa, 0.01, MOST_MPA, "MPa"));
    Optional<Double> reserve =
        fields.has("reserve") ? fields.size("reserve") : Optional.of(USUAL_RESERVE_MM);
    boolean whole =
        fixed.isPresent()
            && moving.isPresent()
            && bore.isPresent()
            && rod.isPresent()
            && closed.isPresent()
            && stroke.isPresent()
            && pressure.isPresent()
            && reserve.isPresent();
    if (!whole) {
      return Optional.empty();
    }
    if (rod.get() >= bore.get()) {
      return fields.problem("rod", "the rod is as thick as the piston", "a rod below the bore");
    }
    if (stroke.get() >= closed.get()) {
      return fields.problem(
          "stroke", "the stroke is longer than the closed cylinder", "a stroke below closed");
    }
    return Optional.of(
        new Swing.Cylinder(
            fixed.get(),
            moving.get(),
            bore.get(),
            rod.get(),
            closed.get(),
            stroke.get(),
            pressure.get(),
            reserve.get()));
  }

  /** A bare number is in bar, as gauges are marked. */
  private static double mpa(String text) {
    boolean bare = text.strip().matches("[0-9.]+");
    return QuantityParser.parsePressureMPa(bare ? text + " bar" : text);
  }

  static Optional<OwnRule> rule(String name, Fields fields) {
    Optional<String> first = fields.choice("first");
    Optional<String> then = fields.choice("then");
    Optional<String> match = fields.has("match") ? fields.choice("match") : Optional.of("all");
    Optional<String> because = fields.text("because");
    boolean hard = fields.truth("hard", true);
    String source = fields.text("source").orElse("the shop's own");
    if (first.isEmpty() || then.isEmpty() || match.isEmpty() || because.isEmpty()) {
      return Optional.empty();
    }
    if (first.equals(then)) {
      return fields.problem("then", "both are the same sort of step", "two sorts of steps");
    }
    String reason = because.get();
    return Optional.of(
        new OwnRule(
            name,
            first.get(),
            then.get(),
            match.get(),
            reason.endsWith(".") ? reason : reason + ".",
            hard,
            source));
  }
}
