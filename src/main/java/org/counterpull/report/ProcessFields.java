package org.counterpull.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.counterpull.feeding.StickElectrode;
import org.counterpull.feeding.StickRun;
import org.counterpull.feeding.TransferMode;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.PassPlan;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.quantity.Printed;

/** What a procedure specification says about one process. Common practice, no source. */
final class ProcessFields {
  private static final double ELECTRODE_MM = 350;
  private static final double STUB_MM = 50;
  private static final double ROUND_LEG_MM2 = 0.55;

  private final Measures measures;

  ProcessFields(Measures measures) {
    this.measures = measures;
  }

  List<PlanWords.Line> of(JointPlan joint) {
    RunPlan run = joint.runs().get(0);
    List<PlanWords.Line> lines = new ArrayList<>();
    lines.add(
        new PlanWords.Line(
            "process", run.process().iso4063() + " (" + run.process().word() + "), by hand"));
    switch (run.process()) {
      case MMA -> lines.add(new PlanWords.Line("run-out", runOut(run)));
      case MAG, MIG, FCAW, FCAW_S -> wire(run, lines);
      case TIG -> {
        lines.add(
            new PlanWords.Line("tungsten", tungsten(run) + " mm, code by ISO 6848: ________"));
        lines.add(new PlanWords.Line("gas nozzle", "10 to 12 mm"));
      }
    }
    return lines;
  }

  private void wire(RunPlan run, List<PlanWords.Line> lines) {
    lines.add(new PlanWords.Line("wires", "1"));
    lines.add(
        new PlanWords.Line(
            "transfer", run.transfer().map(TransferMode::word).orElse("as the wire gives it")));
    lines.add(
        new PlanWords.Line(
            "tip distance",
            said(
                switch (run.process()) {
                  case FCAW -> "15 to 25 mm";
                  case FCAW_S -> "10 to 16 mm";
                  case MAG, MIG, MMA, TIG ->
                      run.transfer().equals(Optional.of(TransferMode.SHORT_CIRCUIT))
                          ? "6 to 13 mm"
                          : "15 to 20 mm";
                })));
    boolean gas = !run.filler().gas().equals("none");
    lines.add(new PlanWords.Line("gas nozzle", gas ? said("12 to 16 mm") : "none"));
  }

  private String said(String metric) {
    return measures.sentences().of(metric);
  }

  /** Length of weld from one rod of 350 mm with a stub of 50 mm, at the leg of its first pass. */
  private String runOut(RunPlan run) {
    PassPlan pass = run.passes().get(0);
    double leg = Math.max(2, Math.sqrt(pass.area().value() / ROUND_LEG_MM2));
    double length =
        StickRun.of(new StickElectrode(run.filler().diameterMm(), ELECTRODE_MM, STUB_MM, 1), leg)
            .value();
    return "a rod of 350 mm goes " + measures.length(Math.round(length)).text() + " in one pass";
  }

  private static String tungsten(RunPlan run) {
    double amperes = run.passes().stream().mapToDouble(PassPlan::currentA).max().orElse(0);
    return amperes <= 60 ? "1.0" : amperes <= 115 ? "1.6" : amperes <= 165 ? "2.4" : "3.2";
  }

  static String weaving(RunPlan run) {
    double d = run.filler().diameterMm();
    return switch (run.process()) {
      case MMA -> "at most " + Printed.number(3 * d, 2) + " mm (three cores)";
      case MAG, MIG, FCAW, FCAW_S -> "stringer beads; vertical up at most 15 mm wide";
      case TIG -> "at most 10 mm wide";
    };
  }

  static String angles(RunPlan run) {
    String work =
        run.line().flareRadiusMm().isPresent()
            ? "into the gap, midway between the two surfaces"
            : run.line().dihedralDeg() > 150
                ? "square to the plates"
                : Math.round(run.line().dihedralDeg() / 2) + " deg to either part";
    return work
        + switch (run.process()) {
          case MAG, MIG ->
              run.transfer().equals(Optional.of(TransferMode.SPRAY))
                  ? ", pushed by 5 to 15 deg"
                  : ", pushed by 5 to 15 deg on thin, dragged on thick parts";
          case FCAW, FCAW_S, MMA -> ", dragged by 5 to 15 deg";
          case TIG -> ", pushed by 10 to 20 deg, rod at 15 to 20 deg";
        };
  }

  /** Gas with its group in ISO 14175. */
  static String gas(RunPlan run) {
    String gas = run.filler().gas();
    if (gas.equals("none")) {
      return "none";
    }
    boolean pure = gas.startsWith("Ar,");
    String group =
        pure ? "I1" : gas.startsWith("CO2") ? "C1" : gas.contains("other") ? "______" : mixed(gas);
    return gas + " (ISO 14175 " + group + ")";
  }

  /** From memory: M12 to 5 % CO2, M20 to 15 %, M21 to 25 %, M31 above. */
  private static String mixed(String gas) {
    double co2 = Double.parseDouble(gas.replaceAll(".*?([\\d.]+) % CO2.*", "$1"));
    return co2 <= 5 ? "M12" : co2 <= 15 ? "M20" : co2 <= 25 ? "M21" : "M31";
  }

  static String backingGas(RunPlan run) {
    return run.filler().designation().contains("308")
            || run.filler().designation().contains("316")
            || run.filler().designation().contains("309")
        ? "argon 5 to 8 l/min where the root is open to the back"
        : "none";
  }
}
