package org.counterpull.report;

import java.util.List;
import org.counterpull.drawing.JointSection;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.machine.MachineVerdict;
import org.counterpull.machine.Verdict;
import org.counterpull.markup.Markup;

/** The joints of the page: the section drawn, what is done to the edges, the passes, the gates. */
final class JointsSection {
  private final PlanWords words;
  private final PlanTables tables;

  JointsSection(PlanWords words, PlanTables tables) {
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
    List<List<JointPlan>> groups = words.alike();
    for (int i = 0; i < groups.size(); i++) {
      out.add(joints(groups.get(i), i + 1));
    }
    return out;
  }

  private Markup joints(List<JointPlan> alike, int number) {
    JointPlan joint = alike.get(0);
    Markup out = new Markup().open("div", "class", "joint").open("div", "class", "joint-top");
    out.element("h3", PlanWords.namesOf(alike));
    joint.refusals().forEach(r -> out.element("p", "Can't be done: " + r, "class", "stop-note"));
    out.open("div", "class", "joint-body").open("div");
    JointSection.of(joint, number).ifPresent(out::add);
    out.close().open("div").add(PageParts.lines(words.joints(alike)));
    out.add(PageParts.bullets(PlanWords.notesOf(alike))).close().close().close();
    out.add(PageParts.table(tables.passes(alike)));
    Table preheats = words.steel().methods(joint);
    if (!preheats.isEmpty()) {
      out.add(PageParts.table(preheats));
    }
    for (MachineVerdict verdict : joint.verdicts()) {
      if (verdict.verdict() != Verdict.ONE_PASS) {
        out.element("p", verdict.machine() + ": " + Verdicts.words(verdict.verdict()) + ".");
        out.add(PageParts.table(PlanTables.gates(verdict)));
        out.add(PageParts.bullets(words.stretch(verdict)));
        out.add(PageParts.bullets(verdict.notes()));
      }
    }
    return out.closeLine();
  }
}
