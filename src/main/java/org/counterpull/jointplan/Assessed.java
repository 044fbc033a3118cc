package org.counterpull.jointplan;

import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import org.counterpull.contact.WeldLine;
import org.counterpull.jointplan.Placing.Effort;
import org.counterpull.machine.MachineVerdict;
import org.counterpull.machine.Verdict;
import org.counterpull.position.WeldingPosition;

/**
 * What a machine can make of a joint, and how much turning that takes.
 *
 * @param verdict the worst over the joint's runs
 * @param effort how far the weldment is turned for it
 */
record Assessed(MachineVerdict verdict, Effort effort) {

  /**
   * Asks a machine; vertical runs are brought flat only where that gives a better answer.
   *
   * @param lines the runs
   * @param canBeTurned whether the weldment can be turned
   * @param asked the machine's verdict in a position
   */
  static Assessed of(
      List<WeldLine> lines, boolean canBeTurned, Function<WeldingPosition, MachineVerdict> asked) {
    Assessed turned = worst(lines, canBeTurned, Effort.TURN_OVER, asked);
    if (turned.verdict.verdict().compareTo(Verdict.WITH_PREPARATION) <= 0 || !canBeTurned) {
      return turned;
    }
    Assessed stood = worst(lines, true, Effort.STAND_ON_EDGE, asked);
    return stood.verdict.verdict().compareTo(turned.verdict.verdict()) < 0 ? stood : turned;
  }

  private static Assessed worst(
      List<WeldLine> lines,
      boolean canBeTurned,
      Effort effort,
      Function<WeldingPosition, MachineVerdict> asked) {
    return lines.stream()
        .map(line -> Placing.of(line, canBeTurned, effort).position())
        .distinct()
        .map(asked)
        .max(Comparator.comparing(MachineVerdict::verdict))
        .map(verdict -> new Assessed(verdict, effort))
        .orElseThrow();
  }
}
