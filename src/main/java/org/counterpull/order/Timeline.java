package org.counterpull.order;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.counterpull.contact.Lay;
import org.counterpull.jointplan.PassPlan;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.weldment.Surroundings;
import org.counterpull.weldment.Weldment;
import org.counterpull.weldment.WrittenOrder;

/**
 * The clock at the bench: gives every step its begin and end, and puts in what only shows while the
 * work goes on, which is moving, turning over, heating again and waiting.
 */
final class Timeline {
  private final Surroundings surroundings;
  private final Map<String, WrittenOrder.Step> written = new HashMap<>();
  private final WaitModel waits;
  private final DutyCycles duties;
  private final OrderGraph graph;

  private final List<Timed> done = new ArrayList<>();
  private final List<Precedence> added = new ArrayList<>();
  private final List<RunPlan> runs = new ArrayList<>();
  private final List<Welded> history = new ArrayList<>();
  private final Map<String, DutyWindow> machines = new HashMap<>();
  private final Map<String, Double> jointWarmUntilS = new HashMap<>();

  private double nowS;
  private double writtenZeroS;
  private double lastArcS;
  private String place;
  private Lay lay = Lay.AS_DRAWN;
  private int moves;
  private int turns;

  Timeline(Weldment weldment, WaitModel waits, DutyCycles duties, OrderGraph graph, String bench) {
    this.surroundings = weldment.surroundings();
    this.waits = waits;
    this.duties = duties;
    this.graph = graph;
    this.place = bench;
    weldment.order().stream()
        .flatMap(order -> order.steps().stream())
        .forEach(step -> written.putIfAbsent(step.run(), step));
  }

  List<Timed> done() {
    return List.copyOf(done);
  }

  List<Precedence> added() {
    return List.copyOf(added);
  }

  List<RunPlan> runs() {
    return List.copyOf(runs);
  }

  int moves() {
    return moves;
  }

  int turns() {
    return turns;
  }

  RunPicker.Bench bench() {
    return new RunPicker.Bench(place, lay);
  }

  /** How long a run would have to wait for metal or machine, s. */
  double waitS(RunPlan run) {
    if (run.passes().isEmpty()) {
      return 0;
    }
    return Math.max(
        waits.secondsBefore(run, history, nowS), dutyWaitS(run, run.passes().get(0), nowS));
  }

  /** A step that is no run. */
  void doStep(Step step) {
    Operation operation = explained(step, step.operation().what(), List.of());
    switch (step.tag()) {
      case COOL_TO_HAND_WARM -> cool(step, operation, BenchTimes.value("hand-warm"));
      case COOL ->
          cool(step, operation, surroundings.ambientC() + BenchTimes.value("measuring difference"));
      case FIRE_WATCH ->
          put(operation, lastArcS, lastArcS + BenchTimes.seconds(StepTag.FIRE_WATCH));
      default -> take(operation, operation.activeS());
    }
  }

  private void cool(Step step, Operation operation, double tempC) {
    double limitC = Math.max(tempC, surroundings.ambientC() + 1);
    double seconds = waits.secondsUntilAllBelow(limitC, history, nowS);
    take(
        explained(
            step,
            operation.what() + ": " + WaitWords.time(seconds),
            List.of(WaitWords.cooling(limitC))),
        seconds);
  }

  /** A run with everything that it needs before and between its passes. */
  void weld(Step step, RunPlan run) {
    bring(step, run);
    runs.add(run);
    heatAgain(step, run);
    Piece piece = new Piece(step, run);
    nowS = waited(step, run, 1, nowS);
    piece.begin(nowS, 1);
    nowS += BenchTimes.seconds(StepTag.WELD);
    for (PassPlan pass : run.passes()) {
      if (pass.number() > 1) {
        nowS += RunTime.cleaningS(run);
        double readyS = nowS + passWaitS(run, pass, nowS);
        if (readyS > nowS) {
          piece.end(nowS);
          nowS = waited(step, run, pass.number(), nowS);
          piece.begin(nowS, pass.number());
        }
      }
      burn(run, pass, piece);
    }
    piece.end(nowS);
    lastArcS = nowS;
    jointWarmUntilS.put(run.line().joint(), nowS + BenchTimes.value("preheat before run"));
  }

