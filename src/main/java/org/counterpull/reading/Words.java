package org.counterpull.reading;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.order.StepTag;
import org.counterpull.space.Face;
import org.counterpull.weldment.EdgeTool;
import org.counterpull.weldment.Feature;
import org.counterpull.weldment.Fixture;
import org.counterpull.weldment.Joint.WeldKind;
import org.counterpull.weldment.Side;

/** The words that a file may choose from, and what they stand for. */
final class Words {
  static final List<String> UNITS = List.of("mm", "in");
  static final List<String> FACES = List.of("top", "bottom", "front", "back", "left", "right");
  static final List<String> SETS =
      List.of(
          "lying along",
          "lying across",
          "on edge along",
          "on edge across",
          "standing along",
          "standing across");
  static final List<String> AXES = List.of("x", "y", "z");
  static final List<String> DIRECTIONS = List.of("x", "-x", "y", "-y", "z", "-z");
  static final List<String> PENETRATIONS = List.of("full", "partial");
  static final List<String> CLASSES = List.of("A", "B", "C", "D", "E", "F", "G", "H");
  static final List<String> SIDES = Arrays.stream(Side.values()).map(Side::word).toList();
  static final List<String> WELDS =
      Arrays.stream(WeldKind.values()).filter(k -> k != WeldKind.AUTO).map(Words::weld).toList();
  static final List<String> FEATURES =
      Arrays.stream(Feature.Kind.values()).map(Feature.Kind::words).toList();
  static final List<String> STATES =
      Arrays.stream(Feature.State.values()).map(Feature.State::word).toList();
  static final List<String> STEPS = Arrays.stream(StepTag.values()).map(StepTag::words).toList();
  static final List<String> MATCHES = List.of("all", "same part", "same joint", "same subject");
  static final List<String> FIXTURES =
      Arrays.stream(Fixture.Kind.values()).map(Fixture.Kind::words).toList();

  static final List<String> EDGE_TOOLS =
      Arrays.stream(EdgeTool.values()).map(EdgeTool::word).toList();

  private Words() {}

  static EdgeTool edgeTool(String word) {
    return EdgeTool.valueOf(word.toUpperCase(Locale.ROOT));
  }

  static Optional<Face> face(String word) {
    return Arrays.stream(Face.values()).filter(f -> f.word().equals(word)).findFirst();
  }

  static Optional<Side> side(String word) {
    return Arrays.stream(Side.values()).filter(s -> s.word().equals(word)).findFirst();
  }

  static String weld(WeldKind kind) {
    return kind.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  static Optional<WeldingProcess> process(Value value) {
    Optional<String> text = value.text();
    Optional<WeldingProcess> process = text.flatMap(WeldingProcess::parse);
    return text.isPresent() && process.isEmpty()
        ? value.problem(
            Problems.quote(text.get()) + " is no welding process known here",
            Problems.didYouMean(text.get(), WeldingProcess.allWords()))
        : process;
  }
}
