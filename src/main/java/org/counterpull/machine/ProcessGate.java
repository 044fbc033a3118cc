package org.counterpull.machine;

import java.util.ArrayList;
import java.util.List;
import org.counterpull.feeding.SprayCurrent;
import org.counterpull.feeding.TransferMode;
import org.counterpull.machine.GateResult.Outcome;

/**
 * What a process must not be trusted with. Short-circuit transfer above 5 mm only after a test
 * piece, above 6.4 mm not for fillets or groove fill that carry load; self-shielded wire up to 1.2
 * mm not above 8 mm.
 *
 * <p><b>Source:</b> AWS D1.1 excludes short-circuit transfer from prequalified procedures for its
 * risk of lack of fusion; the sheet code allows it to 4.8 mm. Limits of self-shielded wire from
 * memory.
 */
final class ProcessGate {
  private static final double SHORT_CIRCUIT_TEST_ABOVE_MM = 5;
  private static final double SHORT_CIRCUIT_REFUSED_ABOVE_MM = 6.4;
  private static final double SELF_SHIELDED_UP_TO_MM = 8;
  private static final double SELF_SHIELDED_THICK_WIRE_UP_TO_MM = 12.7;

  /** Common practice, no source. */
  private static final double TIG_UP_TO_MM = 10;

  private ProcessGate() {}

  /**
   * The gate.
   *
   * @param warmBar the parts are narrow bars that warm as a whole
   */
  static GateResult judge(Machine machine, WorkingPoint point, WeldTask task, boolean warmBar) {
    GateResult bare = bare(point, task, warmBar);
    List<Figure> figures = new ArrayList<>(bare.figures());
    switch (point.process()) {
      case MAG, MIG -> {
        figures.add(new Figure("welding current", point.currentA(), "A"));
        SprayCurrent.amperes(point.diameterMm(), machine.gas())
            .ifPresent(spray -> figures.add(new Figure("spray current", spray, "A")));
      }
      case MMA, FCAW, FCAW_S, TIG -> {}
    }
    return new GateResult(bare.name(), bare.outcome(), figures, bare.why(), bare.wouldChange());
  }

  private static GateResult bare(WorkingPoint point, WeldTask task, boolean warmBar) {
    return switch (point.process()) {
      case MAG, MIG ->
          point.transfer() == TransferMode.SPRAY
              ? open(task, "spray transfer fuses the side walls")
              : shortCircuit(task, warmBar);
      case FCAW_S -> selfShielded(point, task);
      case TIG -> tig(task);
      case MMA, FCAW -> open(task, "the process has no limit of thickness here");
    };
  }

  private static GateResult open(WeldTask task, String why) {
    return result(Outcome.OPEN, task, why, "");
  }

  private static GateResult shortCircuit(WeldTask task, boolean warmBar) {
    double thicker = task.thickerMm();
    if (thicker <= SHORT_CIRCUIT_TEST_ABOVE_MM) {
      return open(task, "short-circuit transfer is within its 5 mm");
    }
    String help = "spray transfer (more current, 80 % argon and more), cored wire or stick";
    if (thicker <= SHORT_CIRCUIT_REFUSED_ABOVE_MM) {
      return result(
          Outcome.AFTER_TEST, task, "short-circuit transfer above 5 mm may not fuse", help);
    }
    return warmBar
        ? result(
            Outcome.AFTER_TEST,
            task,
            "short-circuit transfer; a narrow bar warms as a whole, so it may fuse",
            help)
        : result(
            Outcome.SHUT,
            task,
            "short-circuit transfer above 6.4 mm lies on cold side walls without fusing",
            help);
  }

  private static GateResult selfShielded(WorkingPoint point, WeldTask task) {
    double limitMm =
        point.diameterMm() > 1.2 ? SELF_SHIELDED_THICK_WIRE_UP_TO_MM : SELF_SHIELDED_UP_TO_MM;
    return task.thickerMm() <= limitMm
        ? open(task, "self-shielded wire is within its thickness")
        : result(
            Outcome.SHUT,
            task,
            "small self-shielded wires are not made for more than " + limitMm + " mm",
            "gas-shielded cored wire or stick");
  }

  private static GateResult tig(WeldTask task) {
    return task.thickerMm() <= TIG_UP_TO_MM
        ? open(task, "TIG is within its thickness")
        : result(
            Outcome.SHUT,
            task,
            "TIG fills thick joints too slowly; it is for roots and thin parts",
            "stick or wire over a TIG root");
  }

  private static GateResult result(Outcome outcome, WeldTask task, String why, String wouldChange) {
    return new GateResult(
        "process",
        outcome,
        List.of(new Figure("thicker part", task.thickerMm(), "mm")),
        why,
        wouldChange);
  }
}
