package org.counterpull.order;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.counterpull.jointplan.PassPlan;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.weldment.Weldment;

/**
 * Gives every step its begin and end, and puts in what only shows while the work goes on, which is
 * moving, turning over, heating again and waiting.
 */
final class Timeline {
  private final double ambientC;
  private final OrderGraph graph;
  private final WorkLog log = new WorkLog();
  private final RunWaits waits;
  private final Handling handling;
  private final List<RunPlan> runs = new ArrayList<>();

  Timeline(Weldment weldment, WaitModel model, DutyCycles duties, OrderGraph graph) {
    this.ambientC = weldment.surroundings().ambientC();
    this.graph = graph;
    this.waits = new RunWaits(weldment, model, duties);
    this.handling = new Handling(log, waits, ambientC, Places.bench(weldment));
  }

  WorkLog log() {
    return log;
  }

  Handling handling() {
    return handling;
  }

  List<RunPlan> runs() {
    return List.copyOf(runs);
  }

  /** How long a run would have to wait for metal or machine, s. */
  double waitS(RunPlan run) {
    return waits.beforeRunS(run, log.nowS() + BenchTimes.seconds(StepTag.WELD));
  }

  /** A step that is no run. */
  void doStep(Step step) {
    Operation operation = explained(step, step.operation().what(), List.of());
    switch (step.tag()) {
      case COOL_TO_HAND_WARM -> cool(step, BenchTimes.value("hand-warm"));
      case COOL -> cool(step, ambientC + BenchTimes.value("measuring difference"));
      case FIRE_WATCH -> {
        double fromS = waits.lastArcS();
        log.put(operation, fromS, fromS + BenchTimes.seconds(StepTag.FIRE_WATCH));
      }
      default -> {
        double fromS = log.nowS();
        log.take(operation, operation.activeS());
        if (warms(operation)) {
          waits.done(operation, fromS, log.nowS());
        }
      }
    }
  }

  private static boolean warms(Operation operation) {
    return operation.kind() == Operation.Kind.TACK || operation.kind() == Operation.Kind.PREHEAT;
  }

  private void cool(Step step, double tempC) {
    double limitC = Math.max(tempC, ambientC + 1);
    double seconds = waits.secondsUntilAllBelow(limitC, log.nowS());
    String what = step.operation().what() + ": " + WaitWords.time(seconds);
    log.take(explained(step, what, List.of(WaitWords.cooling(limitC))), seconds);
  }

  /** A run with everything that it needs before and between its passes. */
  void weld(Step step, RunPlan run) {
    handling.bring(step.id(), run);
    runs.add(run);
    Piece piece = new Piece(explained(step, step.operation().what(), List.of()));
    piece.begin(log.nowS(), 1);
    for (PassPlan pass : run.passes()) {
      boolean first = pass.number() == 1;
      if (!first) {
        log.pass(RunTime.cleaningS(run));
      }
      double readyS = first ? BenchTimes.seconds(StepTag.WELD) : 0;
      double waitS = waits.beforePassS(run, pass, log.nowS() + readyS);
      boolean worthTelling = waitS >= BenchTimes.value("shortest wait");
      if (!worthTelling) {
        log.pass(waitS);
      }
      if (worthTelling && !first) {
        piece.end(log);
      }
      if (worthTelling) {
        waitFor(step, run, pass, waitS, readyS);
      }
      if (worthTelling || first) {
        piece.begin(log.nowS(), pass.number());
      }
      log.pass(readyS);
      burn(run, pass, piece);
    }
    piece.end(log);
    handling.warmed(run);
  }

  /** The metal cools and the machine rests while the welder gets ready, too. */
  private void waitFor(Step step, RunPlan run, PassPlan pass, double seconds, double readyS) {
    RunWaits.Wait wait = waits.wait(run, pass, log.nowS() + readyS, handling.place());
    String laterId = step.id() + Piece.suffix(pass.number());
    String reason = wait.operation().why().get(0);
    log.takeBefore(laterId, wait.operation(), seconds, wait.rule(), reason);
  }

  private void burn(RunPlan run, PassPlan pass, Piece piece) {
    double duty = waits.dutyPercent(run, pass);
    int stops = DutyWindow.stops(pass.arcTimeS(), duty);
    double startS = log.nowS();
    double stretchS = RunTime.passS(run, pass) / (stops + 1);
    waits.arcBegins(run, startS);
    for (int i = 0; i <= stops; i++) {
      double fromS = log.nowS();
      waits.burnt(run, pass, fromS, fromS + stretchS, pass.arcTimeS() / (stops + 1));
      log.pass(stretchS + (i < stops ? DutyWindow.stopS(duty) : 0));
    }
    if (stops > 0) {
      piece.caution(
          String.format(
              Locale.ROOT,
              "Pass %d is longer than %s may burn: stop %d x and let it rest %s each time.",
              pass.number(),
              run.machine(),
              stops,
              WaitWords.time(DutyWindow.stopS(duty))));
    }
    waits.laid(run, pass, startS, log.nowS());
  }

  private Operation explained(Step step, String what, List<String> more) {
    Operation plain = step.operation();
    List<String> why = new ArrayList<>(more);
    why.addAll(plain.why());
    why.addAll(graph.reasons(step.id()));
    return new Operation(
        plain.id(),
        plain.kind(),
        what,
        plain.where(),
        handling.place(),
        why,
        plain.cautions(),
        plain.activeS(),
        plain.run());
  }
}
