package org.counterpull.cost;

import org.counterpull.arc.WeldingProcess;
import org.counterpull.feeding.DepositionEfficiency;
import org.counterpull.feeding.ShieldingGas;
import org.counterpull.feeding.StickElectrode;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.machine.Machine;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.PartMetal;
import org.counterpull.weldment.ShopMachine;
import org.counterpull.weldment.Weldment;

/** Weld metal of runs, and what has to be bought for it. */
final class Deposit {
  private static final double KG_PER_MM3_BY_KG_PER_M3 = 1e-9;
  private static final double ELECTRODE_MM = 350;
  private static final double STUB_MM = 50;
  private static final double ROD_MM = 1000;

  private Deposit() {}

  /** Weld metal of a run, kg; its density is that of the joint's second part. */
  static double kg(Weldment weldment, RunPlan run) {
    Part part = weldment.part(weldment.joint(run.line().joint()).second());
    return run.weldMetalMm3() * PartMetal.densityKgPerM3(part) * KG_PER_MM3_BY_KG_PER_M3;
  }

  static DepositionEfficiency efficiency(Weldment weldment, RunPlan run) {
    return switch (run.process()) {
      case MMA -> DepositionEfficiency.STICK_350_MM;
      case FCAW -> DepositionEfficiency.FCAW_GAS;
      case FCAW_S -> DepositionEfficiency.FCAW_SELF_SHIELDED;
      case TIG -> DepositionEfficiency.GTAW;
      case MAG, MIG -> DepositionEfficiency.ofSolidWire(gas(weldment, run));
    };
  }

  private static ShieldingGas gas(Weldment weldment, RunPlan run) {
    return weldment.machines().stream()
        .map(ShopMachine::machine)
        .filter(machine -> machine.name().equals(run.machine()))
        .map(Machine::gas)
        .findFirst()
        .orElse(ShieldingGas.ARGON_18_CO2);
  }

  /** Electrodes of 350 mm or rods of 1000 mm, rounded up; 0 for wire. */
  static int pieces(WeldingProcess process, double diameterMm, double weldMetalMm3) {
    double lengthMm =
        switch (process) {
          case MMA -> ELECTRODE_MM;
          case TIG -> ROD_MM;
          case MAG, MIG, FCAW, FCAW_S -> 0;
        };
    if (lengthMm == 0 || weldMetalMm3 == 0) {
      return 0;
    }
    double eachMm3 = new StickElectrode(diameterMm, lengthMm, STUB_MM, 1).metalMm3();
    return (int) Math.ceil(weldMetalMm3 / eachMm3 - 1e-9);
  }
}
