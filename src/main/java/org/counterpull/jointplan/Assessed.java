package org.counterpull.jointplan;

import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.counterpull.contact.WeldLine;
import org.counterpull.jointplan.Placing.Effort;
import org.counterpull.machine.MachineVerdict;
import org.counterpull.machine.Verdict;
import org.counterpull.machine.WorkingPoint;
import org.counterpull.position.WeldingPosition;

/**
 * What a machine can make of a joint, and how much turning that takes.
 *
 * @param verdict the worst over the joint's runs
 * @param effort how far the weldment is turned for it
 * @param points how the machine is set in each position that its runs take
 */
record Assessed(MachineVerdict verdict, Effort effort, Map<WeldingPosition, WorkingPoint> points) {
  Assessed {
    points = Collections.unmodifiableMap(new EnumMap<>(points));
  }

  /** How the machine is set in a position. */
  WorkingPoint point(WeldingPosition position) {
    return points.getOrDefault(position, verdict.point());
  }

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
    Map<WeldingPosition, MachineVerdict> verdicts = new EnumMap<>(WeldingPosition.class);
    for (WeldLine line : lines) {
      verdicts.computeIfAbsent(Placing.of(line, canBeTurned, effort).position(), asked);
    }
    Map<WeldingPosition, WorkingPoint> points = new EnumMap<>(WeldingPosition.class);
    verdicts.forEach((position, verdict) -> points.put(position, verdict.point()));
    return verdicts.values().stream()
        .max(Comparator.comparing(MachineVerdict::verdict))
        .map(verdict -> new Assessed(verdict, effort, points))
        .orElseThrow();
  }
}
