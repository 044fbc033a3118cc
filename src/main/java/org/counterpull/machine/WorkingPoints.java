package org.counterpull.machine;

import java.util.List;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.feeding.TransferMode;
import org.counterpull.power.LoadVoltage;

/** Finds how a machine is best set for a task. */
final class WorkingPoints {
  /** Up to here the 1 A per 0.025 mm rule holds; thicker parts get all that the machine has, mm. */
  private static final double RULE_UP_TO_MM = 4.8;

  /** Welding current per thickness of mild steel, A/mm (common practice, no source). */
  static final double AMPERES_PER_MM = 39.4;

  private static final double FILLET_A = 73.2;
  private static final double FILLET_POWER = 0.692;

  private WorkingPoints() {}

  static WorkingPoint best(Machine machine, WeldingProcess process, WeldTask task) {
    double usableA = machine.usableCurrentA(process);
    double inPositionA = usableA * ProcessLimits.currentShare(process, task.position());
    double byThicknessA =
        task.thinnerMm() <= RULE_UP_TO_MM
            ? Math.min(inPositionA, usualCurrentA(process, task))
            : inPositionA;
    double currentA = Math.min(usableA, Math.max(machine.smallestCurrentA(), byThicknessA));
    return at(machine, process, task, currentA);
  }

  /**
   * Current that a thin part usually gets: the ampere rule, and for fillets with wire the fit to
   * published starting settings of horizontal fillets on 1.2 to 6 mm, {@code 73.2 t^0.692}
   * (derived; -8 to +5 %), which lie above the rule there because travel is fast.
   */
  private static double usualCurrentA(WeldingProcess process, WeldTask task) {
    double byRule = AMPERES_PER_MM * task.thinnerMm();
    boolean wire =
        switch (process) {
          case MAG, MIG, FCAW, FCAW_S -> true;
          case MMA, TIG -> false;
        };
    return wire && task.joint().isFillet()
        ? Math.max(byRule, FILLET_A * Math.pow(task.thinnerMm(), FILLET_POWER))
        : byRule;
  }

  private static WorkingPoint at(
      Machine machine, WeldingProcess process, WeldTask task, double wantedA) {
    double diameterMm = diameterMm(machine, process, wantedA);
    double currentA =
        process == WeldingProcess.MMA
            ? Math.min(wantedA, StickRange.of(diameterMm).highA())
            : wantedA;
    return new WorkingPoint(
        process,
        diameterMm,
        currentA,
        LoadVoltage.volts(Machine.loadLine(process), currentA),
        ProcessLimits.slowestMmPerS(process, task.position()),
        machine.duty().percentAt(currentA),
        transfer(machine, process, diameterMm, currentA));
  }

  private static TransferMode transfer(
      Machine machine, WeldingProcess process, double diameterMm, double currentA) {
    return switch (process) {
      case MAG, MIG -> TransferMode.of(diameterMm, machine.gas(), currentA);
      case MMA, FCAW, FCAW_S, TIG -> TransferMode.SPRAY;
    };
  }

  private static double diameterMm(Machine machine, WeldingProcess process, double currentA) {
    return switch (process) {
      case MAG, MIG -> wireMm(machine, machine.diametersMm(process), currentA);
      case FCAW, FCAW_S -> last(machine.diametersMm(process));
      case TIG -> rodMm(machine.diametersMm(process), currentA);
      case MMA -> electrodeMm(machine.diametersMm(process), currentA);
    };
  }

  /** Thickest wire that sprays at this current; the thinnest one where none does. */
  private static double wireMm(Machine machine, List<Double> wires, double currentA) {
    return wires.stream()
        .filter(wire -> TransferMode.of(wire, machine.gas(), currentA) == TransferMode.SPRAY)
        .reduce((thin, thick) -> thick)
        .orElse(wires.get(0));
  }

  private static double last(List<Double> diameters) {
    return diameters.get(diameters.size() - 1);
  }

  /** Thickest rod that the current melts: 1.6 mm from 20 A, 2.4 mm from 65 A, 3.2 mm from 100 A. */
  private static double rodMm(List<Double> rods, double currentA) {
    return rods.stream()
        .filter(rod -> (rod < 2 ? 20 : rod < 3 ? 65 : 100) <= currentA)
        .reduce((thin, thick) -> thick)
        .orElse(rods.get(0));
  }

  /** Thickest electrode whose range the current reaches; the thinnest one where none is. */
  private static double electrodeMm(List<Double> electrodes, double currentA) {
    return electrodes.stream()
        .filter(core -> StickRange.of(core).lowA() <= currentA)
        .reduce((thin, thick) -> thick)
        .orElse(electrodes.get(0));
  }
}