  private void burn(RunPlan run, PassPlan pass, Piece piece) {
    double duty = duty(run, pass);
    DutyWindow window = window(run);
    int stops = DutyWindow.stops(pass.arcTimeS(), duty);
    double startS = nowS;
    double lengthS = RunTime.passS(run, pass) / (stops + 1);
    if (history.isEmpty()) {
      WrittenOrder.Step step = written.get(run.name());
      writtenZeroS = nowS - (step == null ? 0 : step.startS().orElse(0.0));
    }
    for (int i = 0; i <= stops; i++) {
      window.burn(nowS, nowS + lengthS, pass.arcTimeS() / (stops + 1), duty);
      nowS += lengthS + (i < stops ? DutyWindow.stopS(duty) : 0);
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
    history.add(new Welded(run, pass, startS, nowS));
  }

  /** Moves the work to the machine and turns it over where the run needs it. */
  private void bring(Step step, RunPlan run) {
    if (!run.place().equals(place)) {
      place = run.place();
      moves++;
      before(
          step,
          new Operation(
              "move:" + moves,
              Operation.Kind.MOVE,
              "Take the weldment to " + place,
              "",
              place,
              List.of(run.machine() + " stands there; the bench's own machine can't weld this."),
              List.of("Tacks carry the weldment's own weight: lift it by its parts."),
              BenchTimes.value("move"),
              Optional.empty()),
          "R31",
          "The machine that can weld this run stands at " + place + ".");
    }
    if (run.lay() != lay) {
      lay = run.lay();
      turns++;
      before(
          step,
          new Operation(
              "turn-over:" + turns,
              Operation.Kind.TURN_OVER,
              "Turn the weldment until it lies " + lay.words(),
              "",
              place,
              List.of("What would hang or climb is welded in an easy position."),
              List.of("Nobody under it while it is lifted; hands out of the pinch line."),
              BenchTimes.value("turn over"),
              Optional.empty()),
          "R31",
          "This run is welded "
              + run.position().meaning()
              + ", with the weldment "
              + lay.words()
              + ".");
    }
  }

  private void heatAgain(Step step, RunPlan run) {
    double needC = run.preheatC().value();
    boolean warm = jointWarmUntilS.getOrDefault(run.line().joint(), -1.0) >= nowS;
    if (needC <= surroundings.ambientC() || warm || waits.metalC(run, history, nowS) >= needC) {
      return;
    }
    before(
        step,
        new Operation(
            "preheat:" + run.name(),
            Operation.Kind.PREHEAT,
            String.format(Locale.ROOT, "Preheat for %s: %.0f C", run.name(), needC),
            run.name(),
            place,
            List.of("Measured 75 mm beside the seam, on the far side where it can be reached."),
            List.of(),
            BenchTimes.value("preheat before run"),
            Optional.of(run.name())),
        "R33",
        "Welded cold, this steel can harden and crack.");
  }

  private double duty(RunPlan run, PassPlan pass) {
    return duties.percentAt(run.machine(), pass.currentA());
  }

  private DutyWindow window(RunPlan run) {
    return machines.computeIfAbsent(run.machine(), name -> new DutyWindow());
  }

  private double dutyWaitS(RunPlan run, PassPlan pass, double fromS) {
    double duty = duty(run, pass);
    return window(run).waitS(fromS, RunTime.passS(run, pass), pass.arcTimeS(), duty);
  }

  private double passWaitS(RunPlan run, PassPlan pass, double fromS) {
    double seconds =
        Math.max(waits.secondsBefore(run, history, fromS), dutyWaitS(run, pass, fromS));
    return seconds < BenchTimes.value("shortest wait") ? 0 : seconds;
  }

  private double writtenWaitS(RunPlan run, double fromS) {
    WrittenOrder.Step step = written.get(run.name());
    if (step == null) {
      return 0;
    }
    if (history.isEmpty()) {
      return 0;
    }
    // The file's clock starts so that its first run begins when the file says.
    double untilS = step.startS().map(s -> s + writtenZeroS).orElse(0.0);
    double pausedS = step.pauseS().map(s -> lastArcS + s).orElse(0.0);
    return Math.max(0, Math.max(untilS, pausedS) - BenchTimes.seconds(StepTag.WELD) - fromS);
  }

  /** Puts in a wait before a pass where one is needed; gives the time after it. */
  private double waited(Step step, RunPlan run, int passNumber, double fromS) {
    if (run.passes().isEmpty()) {
      return fromS;
    }
    PassPlan pass = run.passes().get(passNumber - 1);
    double writtenS = passNumber == 1 ? writtenWaitS(run, fromS) : 0;
    double seconds = Math.max(writtenS, passWaitS(run, pass, fromS));
    if (seconds == 0) {
      return fromS;
    }
    double interpassS = waits.secondsBefore(run, history, fromS);
    double dutyS = dutyWaitS(run, pass, fromS);
    String rule =
        writtenS >= seconds
            ? WaitWords.WRITTEN
            : interpassS >= dutyS ? WaitWords.INTERPASS : WaitWords.DUTY;
    List<String> why =
        WaitWords.longestFirst(
            interpassS,
            WaitWords.interpass(run, waits.metalC(run, history, fromS)),
            dutyS,
            WaitWords.duty(run, duty(run, pass)),
            writtenS);
    String at = passNumber == 1 ? "" : ":pass-" + passNumber;
    Operation wait =
        new Operation(
            "wait:" + run.name() + at,
            Operation.Kind.WAIT,
            "Wait " + WaitWords.time(seconds) + " before " + run.name() + ": " + rule,
            run.name(),
            place,
            why,
            List.of(),
            0,
            Optional.of(run.name()));
    put(wait, fromS, fromS + seconds);
    String pieceId = passNumber == 1 ? step.id() : step.id() + at;
    added.add(new Precedence(wait.id(), pieceId, rule, why.get(0), true));
    return fromS + seconds;
  }

  private void before(Step step, Operation operation, String rule, String reason) {
    take(operation, operation.activeS());
    added.add(new Precedence(operation.id(), step.id(), rule, reason, true));
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
        place,
        why,
        plain.cautions(),
        plain.activeS(),
        plain.run());
  }

