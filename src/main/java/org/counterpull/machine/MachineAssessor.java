package org.counterpull.machine;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.fillet.LegEnergy;
import org.counterpull.fillet.MinimumFillet;
import org.counterpull.machine.GateResult.Outcome;
import org.counterpull.power.DutyWait;
import org.counterpull.quantity.Printed;

/** Asks the five gates and draws one verdict; where they disagree the safer one stands. */
public final class MachineAssessor {
  private static final double TACKS_FROM_SHARE = 0.5;
  private static final double[] CLASS_UP_TO_MM = {20, 12, 6};

  /** Arc energy per thickness of a square butt from one side (mean of published settings). */
  private static final double SQUARE_BUTT_KJ_PER_MM2 = 0.129;

  private static final double CLEANING_BETWEEN_PASSES_S = 30;
  private static final int TABLE_FROM_MM = 1;
  private static final int TABLE_TO_MM = 25;

  private MachineAssessor() {}

  /** The verdict for the machine's best process; the first in its list where several tie. */
  public static MachineVerdict assess(Machine machine, WeldTask task) {
    return machine.processes().stream()
        .map(process -> assess(machine, process, task))
        .min(Comparator.comparing(MachineVerdict::verdict))
        .orElseThrow();
  }

  /** The verdict for one process. */
  public static MachineVerdict assess(Machine machine, WeldingProcess process, WeldTask task) {
    WorkingPoint point = WorkingPoints.best(machine, process, task);
    GateResult electrical = ElectricalGate.judge(machine, point, task);
    GateResult fusion = FusionGate.judge(point, task);
    GateResult chill = ChillGate.judge(point, task);
    PreparationChoice preparation = PreparationChoice.choose(point, task, fusion);
    OptionalDouble preheatC = ChillGate.preheatC(point, task);
    OptionalDouble warmedToC = warmedToC(point, task, preparation.passes());
    boolean warmBar =
        warmedToC.isPresent()
            && preheatC.isPresent()
            && warmedToC.getAsDouble() >= preheatC.getAsDouble();
    GateResult processGate = ProcessGate.judge(machine, point, task, warmBar);
    GateResult layering = LayeringGate.judge(point, task, preparation.passes());
    List<GateResult> gates = List.of(electrical, fusion, chill, processGate, layering);
    double arcTimeS = arcTimeSPerM(point, task, preparation);
    return new MachineVerdict(
        verdict(gates, point, task),
        machine.name(),
        task,
        point,
        gates,
        preparation,
        chill.outcome() == Outcome.WITH_HELP ? preheatC : OptionalDouble.empty(),
        arcTimeS,
        DutyWait.seconds(arcTimeS, point.dutyPercent()),
        machine.usableCurrentA(process) / WorkingPoints.AMPERES_PER_MM,
        notChilledUpToMm(machine, process, task),
        notes(point, task, preparation, warmedToC));
  }

  /** Verdicts over 1 to 25 mm, both parts of one thickness. */
  public static List<MachineVerdict> table(Machine machine, WeldingProcess process, WeldTask like) {
    return IntStream.rangeClosed(TABLE_FROM_MM, TABLE_TO_MM)
        .mapToObj(thicknessMm -> assess(machine, process, like.ofThickness(thicknessMm)))
        .toList();
  }

  private static Verdict verdict(List<GateResult> gates, WorkingPoint point, WeldTask task) {
    GateResult electrical = gates.get(0);
    if (electrical.outcome() == Outcome.SHUT) {
      return Verdict.NO;
    }
    boolean shut = gates.stream().anyMatch(gate -> gate.outcome() == Outcome.SHUT);
    if (shut) {
      double tackA = TACKS_FROM_SHARE * FusionGate.neededA(point, task);
      return point.currentA() >= tackA ? Verdict.TACK_ONLY : Verdict.NO;
    }
    if (gates.stream().anyMatch(gate -> gate.outcome() == Outcome.AFTER_TEST)) {
      return Verdict.TEST_FIRST;
    }
    return gates.stream().allMatch(GateResult::passed)
        ? Verdict.ONE_PASS
        : Verdict.WITH_PREPARATION;
  }

