package org.counterpull.machine;

import java.util.ArrayList;
import java.util.List;
import org.counterpull.machine.GateResult.Outcome;
import org.counterpull.power.DutyWait;
import org.counterpull.power.SupplyGate;
import org.counterpull.quantity.Printed;

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
            machine.fed(),
            point.currentA(),
            point.dutyPercent());
    List<Figure> figures =
        new ArrayList<>(
            List.of(
                new Figure("welding current", point.currentA(), "A"),
                new Figure("usable current", machine.usableCurrentA(point.process()), "A"),
                new Figure("supply current", supply.peakA(), "A"),
                new Figure("effective supply current", supply.effectiveA(), "A"),
                new Figure("breaker", supply.breakerA(), "A"),
                new Figure("duty cycle", point.dutyPercent(), "%"),
                new Figure(
                    "longest arc from cold", DutyWait.longestArcS(point.dutyPercent()), "s")));
    machine.lead().ifPresent(lead -> figures.addAll(figures(lead, machine, supply)));
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
    if (machine.lead().isPresent() && leadHolds(machine, point)) {
      ExtensionLead lead = machine.lead().get();
      return new GateResult(
          "electrical",
          Outcome.OPEN,
          figures,
          "the extension lead, not the plate, limits the current",
          "a shorter lead, or one of "
              + Printed.number(lead.goodSectionMm2(machine.supply(), supply.peakA()), 2)
              + " mm2, unrolled");
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

  /** Without the lead the machine would give more. */
  private static boolean leadHolds(Machine machine, WorkingPoint point) {
    double bareA =
        SupplyGate.largestCurrentA(
            Machine.loadLine(point.process()),
            machine.conversion(),
            machine.supply(),
            machine.duty());
    double usableA = machine.usableCurrentA(point.process());
    return usableA < 0.99 * Math.min(bareA, machine.largestCurrentA());
  }

  private static List<Figure> figures(ExtensionLead lead, Machine machine, SupplyGate supply) {
    double dropV = lead.dropV(machine.supply(), supply.peakA());
    return List.of(
        new Figure("lead length", lead.lengthM(), "m"),
        new Figure("lead section", lead.sectionMm2(), "mm2"),
        new Figure("voltage lost in the lead", dropV, "V"),
        new Figure("share of the supply lost", 100 * dropV / machine.supply().voltageV(), "%"),
        new Figure("lead current density", supply.effectiveA() / lead.sectionMm2(), "A/mm2"));
  }
}
