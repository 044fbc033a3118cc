package org.counterpull.order;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.counterpull.jointplan.PassPlan;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.weldment.Weldment;
import org.counterpull.weldment.WrittenOrder;

/** Everything that can make a pass wait: warm metal, a machine that rests, the file itself. */
final class RunWaits {
  private final WaitModel model;
  private final DutyCycles duties;
  private final Map<String, WrittenOrder.Step> written = new HashMap<>();
  private final Map<String, DutyWindow> machines = new HashMap<>();
  private final List<Welded> history = new ArrayList<>();
  private double writtenZeroS;
  private double lastArcS;

  RunWaits(Weldment weldment, WaitModel model, DutyCycles duties) {
    this.model = model;
    this.duties = duties;
    model.jobBegins();
    weldment.order().stream()
        .flatMap(order -> order.steps().stream())
        .forEach(step -> written.putIfAbsent(step.run(), step));
  }

  double lastArcS() {
    return lastArcS;
  }

  double metalC(RunPlan run, double nowS) {
    return model.metalC(run, history, nowS);
  }

  boolean knowsPreheat() {
    return model.knowsPreheat();
  }

  double coolestC(RunPlan run, double nowS) {
    return model.coolestC(run, history, nowS);
  }

  double secondsUntilAllBelow(double tempC, double nowS) {
    return model.secondsUntilAllBelow(tempC, history, nowS);
  }

  /** Tells the model of a step that is no run. */
  void done(Operation operation, double startS, double endS) {
    model.done(operation, startS, endS);
  }

  double dutyPercent(RunPlan run, PassPlan pass) {
    return duties.percentAt(run.machine(), pass.currentA());
  }

  private DutyWindow window(RunPlan run) {
    return machines.computeIfAbsent(run.machine(), name -> new DutyWindow());
  }

  private double dutyS(RunPlan run, PassPlan pass, double nowS) {
    double duty = dutyPercent(run, pass);
    return window(run).waitS(nowS, RunTime.passS(run, pass), pass.arcTimeS(), duty);
  }

  /** Wait of metal or machine before the first pass of a run, s. */
  double beforeRunS(RunPlan run, double nowS) {
    return run.passes().isEmpty()
        ? 0
        : Math.max(model.secondsBefore(run, history, nowS), dutyS(run, run.passes().get(0), nowS));
  }

  /** Wait before any pass of a run, s. */
  double beforePassS(RunPlan run, PassPlan pass, double nowS) {
    double metalOrMachineS =
        Math.max(model.secondsBefore(run, history, nowS), dutyS(run, pass, nowS));
    return Math.max(metalOrMachineS, writtenS(run, pass, nowS));
  }

  private double writtenS(RunPlan run, PassPlan pass, double arcS) {
    WrittenOrder.Step step = written.get(run.name());
    if (step == null || history.isEmpty() || pass.number() > 1) {
      return 0;
    }
    double untilS = step.startS().map(s -> s + writtenZeroS).orElse(0.0);
    double pausedS = step.pauseS().map(s -> lastArcS + s).orElse(0.0);
    return Math.max(0, Math.max(untilS, pausedS) - arcS);
  }

  /**
   * A wait as a step.
   *
   * @param operation what it is for, what ends it
   * @param rule which of the waits lasts longest
   */
  record Wait(Operation operation, String rule) {}

  /** The wait before a pass. */
  Wait wait(RunPlan run, PassPlan pass, double nowS, String place) {
    double metalS = model.secondsBefore(run, history, nowS);
    double machineS = dutyS(run, pass, nowS);
    double fileS = writtenS(run, pass, nowS);
    double seconds = Math.max(fileS, Math.max(metalS, machineS));
    Optional<String> spared = model.spares(run, history, nowS);
    List<String> why =
        WaitWords.longestFirst(
            metalS,
            spared.map(WaitWords::feature).orElse(WaitWords.interpass(run, metalC(run, nowS))),
            machineS,
            WaitWords.duty(run, dutyPercent(run, pass)),
            fileS);
    String rule = WaitWords.rule(metalS, machineS, fileS, spared.isPresent());
    return new Wait(
        new Operation(
            "wait:" + run.name() + Piece.suffix(pass.number()),
            Operation.Kind.WAIT,
            "Wait " + WaitWords.time(seconds) + " before " + run.name() + ": " + rule,
            run.name(),
            place,
            why,
            List.of(),
            0,
            Optional.of(run.name())),
        rule);
  }

  /** Notes the beginning of a run's first arc; the file's clock starts with its first run. */
  void arcBegins(RunPlan run, double nowS) {
    if (history.isEmpty()) {
      WrittenOrder.Step step = written.get(run.name());
      writtenZeroS = nowS - (step == null ? 0 : step.startS().orElse(0.0));
    }
  }

  /** Notes a stretch of arc. */
  void burnt(RunPlan run, PassPlan pass, double startS, double endS, double arcS) {
    window(run).burn(startS, endS, arcS, dutyPercent(run, pass));
    lastArcS = endS;
  }

  /** Notes a finished pass. */
  void laid(RunPlan run, PassPlan pass, double startS, double endS) {
    Welded welded = new Welded(run, pass, startS, endS);
    history.add(welded);
    model.laid(welded);
  }
}