  private void take(Operation operation, double seconds) {
    put(operation, nowS, nowS + seconds);
    nowS += seconds;
  }

  private void put(Operation operation, double startS, double endS) {
    done.add(new Timed(done.size() + 1, operation, startS, endS));
  }

  /** One stretch of a run without a wait in it; a run with waits between its passes has several. */
  private final class Piece {
    private final Step step;
    private final RunPlan run;
    private final List<String> cautions = new ArrayList<>();
    private double startS;
    private int fromPass;

    Piece(Step step, RunPlan run) {
      this.step = step;
      this.run = run;
    }

    void begin(double timeS, int pass) {
      startS = timeS;
      fromPass = pass;
      cautions.clear();
    }

    void caution(String sentence) {
      cautions.add(sentence);
    }

    void end(double timeS) {
      Operation whole = explained(step, step.operation().what(), List.of());
      List<String> all = new ArrayList<>(whole.cautions());
      all.addAll(cautions);
      boolean goesOn = fromPass > 1;
      put(
          new Operation(
              goesOn ? whole.id() + ":pass-" + fromPass : whole.id(),
              whole.kind(),
              goesOn ? "Go on with " + run.name() + ", pass " + fromPass : whole.what(),
              whole.where(),
              whole.place(),
              whole.why(),
              all,
              timeS - startS,
              whole.run()),
          startS,
          timeS);
    }
  }
}
