package org.counterpull.reading;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.counterpull.quantity.Dimension;
import org.counterpull.quantity.QuantityParser;
import org.counterpull.space.Face;
import org.counterpull.weldment.Joint;
import org.counterpull.weldment.RunGiven;
import org.counterpull.weldment.RunGiven.Heat;
import org.counterpull.weldment.RunGiven.Shrinkage;
import org.counterpull.weldment.WrittenOrder;
import org.counterpull.weldment.WrittenOrder.Step;

/** Reads what is fixed on runs, and the sequence that a file fixes. */
final class SequenceReading {
  private static final double LONGEST_S = 1e7;

  private final List<String> jointNames;
  private final List<Joint> joints;

  SequenceReading(List<String> jointNames, List<Joint> joints) {
    this.jointNames = jointNames;
    this.joints = joints;
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
      return RunName.check(value, jointNames, joints)
          .map(run -> new Step(run, Optional.empty(), Optional.empty(), Optional.empty()));
    }
    return value.fields(JointKeys.ORDER).flatMap(this::step);
  }

  private Optional<Step> step(Fields fields) {
    Optional<String> run = fields.get("run").flatMap(v -> RunName.check(v, jointNames, joints));
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

  List<RunGiven> runs(Section section) {
    List<RunGiven> given = new ArrayList<>();
    for (String name : section.names()) {
      section
          .entry(name)
          .ifPresent(
              e -> {
                Node key = new Node.Scalar(e.keyPlace(), name, true);
                Value run = new Value(section.book(), "runs." + name, key, "tab/front");
                Value value = new Value(section.book(), "runs." + name, e.value(), "");
                Optional<String> known = RunName.check(run, jointNames, joints);
                Optional<Fields> fields = value.fields(JointKeys.RUN);
                fields
                    .map(f -> given(name, f))
                    .filter(g -> known.isPresent())
                    .ifPresent(given::add);
              });
    }
    return given;
  }

  private static RunGiven given(String name, Fields fields) {
    if (!fields.has("heat") && !fields.has("shrinkage")) {
      fields.problem("nothing is fixed on this run", "heat: {net: 600, travel: 5 mm/s}");
    }
    return new RunGiven(
        name,
        fields.get("heat").flatMap(v -> v.fields(JointKeys.HEAT)).flatMap(SequenceReading::heat),
        fields
            .get("shrinkage")
            .flatMap(v -> v.fields(JointKeys.SHRINKAGE))
            .map(SequenceReading::shrinkage));
  }

  private static Optional<Heat> heat(Fields fields) {
    if (fields.has("net") == fields.has("arc")) {
      return fields.problem(
          fields.has("net") ? "net and arc are two different heats" : "net or arc is missing",
          "net: 600 for heat in the metal, or arc: 750 for volts times amperes over speed");
    }
    boolean net = fields.has("net");
    Optional<Double> heat =
        fields
            .get(net ? "net" : "arc")
            .flatMap(v -> v.quantity(SequenceReading::jPerMm, 1, 20_000, "J/mm"));
    Optional<Double> travel =
        fields
            .get("travel")
            .flatMap(v -> v.quantity(QuantityParser::parseSpeedMmPerS, 0.1, 200, "mm/s"));
    Heat.Kind kind = net ? Heat.Kind.NET : Heat.Kind.ARC;
    return heat.flatMap(h -> travel.map(t -> new Heat(h, kind, t)));
  }

  private static double jPerMm(String text) {
    return QuantityParser.parse(Dimension.HEAT_PER_LENGTH, text, "J/mm");
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
