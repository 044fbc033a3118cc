package org.counterpull.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.machine.Verdict;
import org.counterpull.mount.MountAnswer;
import org.counterpull.plan.Plan;
import org.counterpull.plan.PullAnswer;
import org.counterpull.swing.SwingResult;

/** What the terminal says of a plan, the most important first, in at most 100 columns. */
final class PlanSummary {
  private static final int COLUMNS = 100;
  private static final char KEPT_TOGETHER = '\u00a0';

  private final Plan plan;
  private final PlanWords words;
  private final PlanTables tables;
  private final PracticeTables practice;
  private final Measures measures;
  private final StringBuilder out = new StringBuilder();

  PlanSummary(Plan plan, Measures measures) {
    this.plan = plan;
    this.measures = measures;
    words = new PlanWords(plan, measures);
    tables = new PlanTables(plan, measures);
    practice = new PracticeTables(plan, measures);
  }

  /** The summary; {@code files} say where the plan is. */
  String write(List<String> files) {
    wrapped("", plan.weldment().name() + ": " + words.answer());
    for (Plan.Refusal refusal : plan.refusals()) {
      String way = refusal.wayForward().isEmpty() ? "" : " Way forward: " + refusal.wayForward();
      wrapped("  NO  ", refusal.where() + ": " + refusal.why() + way);
    }
    head("joints");
    plan.joints().forEach(this::joint);
    head("order of welding");
    wrapped(
        "  ",
        IntStream.range(0, plan.runs().size())
            .mapToObj(i -> "W" + (i + 1) + KEPT_TOGETHER + plan.runs().get(i).name())
            .collect(Collectors.joining(", ")));
    head("time");
    Plan.Consumables c = plan.consumables();
    wrapped(
        "  ",
        Measures.duration(c.elapsedS())
            + " in all: arc "
            + Measures.duration(c.arcS())
            + ", waits "
            + Measures.duration(c.waitS())
            + "; "
            + plan.operations().size()
            + " steps");
    plan.shape().ifPresent(this::shape);
    List<String> heat = new HeatTables(plan, measures).inShort();
    if (!heat.isEmpty()) {
      head("temperatures");
      heat.forEach(line -> wrapped("  ", line));
    }
    if (!plan.practice().pins().isEmpty()) {
      head("pins");
      PinWords pins = new PinWords(measures);
      plan.practice().pins().forEach(row -> wrapped("  ", pins.answer(row)));
    }
    for (SwingResult swing : plan.practice().swings()) {
      head("swing");
      practice.words(swing).forEach(words -> wrapped("  ", words));
    }
    for (MountAnswer mount : plan.practice().mounts()) {
      head(MountSection.title(mount));
      mount.verdict().forEach(sentence -> wrapped("  ", sentence));
    }
    if (!plan.practice().rules().isEmpty()) {
      head("rules");
      wrapped(
          "  ",
          plan.practice().rules().size()
              + " rules had a say; the plan gives each with its reason.");
    }
    if (!plan.cautions().isEmpty()) {
      head("cautions");
      wrapped("  ", plan.cautions().size() + " on the plan; they come before the first arc.");
    }
    if (!files.isEmpty()) {
      head("written");
      files.forEach(file -> out.append("  ").append(file).append('\n'));
    }
    return out.toString();
  }

  private void shape(PullAnswer shape) {
    ShapeWords shapeWords = new ShapeWords(measures);
    head("checks (expected, nine of ten, tolerance)");
    shape.checks().forEach(check -> wrapped("  ", shapeWords.verdict(check)));
    new OrderWords(shape).sentences().stream().limit(1).forEach(why -> wrapped("  ", why));
  }

  private void joint(JointPlan joint) {
    String machine = joint.machine().orElse("no machine");
    String verdict =
        Verdicts.chosen(joint)
            .map(v -> words(v.verdict(), joint))
            .orElse(
                joint.verdicts().stream()
                    .map(v -> v.machine() + ": " + Verdicts.words(v.verdict()))
                    .collect(Collectors.joining(", ")));
    String runs =
        joint.runs().isEmpty()
            ? "not welded"
            : joint.runs().stream()
                .map(r -> tables.weldNumber(r.name()))
                .collect(Collectors.joining(" "));
    wrapped(
        "  ",
        joint.joint().name()
            + ": "
            + verdict
            + " ("
            + machine
            + "), "
            + joint.preparation().kind().words()
            + ", "
            + tables.size(joint).first()
            + ", "
            + runs);
  }

  /** A groove that the machine opens at once is filled in several passes all the same. */
  private static String words(Verdict verdict, JointPlan joint) {
    int passes = joint.runs().stream().mapToInt(r -> r.passes().size()).max().orElse(1);
    return verdict == Verdict.ONE_PASS && passes > 1 ? passes + " passes" : Verdicts.words(verdict);
  }

  private void head(String title) {
    out.append(title).append('\n');
  }

  /** Breaks between words; goes on under the text, not under the mark in front of it. */
  private void wrapped(String mark, String unbroken) {
    String indent = " ".repeat(mark.length());
    int room = COLUMNS - mark.length();
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : plain(unbroken).split(" +")) {
      for (String piece : pieces(word, room)) {
        if (line.length() > 0 && line.length() + 1 + piece.length() > room) {
          lines.add(line.toString());
          line.setLength(0);
        }
        line.append(line.length() > 0 ? " " : "").append(piece);
      }
    }
    lines.add(line.toString());
    for (int i = 0; i < lines.size(); i++) {
      String text = lines.get(i).replace(KEPT_TOGETHER, ' ');
      out.append(i == 0 ? mark : indent).append(text).append('\n');
    }
  }

  private static List<String> pieces(String word, int room) {
    List<String> pieces = new ArrayList<>();
    for (int from = 0; from < word.length(); from += room) {
      pieces.add(word.substring(from, Math.min(word.length(), from + room)));
    }
    return pieces;
  }

  /** Without control characters, which could move the cursor of a terminal. */
  private static String plain(String text) {
    return text.replaceAll("\\p{Cntrl}", " ");
  }
}
