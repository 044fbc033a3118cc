package org.counterpull.machine;

import java.util.ArrayList;
import java.util.List;
import org.counterpull.machine.GateResult.Outcome;

/**
 * How many passes a section takes: {@code ceil(1.21 A / A_bead)} with a bead of {@code 20 E} mm2,
 * or one where the leg is within a single pass.
 *
 * <p><b>Source:</b> derived; single-pass limits by common practice below those of AWS D1.1.
 */
final class LayeringGate {
  /** Legs are laid a tenth over: 1.1 squared. */
  private static final double OVER_NOMINAL = 1.21;

  private static final int MOST_PASSES_PER_SIDE = 15;

  private LayeringGate() {}

  /** Passes for a section of weld metal on one side. */
  static int passesFor(WorkingPoint point, double nominalMm2) {
    return Math.max(1, (int) Math.ceil(OVER_NOMINAL * nominalMm2 / point.largestBeadMm2() - 1e-9));
  }

  /** The leg is within one pass of this machine and of good practice. */
  static boolean singlePass(WorkingPoint point, WeldTask task) {
    double leg = task.legToLayMm();
    return leg <= point.largestLegMm()
        && leg <= ProcessLimits.largestSinglePassLegMm(point, task.position());
  }

  static GateResult judge(WorkingPoint point, WeldTask task, int passes) {
    List<Figure> figures = new ArrayList<>();
    figures.add(new Figure("passes", passes, "1"));
    figures.add(new Figure("largest bead", point.largestBeadMm2(), "mm2"));
    if (task.joint().isFillet()) {
      figures.add(new Figure("leg to lay", task.legToLayMm(), "mm"));
      figures.add(new Figure("largest leg of one pass", point.largestLegMm(), "mm"));
    }
    if (passes == 1) {
      return new GateResult("layering", Outcome.OPEN, figures, "one pass fills it", "");
    }
    return passes <= 2 * MOST_PASSES_PER_SIDE
        ? new GateResult(
            "layering", Outcome.WITH_HELP, figures, "it takes several passes", "a bigger machine")
        : new GateResult(
            "layering",
            Outcome.SHUT,
            figures,
            "it takes more passes than make sense",
            "a bigger machine or another process");
  }
}