  /** Temperature of a narrow bar's joint before its last pass, C; empty for plates. */
  private static OptionalDouble warmedToC(WorkingPoint point, WeldTask task, int passes) {
    if (task.bar().isEmpty() || !task.bar().get().isNarrow()) {
      return OptionalDouble.empty();
    }
    BarSection bar = task.bar().get();
    double arcS = bar.widthMm() / point.slowestMmPerS();
    double intervalS =
        arcS + Math.max(CLEANING_BETWEEN_PASSES_S, DutyWait.seconds(arcS, point.dutyPercent()));
    double netHeatJ =
        point.process().efficiencyLow() * point.largestArcEnergyKJPerMm() * 1000 * bar.widthMm();
    double share = 2.0 / task.joint().heatPaths();
    return OptionalDouble.of(
        task.ambientC() + BarWarming.afterPassesK(bar, share, netHeatJ, intervalS, passes - 1));
  }

  private static double arcTimeSPerM(
      WorkingPoint point, WeldTask task, PreparationChoice preparation) {
    double travel = preparation.passes() == 1 ? onePassTravel(point, task) : point.slowestMmPerS();
    return preparation.passes() * 1000 / travel;
  }

  private static double onePassTravel(WorkingPoint point, WeldTask task) {
    return task.joint().isFillet()
        ? point.travelForLegMmPerS(task.legToLayMm())
        : point.travelForEnergyMmPerS(SQUARE_BUTT_KJ_PER_MM2 * task.thinnerMm());
  }

  /** Upper end of the AWS class whose least leg the machine brings the heat for. */
  private static double notChilledUpToMm(Machine machine, WeldingProcess process, WeldTask task) {
    double energy =
        WorkingPoints.best(machine, process, task.ofThickness(TABLE_TO_MM))
            .largestArcEnergyKJPerMm();
    if (energy >= LegEnergy.kJPerMm(MinimumFillet.legMm(TABLE_TO_MM))) {
      return Double.POSITIVE_INFINITY;
    }
    for (double upToMm : CLASS_UP_TO_MM) {
      if (energy >= LegEnergy.kJPerMm(MinimumFillet.legMm(upToMm))) {
        return upToMm;
      }
    }
    return 0;
  }

  private static List<String> notes(
      WorkingPoint point, WeldTask task, PreparationChoice preparation, OptionalDouble warmedToC) {
    List<String> notes = new ArrayList<>();
    double laidMm = laidLegMm(point, task);
    if (preparation.passes() == 1 && task.joint().isFillet() && laidMm > task.legToLayMm() + 0.25) {
      notes.add(
          "at the fastest travel a hand guides, the leg comes out at about "
              + Printed.quantity(laidMm, "mm"));
    }
    warmedToC.ifPresent(
        warmC ->
            notes.add(
                "the bar's joint is at about " + Math.round(warmC) + " C before the last pass"));
    if (gougesSecondSide(point, preparation)) {
      notes.add("the root of the second side is ground or gouged to sound metal first");
    }
    return notes;
  }

  /** Two sides meet without gouging where twice the penetration exceeds the root face by 1 mm. */
  private static boolean gougesSecondSide(WorkingPoint point, PreparationChoice preparation) {
    return preparation
        .groove()
        .filter(groove -> groove.preparation().isDouble())
        .map(groove -> 2 * FusionGate.penetrationMm(point, 0) < groove.rootFaceMm() + 1)
        .orElse(false);
  }

  private static double laidLegMm(WorkingPoint point, WeldTask task) {
    double energy = point.arcEnergyKJPerMm(point.travelForLegMmPerS(task.legToLayMm()));
    return LegEnergy.legMm(energy, ProcessLimits.energyPerLeg(point.process()));
  }
}
