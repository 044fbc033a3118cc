package org.counterpull.reading;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.counterpull.quantity.QuantityParser;
import org.counterpull.space.Face;
import org.counterpull.weldment.Joint;
import org.counterpull.weldment.RunGiven;
import org.counterpull.weldment.RunGiven.Shrinkage;
import org.counterpull.weldment.WrittenOrder;
import org.counterpull.weldment.WrittenOrder.Step;

/** Reads what is fixed on runs, and the sequence that a file fixes. */
final class SequenceReading {
  private static final double LONGEST_S = 1e7;

  private final List<String> jointNames;
  private final List<Joint> joints;
  private final Section given;
  private final FeatureReading places;

  /**
   * Reads runs and their order.
   *
   * @param given the section of runs, which may name beads of their own
   * @param places reads points on parts
   */
  SequenceReading(
      List<String> jointNames, List<Joint> joints, Section given, FeatureReading places) {
    this.jointNames = jointNames;
    this.joints = joints;
    this.given = given;
    this.places = places;
  }

  /** A run of a joint, or a bead that the file lays on a part. */
  private Optional<String> run(Value value) {
    Optional<String> bead =
        value.node() instanceof Node.Scalar name && bead(name.text())
            ? Optional.of(name.text())
            : Optional.empty();
    return bead.or(() -> RunName.check(value, jointNames, joints));
  }

  private boolean bead(String name) {
    return given.names().contains(name)
        && given
            .entry(name)
            .filter(e -> e.value() instanceof Node.Table table && table.entry("on").isPresent())
            .isPresent();
  }

  Optional<WrittenOrder> order(Fields file) {
    Optional<Value> value = file.get("order");
    Optional<List<Step>> steps = value.flatMap(v -> v.all(this::step));
    if (steps.isEmpty()) {
      return Optional.empty();
    }
    Set<String> runs = new HashSet<>();
    double lastStart = 0;
    List<Value> items = value.get().items();
    for (int i = 0; i < items.size(); i++) {
      Step step = steps.get().get(i);
      if (!runs.add(step.run())) {
        items.get(i).problem(step.run() + " is in the order twice", "each run once");
      }
      if (step.startS().isPresent() && step.startS().get() < lastStart) {
        items
            .get(i)
            .problem(
                step.run() + " starts before a run above it",
                "the runs in the order in which they start");
      }
      lastStart = Math.max(lastStart, step.startS().orElse(0.0));
    }
    return steps.map(WrittenOrder::new);
  }

  private Optional<Step> step(Value value) {
    if (!(value.node() instanceof Node.Table)) {
      return run(value)
          .map(run -> new Step(run, Optional.empty(), Optional.empty(), Optional.empty()));
    }
    return value.fields(JointKeys.ORDER).flatMap(this::step);
  }

  private Optional<Step> step(Fields fields) {
    Optional<String> run = fields.get("run").flatMap(this::run);
    Optional<Face> from = fields.choice("from").flatMap(Words::face);
    Optional<Double> start = time(fields, "start");
    Optional<Double> pause = time(fields, "pause");
    if (fields.has("start") && fields.has("pause")) {
      fields.problem("pause", "start and pause both say when", "leave one of them out");
    }
    return run.map(r -> new Step(r, from, start, pause));
  }

  private static Optional<Double> time(Fields fields, String key) {
    return fields.get(key).flatMap(v -> v.quantity(QuantityParser::parseTimeS, 0, LONGEST_S, "s"));
  }

  List<RunGiven> runs() {
    List<RunGiven> read = new ArrayList<>();
    for (String name : given.names()) {
      given
          .entry(name)
          .ifPresent(
              e -> {
                Node key = new Node.Scalar(e.keyPlace(), name, true);
                Value run = new Value(given.book(), "runs." + name, key, "tab/front");
                Value value = new Value(given.book(), "runs." + name, e.value(), "");
                Optional<String> known = run(run);
                Optional<Fields> fields = value.fields(JointKeys.RUN);
                fields.map(f -> given(name, f)).filter(g -> known.isPresent()).ifPresent(read::add);
              });
    }
    return read;
  }

  private RunGiven given(String name, Fields fields) {
    if (!fields.has("heat") && !fields.has("shrinkage")) {
      fields.problem("nothing is fixed on this run", "heat: {net: 600, travel: 5 mm/s}");
    }
    for (String key : List.of("from", "to")) {
      if (!fields.has("on") && fields.has(key)) {
        fields.problem(
            key,
            key + " is for a bead of its own on a part, and no part is named",
            "on: a part; or leave from and to out for a run of a joint");
      }
    }
    if (fields.has("on") && name.contains("/")) {
      fields.problem(
          "on",
          "a run of a joint lies where its joint is",
          "another name without /, for a bead of its own");
    }
    if (fields.has("on") && !fields.has("heat")) {
      fields.problem(
          "heat is missing: nothing else says how hot this bead is",
          "heat: {net: 600, travel: 5 mm/s}");
    }
    return new RunGiven(
        name,
        fields.get("heat").flatMap(v -> v.fields(JointKeys.HEAT)).flatMap(RunHeatReading::heat),
        fields
            .get("shrinkage")
            .flatMap(v -> v.fields(JointKeys.SHRINKAGE))
            .map(SequenceReading::shrinkage),
        fields.has("on") ? places.bead(fields) : Optional.empty());
  }

  private static Shrinkage shrinkage(Fields fields) {
    return new Shrinkage(
        fields.get("across").flatMap(v -> v.size(-20, 20)).orElse(0.0),
        Math.toRadians(
            fields
                .get("angle")
                .flatMap(v -> v.quantity(QuantityParser::parseAngleDeg, -45, 45, "degrees"))
                .orElse(0.0)),
        fields
            .get("along")
            .flatMap(v -> v.quantity(QuantityParser::parseForceN, 0, 1e7, "N"))
            .orElse(0.0));
  }
}
