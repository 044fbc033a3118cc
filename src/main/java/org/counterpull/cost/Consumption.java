package org.counterpull.cost;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.groove.WeldMetalMass;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.PassPlan;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.order.Operation;
import org.counterpull.order.WorkOrder;
import org.counterpull.plan.Plan;
import org.counterpull.power.Conversion;
import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.weldment.PartMass;
import org.counterpull.weldment.ShopMachine;
import org.counterpull.weldment.Weldment;

/** What the work uses up. Tacks count as part of the runs that take them up. */
public final class Consumption {
  /** Mass of the finished weldment. */
  public static final Formula MASS =
      new Formula(
          "weldment-mass", "parts and weld metal", "kg", "derived: stock masses and weld metal");

  private record Kind(String designation, double diameterMm, boolean electrodes)
      implements Comparable<Kind> {
    @Override
    public int compareTo(Kind other) {
      int byName = designation.compareTo(other.designation);
      return byName != 0 ? byName : Double.compare(diameterMm, other.diameterMm);
    }
  }

  private Consumption() {}

  /** What a work order uses up. */
  public static Plan.Consumables of(Weldment weldment, List<JointPlan> joints, WorkOrder order) {
    double weldMetalKg = order.runs().stream().mapToDouble(r -> Deposit.kg(weldment, r)).sum();
    double partsKg = weldment.parts().stream().mapToDouble(PartMass::kg).sum();
    return new Plan.Consumables(
        fillers(weldment, order.runs()),
        gas(order.runs()),
        energy(weldment, order),
        order.runs().stream().mapToDouble(RunPlan::arcTimeS).sum(),
        order.elapsedS(),
        order.waitS(),
        // Mass of the metal itself, not per length: the formula's unit is replaced.
        WeldMetalMass.FORMULA.in("kg").result(weldMetalKg),
        MASS.result(partsKg + weldMetalKg),
        CutLists.of(weldment, joints));
  }

  private static List<Plan.FillerUse> fillers(Weldment weldment, List<RunPlan> runs) {
    Map<Kind, List<RunPlan>> byKind = new TreeMap<>();
    for (RunPlan run : runs) {
      Kind kind = new Kind(run.filler().designation(), run.filler().diameterMm(), isElectrode(run));
      byKind.computeIfAbsent(kind, k -> new ArrayList<>()).add(run);
    }
    List<Plan.FillerUse> fillers = new ArrayList<>();
    byKind.forEach((kind, same) -> fillers.add(filler(weldment, kind, same)));
    return List.copyOf(fillers);
  }

  static boolean isElectrode(RunPlan run) {
    return run.process() == WeldingProcess.MMA;
  }

  private static Plan.FillerUse filler(Weldment weldment, Kind kind, List<RunPlan> runs) {
    RunPlan first = runs.get(0);
    double kg = runs.stream().mapToDouble(run -> Deposit.kg(weldment, run)).sum();
    double mm3 = runs.stream().mapToDouble(RunPlan::weldMetalMm3).sum();
    return new Plan.FillerUse(
        kind.designation(),
        kind.diameterMm(),
        kg,
        FillerBought.of(kg, Deposit.efficiency(weldment, first).ratio()),
        Deposit.pieces(first.process(), kind.diameterMm(), mm3));
  }

  private static Computed gas(List<RunPlan> runs) {
    double litres = 0;
    List<String> warnings = new ArrayList<>();
    for (RunPlan run : runs) {
      Computed one =
          GasUsed.of(
              GasFlow.lPerMin(run),
              run.arcTimeS(),
              run.passes().size(),
              GasFlow.beforeAndAfterS(run));
      litres += one.value();
      one.warnings().stream().filter(w -> !warnings.contains(w)).forEach(warnings::add);
    }
    return GasUsed.FORMULA.result(litres, warnings);
  }

  private static Computed energy(Weldment weldment, WorkOrder order) {
    double kWh = 0;
    double arcS = 0;
    for (RunPlan run : order.runs()) {
      double efficiency = efficiency(weldment, run);
      for (PassPlan pass : run.passes()) {
        kWh += EnergyUsed.arcKWh(pass.currentA(), pass.voltageV(), pass.arcTimeS(), efficiency);
        arcS += pass.arcTimeS();
      }
    }
    double onS =
        order.operations().stream()
            .filter(o -> o.operation().kind() == Operation.Kind.WELD)
            .mapToDouble(o -> o.endS() - o.startS())
            .sum();
    return EnergyUsed.FORMULA.result(kWh + EnergyUsed.idleKWh(Math.max(0, onS - arcS)));
  }

  private static double efficiency(Weldment weldment, RunPlan run) {
    return weldment.machines().stream()
        .map(ShopMachine::machine)
        .filter(machine -> machine.name().equals(run.machine()))
        .mapToDouble(machine -> machine.conversion().efficiency())
        .findFirst()
        .orElse(Conversion.CORRECTED.efficiency());
  }
}
