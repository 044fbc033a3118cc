package org.counterpull.order;

import org.counterpull.arc.WeldingProcess;
import org.counterpull.jointplan.PassPlan;
import org.counterpull.jointplan.RunPlan;

/** How long a run keeps the welder busy, waits left out. */
final class RunTime {
  private RunTime() {}

  /** Getting ready, all passes, and cleaning between them, s. */
  static double activeS(RunPlan run) {
    double seconds = BenchTimes.seconds(StepTag.WELD);
    for (PassPlan pass : run.passes()) {
      seconds += passS(run, pass);
    }
    return seconds + (run.passes().size() - 1) * cleaningS(run);
  }

  /** One pass with its stops to change electrodes and to look, s. */
  static double passS(RunPlan run, PassPlan pass) {
    return pass.arcTimeS() / BenchTimes.value("operating factor " + family(run.process()));
  }

  /** Cleaning before a further pass, s. */
  static double cleaningS(RunPlan run) {
    boolean slag = run.process() == WeldingProcess.MMA || run.process() == WeldingProcess.FCAW;
    boolean muchSlag = slag || run.process() == WeldingProcess.FCAW_S;
    return BenchTimes.value("clean between passes " + (muchSlag ? "stick" : "wire"));
  }

  private static String family(WeldingProcess process) {
    return switch (process) {
      case MMA -> "stick";
      case MAG, MIG, FCAW, FCAW_S -> "wire";
      case TIG -> "tig";
    };
  }
}
