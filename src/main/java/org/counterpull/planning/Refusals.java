package org.counterpull.planning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.counterpull.caution.Never;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.SteelAdvice;
import org.counterpull.machine.MachineVerdict;
import org.counterpull.machine.Verdict;
import org.counterpull.plan.Plan.Refusal;
import org.counterpull.steel.Grade;
import org.counterpull.steel.Grades;
import org.counterpull.swing.SwingResult;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.PartMaterial.Certainty;
import org.counterpull.weldment.Weldment;

/** What can't or mustn't be done, each with its reason and a way forward. */
final class Refusals {
  private Refusals() {}

  static List<Refusal> of(Weldment weldment, List<JointPlan> joints, List<SwingResult> swings) {
    List<Refusal> refusals = new ArrayList<>();
    for (Part part : weldment.parts()) {
      material(part, refusals);
    }
    refusals.addAll(Never.of(weldment));
    refusals.addAll(CurrentPath.of(weldment, joints));
    for (SwingResult swing : swings) {
      swing
          .faults()
          .forEach(f -> refusals.add(new Refusal(swing.swing().name(), f.why(), f.wayForward())));
    }
    for (JointPlan joint : joints) {
      joint(joint, refusals);
    }
    return List.copyOf(refusals);
  }

  private static void material(Part part, List<Refusal> refusals) {
    if (part.steel().certainty() == Certainty.UNKNOWN) {
      refusals.add(
          new Refusal(
              part.name(),
              "its steel is unknown: no preheat, filler or hardness can be given for it",
              "find the certificate or have it analysed; until then nobody may depend on its welds"));
      return;
    }
    Grades.find(part.steel().designation())
        .flatMap(Grade::notWelded)
        .ifPresent(
            why ->
                refusals.add(
                    new Refusal(
                        part.name(),
                        part.steel().designation() + " is not welded by this plan: " + why,
                        "use a part of weldable steel, bolt it, or have a specialist do it")));
  }

  private static void joint(JointPlan joint, List<Refusal> refusals) {
    for (String refused : joint.refusals()) {
      refusals.add(new Refusal(joint.joint().name(), refused, wayForward(joint)));
    }
    joint
        .loadCheck()
        .ifPresent(
            check ->
                check
                    .shortfall()
                    .ifPresent(
                        wrong ->
                            refusals.add(
                                new Refusal(joint.joint().name(), wrong, check.remedy()))));
    for (SteelAdvice.Forbidden forbidden : joint.steel().forbidden()) {
      refusals.add(new Refusal(joint.joint().name(), forbidden.why(), forbidden.wayForward()));
    }
    if (joint.machine().isEmpty()) {
      return;
    }
    MachineVerdict chosen =
        joint.verdicts().stream()
            .filter(v -> v.machine().equals(joint.machine().get()))
            .findFirst()
            .orElseThrow();
    if (chosen.verdict() == Verdict.TEST_FIRST && joint.joint().loadN().isPresent()) {
      refusals.add(
          new Refusal(
              joint.joint().name(),
              "it carries load, and "
                  + chosen.machine()
                  + " may not fuse it: weld it only after a test piece of the same thickness and"
                  + " settings was cut, etched and found fused, and not where people depend on it",
              wayForward(joint)));
    }
  }

  /** What would change the best verdict. */
  private static String wayForward(JointPlan joint) {
    List<String> changes =
        joint.verdicts().stream()
            .min(Comparator.comparing(MachineVerdict::verdict))
            .map(MachineVerdict::whatWouldChangeIt)
            .orElse(List.of());
    if (joint.verdicts().isEmpty()) {
      return "name a machine in the file";
    }
    return changes.isEmpty()
        ? "move the parts or weld the line before the part in the way is fitted"
        : String.join("; ", changes);
  }
}
