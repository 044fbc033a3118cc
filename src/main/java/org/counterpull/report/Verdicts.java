package org.counterpull.report;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.machine.GateResult;
import org.counterpull.machine.MachineVerdict;
import org.counterpull.machine.Verdict;

/** What machines can make of joints, looked up and put in words. */
final class Verdicts {
  private Verdicts() {}

  /** The verdict of a machine on a joint. */
  static Optional<MachineVerdict> of(String machine, JointPlan joint) {
    return joint.verdicts().stream().filter(v -> v.machine().equals(machine)).findFirst();
  }

  /** The verdict of the machine that is to weld the joint. */
  static Optional<MachineVerdict> chosen(JointPlan joint) {
    return joint.machine().flatMap(machine -> of(machine, joint));
  }

  /** The worst that a machine gets on any joint; empty when it was judged on none. */
  static Optional<Verdict> worst(String machine, List<JointPlan> joints) {
    return joints.stream()
        .flatMap(joint -> of(machine, joint).stream())
        .map(MachineVerdict::verdict)
        .max(Comparator.naturalOrder());
  }

  static String words(Verdict verdict) {
    return switch (verdict) {
      case ONE_PASS -> "one pass";
      case WITH_PREPARATION -> "with preparation";
      case TEST_FIRST -> "test piece first";
      case TACK_ONLY -> "tack only";
      case NO -> "no";
    };
  }

  static String outcomeWords(GateResult.Outcome outcome) {
    return switch (outcome) {
      case OPEN -> "open";
      case WITH_HELP -> "with help";
      case AFTER_TEST -> "after test";
      case SHUT -> "shut";
    };
  }
}
