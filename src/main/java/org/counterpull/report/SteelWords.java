package org.counterpull.report;

import static org.counterpull.report.Table.row;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.PreheatOpinion;
import org.counterpull.jointplan.SteelAdvice;
import org.counterpull.quantity.Computed;

/** What the steels of a joint ask for, in lines and a table. */
final class SteelWords {
  private final Measures measures;
  private final double ambientC;

  SteelWords(Measures measures, double ambientC) {
    this.measures = measures;
    this.ambientC = ambientC;
  }

  /** Steels, hardness, preheat and how it is reached. */
  List<PlanWords.Line> lines(JointPlan joint) {
    List<PlanWords.Line> lines = new ArrayList<>();
    Map<String, List<String>> bySteel = new LinkedHashMap<>();
    for (SteelAdvice.PartSteel part : joint.steel().parts()) {
      bySteel.computeIfAbsent(words(part), k -> new ArrayList<>()).add(part.part());
    }
    bySteel.forEach(
        (steel, parts) ->
            lines.add(
                new PlanWords.Line(
                    bySteel.size() == 1 ? "both steels" : "steel of " + String.join(", ", parts),
                    steel)));
    joint.hardness().ifPresent(h -> lines.add(new PlanWords.Line("hardness", words(joint, h))));
    lines.add(new PlanWords.Line("preheat", preheat(joint)));
    for (String how : joint.steel().heating()) {
      lines.add(new PlanWords.Line("to heat", how + "."));
    }
    return lines;
  }

  private static String words(SteelAdvice.PartSteel part) {
    String equivalents =
        part.equivalents().stream()
            .map(
                c ->
                    c.formula().name().toUpperCase(Locale.ROOT)
                        + " "
                        + Measures.plain(c.value(), c.unit())
                        + (c.inRange() ? "" : " (outside its range)"))
            .collect(Collectors.joining(", "));
    return part.designation()
        + ", "
        + part.known()
        + (equivalents.isEmpty() ? "" : "; " + equivalents);
  }

  private static String words(JointPlan joint, Computed hardness) {
    String start = Measures.plain(hardness.value(), hardness.unit()) + " beside the weld";
    return joint
        .steel()
        .hardness()
        .map(
            h ->
                start
                    + " at a t8/5 of "
                    + Measures.plain(h.t85S(), "s")
                    + ": the middle of "
                    + h.estimates().byMethod().values().stream()
                        .map(hv -> Long.toString(Math.round(hv)))
                        .collect(Collectors.joining(", "))
                    + " (Duren, Yurioka, Suzuki); they lie "
                    + Math.round(h.estimates().spreadHV())
                    + " apart, and none is surer than 55 HV")
        .orElse(start);
  }

  private Shown preheat(JointPlan joint) {
    Shown shown = measures.of(joint.preheat());
    boolean none = joint.preheat().value() <= ambientC + 1;
    return none
        ? new Shown("none; dry, and at least " + shown.first(), shown.other())
        : new Shown(
            shown.first() + " at least, by " + joint.preheat().formula().gives(), shown.other());
  }

  /** The methods side by side. */
  Table methods(JointPlan joint) {
    List<List<Shown>> rows = new ArrayList<>();
    for (PreheatOpinion opinion : joint.steel().preheats()) {
      rows.add(
          row(
              opinion.method(),
              opinion.answer().map(this::temperature).orElse(Shown.only("yes or no")),
              opinion.counts() || opinion.answer().isEmpty()
                  ? "holds"
                  : "outside: " + String.join("; ", opinion.outside()),
              opinion.words()));
    }
    return new Table(List.of("preheat by", "gives", "holds here", "asked with"), rows);
  }

  private Shown temperature(Computed answer) {
    return answer.value() <= ambientC
        ? Shown.only("none")
        : measures.of(answer.formula().result(Math.round(answer.value())));
  }
}
