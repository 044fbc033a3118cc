package org.counterpull.report;

import java.util.Optional;
import org.counterpull.drawing.JointSection;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.machine.MachineVerdict;
import org.counterpull.machine.Verdict;
import org.counterpull.markup.Markup;
import org.counterpull.plan.Plan;

/** The joints of the page: the section drawn, what is done to the edges, the passes, the gates. */
final class JointsSection {
  private final Plan plan;
  private final PlanWords words;
  private final PlanTables tables;

  JointsSection(Plan plan, PlanWords words, PlanTables tables) {
    this.plan = plan;
    this.words = words;
    this.tables = tables;
  }

  Markup write() {
    Markup out = new Markup();
    out.element(
        "p",
        "Grey: beads, numbered in the order of welding. Hatched: the parts, cut. Measures in mm:"
            + " t thickness, z leg, h groove depth, c root face, b gap, s depth of bevel.",
        "class",
        "legend");
    for (int i = 0; i < plan.joints().size(); i++) {
      out.add(joint(plan.joints().get(i), i + 1));
    }
    return out;
  }

  private Markup joint(JointPlan joint, int number) {
    Markup out = new Markup().open("div", "class", "joint").open("div", "class", "joint-top");
    String runs = joint.runs().isEmpty() ? "" : ": " + words.runsOf(joint);
    out.element("h3", joint.joint().name() + runs);
    joint.refusals().forEach(r -> out.element("p", "Can't be done: " + r, "class", "stop-note"));
    out.open("div", "class", "joint-body").open("div");
    Optional<Markup> drawing = JointSection.of(joint, number);
    drawing.ifPresent(out::add);
    out.close().open("div").add(PageParts.lines(words.joint(joint)));
    out.add(PageParts.bullets(joint.notes())).close().close().close();
    out.add(PageParts.table(tables.passes(joint)));
    for (MachineVerdict verdict : joint.verdicts()) {
      if (verdict.verdict() != Verdict.ONE_PASS) {
        out.element("p", verdict.machine() + ": " + Verdicts.words(verdict.verdict()) + ".");
        out.add(PageParts.table(PlanTables.gates(verdict)));
        out.add(PageParts.bullets(verdict.notes()));
      }
    }
    return out.closeLine();
  }
}
