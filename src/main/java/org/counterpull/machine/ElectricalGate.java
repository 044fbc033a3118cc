package org.counterpull.machine;

import java.util.List;
import org.counterpull.machine.GateResult.Outcome;
import org.counterpull.power.DutyWait;
import org.counterpull.power.SupplyGate;

/**
 * Current within the plate and the socket. Shut where the socket doesn't carry the smallest
 * current, or where the smallest current burns through the thinner part.
 */
final class ElectricalGate {
  private ElectricalGate() {}

  static GateResult judge(Machine machine, WorkingPoint point, WeldTask task) {
    SupplyGate supply =
        SupplyGate.at(
            Machine.loadLine(point.process()),
            machine.conversion(),
            machine.supply(),
            point.currentA(),
            point.dutyPercent());
    List<Figure> figures =
        List.of(
            new Figure("welding current", point.currentA(), "A"),
            new Figure("usable current", machine.usableCurrentA(point.process()), "A"),
            new Figure("supply current", supply.peakA(), "A"),
            new Figure("effective supply current", supply.effectiveA(), "A"),
            new Figure("breaker", supply.breakerA(), "A"),
            new Figure("duty cycle", point.dutyPercent(), "%"),
            new Figure("longest arc from cold", DutyWait.longestArcS(point.dutyPercent()), "s"));
    double mostForThicknessA = WorkingPoints.AMPERES_PER_MM * task.thinnerMm();
    if (point.currentA() < machine.smallestCurrentA()) {
      return new GateResult(
          "electrical",
          Outcome.SHUT,
          figures,
          "the circuit trips before the machine gives its smallest current",
          "a circuit with a larger breaker or a higher voltage");
    }
    if (StickRange.needsMore(point)) {
      return new GateResult(
          "electrical",
          Outcome.SHUT,
          figures,
          "the thinnest electrode at hand burns at more than machine and thickness allow",
          "thinner electrodes");
    }
    if (machine.smallestCurrentA() > mostForThicknessA) {
      return new GateResult(
          "electrical",
          Outcome.SHUT,
          figures,
          "the machine's smallest current burns through so thin a part",
          "a machine with a smaller current, or TIG");
    }
    boolean held = machine.usableCurrentA(point.process()) < machine.largestCurrentA();
    return new GateResult(
        "electrical",
        Outcome.OPEN,
        figures,
        held
            ? "the circuit, not the plate, limits the current"
            : "the circuit carries what the plate promises",
        held
            ? "a circuit with a larger breaker or a higher voltage gives the plate's current"
            : "");
  }
}
