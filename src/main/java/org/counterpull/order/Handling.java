package org.counterpull.order;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.counterpull.contact.Lay;
import org.counterpull.jointplan.RunPlan;

/** Where and how the work lies, and what it takes to bring a run under the torch. */
final class Handling {
  private static final String BATCHING = "R31";

  private final WorkLog log;
  private final RunWaits waits;
  private final double ambientC;
  private final Map<String, Double> jointWarmUntilS = new HashMap<>();
  private String place;
  private Lay lay = Lay.AS_DRAWN;
  private int moves;
  private int turns;

  Handling(WorkLog log, RunWaits waits, double ambientC, String bench) {
    this.log = log;
    this.waits = waits;
    this.ambientC = ambientC;
    this.place = bench;
  }

  String place() {
    return place;
  }

  RunPicker.Bench bench() {
    return new RunPicker.Bench(place, lay);
  }

  int moves() {
    return moves;
  }

  int turns() {
    return turns;
  }

  /** Moves the work to the machine, turns it and heats it where the run needs it. */
  void bring(String stepId, RunPlan run) {
    if (!run.place().equals(place)) {
      place = run.place();
      moves++;
      Operation move =
          operation(
              "move:" + moves,
              Operation.Kind.MOVE,
              "Take the weldment to " + place,
              run.machine() + " stands there.",
              "While it is only tacked, lift it by its parts and set it down softly.",
              BenchTimes.value("move"));
      String reason = "The machine that welds this run stands at " + place + ".";
      log.takeBefore(stepId, move, move.activeS(), BATCHING, reason);
    }
    if (run.lay() != lay) {
      lay = run.lay();
      turns++;
      Operation turn =
          operation(
              "turn-over:" + turns,
              Operation.Kind.TURN_OVER,
              "Turn the weldment until it lies " + lay.words(),
              "What would hang or climb is welded in an easy position.",
              "Nobody under it while it is lifted; hands out of the pinch line.",
              BenchTimes.value("turn over"));
      String reason =
          "This run is welded "
              + run.position().meaning()
              + ", with the weldment "
              + lay.words()
              + ".";
      log.takeBefore(stepId, turn, turn.activeS(), BATCHING, reason);
    }
    heatAgain(stepId, run);
  }

  private void heatAgain(String stepId, RunPlan run) {
    double needC = run.preheatC().value();
    boolean warm =
        !waits.knowsPreheat()
            && jointWarmUntilS.getOrDefault(run.line().joint(), -1.0) >= log.nowS();
    if (needC <= ambientC || warm || waits.coolestC(run, log.nowS()) >= needC) {
      return;
    }
    Operation heat =
        new Operation(
            "preheat:" + run.name(),
            Operation.Kind.PREHEAT,
            String.format(Locale.ROOT, "Preheat for %s: %.0f C", run.name(), needC),
            run.name(),
            place,
            List.of("Measured 75 mm beside the seam, on the far side where it can be reached."),
            List.of(),
            BenchTimes.value("preheat before run"),
            Optional.of(run.name()));
    String reason = "Welded cold, this steel can harden and crack.";
    double fromS = log.nowS();
    log.takeBefore(stepId, heat, heat.activeS(), "R33", reason);
    waits.done(heat, fromS, log.nowS());
  }

  /** Notes that a joint is warm from a run just now. */
  void warmed(RunPlan run) {
    double untilS = log.nowS() + BenchTimes.value("preheat before run");
    jointWarmUntilS.put(run.line().joint(), untilS);
  }

  private Operation operation(
      String id, Operation.Kind kind, String what, String why, String caution, double seconds) {
    return new Operation(
        id, kind, what, "", place, List.of(why), List.of(caution), seconds, Optional.empty());
  }
}
