package org.counterpull.heatjob;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.counterpull.contact.Contact;
import org.counterpull.heat.block.Block;
import org.counterpull.heat.block.Vec3;
import org.counterpull.heat.solve.Probe;
import org.counterpull.heat.solve.Progress;
import org.counterpull.heat.solve.Simulation;
import org.counterpull.heat.source.MovingSource;
import org.counterpull.heatjob.Schedule.Arc;
import org.counterpull.heatjob.WeldedRun.Stretch;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.order.Operation;
import org.counterpull.order.ReadableWait;
import org.counterpull.order.WaitModel;
import org.counterpull.order.Welded;
import org.counterpull.plan.PlanHeat;
import org.counterpull.plan.PlanHeat.PassStart;
import org.counterpull.weldment.Weldment;

/**
 * A job that is welded in the full model while its steps are gone through one after the other: a
 * wait ends when the metal along the run is at its limit there, so each wait is the least one and
 * needs no second look.
 *
 * <p>Questions come in the order of time. Features lie in the future of a decision; the superposed
 * model looks ahead for them, put right by what the full model knows at that moment.
 */
public final class TrialWelding implements WaitModel {
  private static final double LONGEST_WAIT_S = 24 * 3600;
  private static final double LOOK_S = 2;
  private static final double LOOK_SHARE = 0.02;
  private static final int SAMPLES = 9;
  private static final double HOLD_S = 10;
  private static final double LEAST_HOLD_S = 0.01;

  /** A feature that comes this near to its limit was waited for just long enough. */
  private static final double NEAR_K = 1.5;

  private final Weldment weldment;
  private final Resolution resolution;
  private final SuperposedWaits superposed;
  private final Map<String, WeldedRun> runs = new LinkedHashMap<>();
  private final Map<String, RunPlan> plans = new LinkedHashMap<>();
  private final Layout layout;
  private final Simulation simulation;
  private final Map<String, List<Probe>> lines = new LinkedHashMap<>();
  private final List<Guarded> guarded;
  private final List<Probe> features = new ArrayList<>();
  private final PeakFields peaks;
  private final Set<String> waitedFor = new TreeSet<>();
  private final List<Welded> laid = new ArrayList<>();
  private final List<PassStart> starts = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();
  private Optional<Double> zeroS = Optional.empty();

  /** The run whose metal is held at its preheat until its arc starts. */
  private Optional<WeldedRun> held = Optional.empty();

  private Asked asked = new Asked("", -1, -1, 0, 0, Optional.empty());

  /** The last question and its answers. */
  private record Asked(
      String run,
      double nowS,
      double seenS,
      double metalS,
      double superposedS,
      Optional<String> spared) {}

  /**
   * A job that is about to begin.
   *
   * @param superposed looks ahead for features, and is compared with
   * @param progress told of simulated time
   */
  public TrialWelding(
      Weldment weldment,
      List<Contact> contacts,
      List<JointPlan> joints,
      Resolution resolution,
      SuperposedWaits superposed,
      Progress progress) {
    this.weldment = weldment;
    this.resolution = resolution;
    this.superposed = superposed;
    superposed.jobBegins();
    RunHeats heats = new RunHeats(weldment, contacts, joints);
    for (JointPlan joint : joints) {
      for (RunPlan plan : joint.runs()) {
        plans.put(plan.name(), plan);
        runs.put(plan.name(), heats.of(plan));
      }
    }
    List<WeldedRun> all = List.copyOf(runs.values());
    layout = Layout.of(weldment, all, resolution);
    double ambientC = weldment.surroundings().ambientC();
    simulation = new Simulation(layout.model(), resolution.fineness(), ambientC);
    simulation.watch(progress);
    for (WeldedRun run : all) {
      List<Probe> probes = new ArrayList<>();
      for (RunLine.Point point : RunLine.of(layout, run, SAMPLES).points()) {
        probes.add(simulation.probe(run.name(), point.block(), point.at()));
      }
      lines.put(run.name(), probes);
    }
    guarded = Guarded.of(weldment, all);
    for (Guarded feature : guarded) {
      Block block = layout.nearest(feature.place().part(), feature.place().at());
      Vec3 at = feature.place().at();
      features.add(simulation.probe(feature.place().name(), block, at));
    }
    peaks = new PeakFields(layout, simulation);
  }

  /** Time in the simulation, which begins with the first heat of the job. */
  private double inModelS(double jobS) {
    return jobS - zeroS.orElse(jobS);
  }

  private double inJobS(double modelS) {
    return modelS + zeroS.orElse(0.0);
  }

  /** The flame goes on along a run that is made ready. */
  private void advanceTo(double jobS) {
    double endS = inModelS(jobS);
    while (held.isPresent() && endS - simulation.timeS() > LEAST_HOLD_S) {
      WeldedRun run = held.get();
      double seconds = Math.min(HOLD_S, endS - simulation.timeS());
      double coolestC = coolestC(run.name(), nowNow());
      double preheatC = run.preheatC().orElseThrow();
      Flame.holding(layout, run, preheatC, coolestC, simulation, seconds)
          .forEach(simulation::strike);
      simulation.advanceTo(simulation.timeS() + seconds);
    }
    simulation.advanceTo(endS);
  }

  private double hottestC(String run, double jobS) {
    double at = inModelS(jobS);
    double hottest = -Double.MAX_VALUE;
    for (Probe probe : lines.get(run)) {
      hottest = Math.max(hottest, probe.atC(at));
    }
    return hottest;
  }

  private double coolestC(String run, double jobS) {
    double at = inModelS(jobS);
    return lines.get(run).stream().mapToDouble(p -> p.atC(at)).min().orElseThrow();
  }

  /** Strikes what was welded since the last question. */
  private void welded(List<Welded> history) {
    for (Welded welded : history.subList(starts.size(), history.size())) {
      begin(welded.startS());
      advanceTo(welded.startS());
      WeldedRun run = runs.get(welded.run().name());
      held = Optional.empty();
      note(welded, run);
      peaks.begin(run.name());
      int pass = welded.pass().number();
      if (pass <= run.passes().size()) {
        double startS = inModelS(welded.startS());
        strike(new Arc(run, pass, run.passes().get(pass - 1), run.stretches(), startS));
      }
    }
  }

  private void begin(double jobS) {
    if (zeroS.isEmpty()) {
      zeroS = Optional.of(jobS);
    }
  }

  private void note(Welded welded, WeldedRun run) {
    boolean first = welded.pass().number() == 1;
    boolean known = asked.run().equals(run.name()) && asked.nowS() <= welded.startS();
    starts.add(
        new PassStart(
            run.name(),
            welded.pass().number(),
            welded.startS(),
            hottestC(run.name(), welded.startS()),
            coolestC(run.name(), welded.startS()),
            first ? run.preheatC() : Optional.empty(),
            welded.run().interpassMaxC(),
            known ? asked.metalS() : 0,
            known ? asked.superposedS() : 0));
  }

  private void strike(Arc arc) {
    ArcInMetal.weldMetal(layout, arc).forEach(simulation::lay);
    ArcInMetal.sources(arc).forEach(simulation::strike);
  }

  @Override
  public boolean knowsPreheat() {
    return true;
  }

  @Override
  public double metalC(RunPlan next, List<Welded> history, double nowS) {
    welded(history);
    advanceTo(nowS);
    return hottestC(next.name(), nowS);
  }

  @Override
  public double coolestC(RunPlan next, List<Welded> history, double nowS) {
    welded(history);
    advanceTo(nowS);
    held = Optional.of(runs.get(next.name())).filter(run -> zeroS.isPresent() && isHeld(run));
    return coolestC(next.name(), nowS);
  }

  @Override
  public double secondsBefore(RunPlan next, List<Welded> history, double nowS) {
    welded(history);
    if (!(asked.run().equals(next.name()) && asked.nowS() == nowS)) {
      ask(next, history, nowS);
    }
    // The model has gone on to the end of the stretch in which it found the moment.
    return ReadableWait.of(Math.max(asked.metalS(), asked.seenS() - nowS));
  }

  private void ask(RunPlan next, List<Welded> history, double nowS) {
    advanceTo(nowS);
    double linearS = superposed.metalS(next, history, nowS);
    linearS += superposed.featuresS(next, history, nowS + linearS, f -> 0);
    double metalS = cooledS(() -> hottestC(next.name(), nowNow()), next.interpassMaxC(), nowS);
    double thenS = nowS + metalS;
    double featureS = superposed.featuresS(next, history, thenS, known(history, thenS));
    Optional<String> spared = featureS > 0 ? superposed.spared() : Optional.empty();
    spared.ifPresent(words -> waitedFor.add(words.substring(0, words.indexOf(" over its limit"))));
    asked = new Asked(next.name(), nowS, nowNow(), metalS + featureS, linearS, spared);
  }

  /** What this model knows better than the superposed one. */
  private SuperposedWaits.Bias known(List<Welded> history, double timeS) {
    return new SuperposedWaits.Bias() {
      @Override
      public double kelvin(int feature) {
        return features.get(feature).nowC() - superposed.featureC(feature, history, timeS);
      }

      @Override
      public double keptOffK(int feature) {
        return superposed.keptOffK(feature);
      }
    };
  }

  private double nowNow() {
    return inJobS(simulation.timeS());
  }

  /** Goes on until something has cooled; the moment is found on the last stretch of its curve. */
  private double cooledS(java.util.function.DoubleSupplier tempC, double limitC, double nowS) {
    double before = tempC.getAsDouble();
    double waitedS = 0;
    while (before > limitC && waitedS < LONGEST_WAIT_S && zeroS.isPresent()) {
      double step = Math.max(LOOK_S, LOOK_SHARE * waitedS);
      advanceTo(nowS + waitedS + step);
      double after = tempC.getAsDouble();
      if (after <= limitC) {
        return waitedS + step * (before - limitC) / (before - after);
      }
      waitedS += step;
      before = after;
    }
    return waitedS;
  }

  @Override
  public Optional<String> spares(RunPlan next, List<Welded> history, double nowS) {
    secondsBefore(next, history, nowS);
    return asked.spared();
  }

  @Override
  public double secondsUntilAllBelow(double tempC, List<Welded> history, double nowS) {
    welded(history);
    advanceTo(nowS);
    peaks.end();
    double seconds = cooledS(simulation::hottestC, tempC, nowS);
    return ReadableWait.of(Math.max(seconds, nowNow() - nowS));
  }

  @Override
  public void laid(Welded welded) {
    superposed.laid(welded);
    laid.add(welded);
  }

  @Override
  public void done(Operation operation, double startS, double endS) {
    superposed.done(operation, startS, endS);
    // A run may come before another joint's tacks, when the part of that joint hides it.
    welded(laid);
    begin(startS);
    advanceTo(startS);
    Optional<WeldedRun> ready = held;
    held = Optional.empty();
    if (operation.kind() == Operation.Kind.PREHEAT) {
      preheated(operation, endS - startS);
      advanceTo(endS);
      held = ready.filter(run -> operation.run().isPresent());
    } else {
      tacked(operation, startS, endS);
    }
  }

  private boolean isHeld(WeldedRun run) {
    return run.preheatC().filter(c -> c > weldment.surroundings().ambientC()).isPresent();
  }

  private void preheated(Operation operation, double seconds) {
    for (RunPlan plan : plans.values()) {
      WeldedRun run = runs.get(plan.name());
      if (Flame.isOn(operation, plan) && run.preheatC().isPresent()) {
        double preheatC = run.preheatC().get();
        Flame.on(layout, run, preheatC, simulation, seconds).forEach(simulation::strike);
        // One flame for a joint's tacks: its runs lie within each other's reach.
        return;
      }
    }
  }

  /** All tacks of the step burn through the whole of it, each with its own heat. */
  private void tacked(Operation operation, double startS, double endS) {
    for (RunPlan plan : plans.values()) {
      WeldedRun run = runs.get(plan.name());
      if (!plan.line().joint().equals(operation.where()) || run.passes().isEmpty()) {
        continue;
      }
      for (Stretch stretch : PlannedSchedule.tacks(plan, run)) {
        WeldedRun.Pass pass = run.passes().get(0);
        Arc arc = new Arc(run, 0, pass, List.of(stretch), inModelS(startS));
        ArcInMetal.weldMetal(layout, arc).forEach(simulation::lay);
        for (MovingSource source : ArcInMetal.sources(arc)) {
          double power = source.energyJ() / (endS - startS);
          double from = inModelS(startS);
          simulation.strike(
              new MovingSource(
                  source.name(), power, from, inModelS(endS), source.path(), source.shape()));
        }
      }
    }
  }

  /**
   * What came of it.
   *
   * @param endS end of the job
   */
  public PlanHeat heat(double endS) {
    welded(laid);
    advanceTo(endS);
    peaks.end();
    return new PlanHeats(weldment, superposed)
        .of(
            resolution,
            simulation,
            starts,
            new PlanHeats.Traces(guarded, features, lines, zeroS.orElse(0.0)),
            notes);
  }

  /** Whether every feature that waiting can save stayed below its limit. */
  public boolean sparesFeatures() {
    return excessesK().values().stream().allMatch(excess -> excess <= 0);
  }

  /**
   * Tells the superposed model how far features that were waited for, or got too warm, were off
   * their limits, for another trial.
   *
   * @return whether another trial can do better
   */
  public boolean learn() {
    boolean better = false;
    for (Map.Entry<Integer, Double> entry : excessesK().entrySet()) {
      double excess = entry.getValue();
      boolean waited = waitedFor.contains(guarded.get(entry.getKey()).place().name());
      if (excess > 0 || waited && excess < -NEAR_K) {
        superposed.keepOff(entry.getKey(), excess + NEAR_K / 3);
        better = true;
      }
    }
    return better;
  }

  private Map<Integer, Double> excessesK() {
    Map<Integer, Double> excesses = new LinkedHashMap<>();
    for (int f = 0; f < guarded.size(); f++) {
      if (guarded.get(f).waitedFor() && superposed.canBeSaved(f)) {
        double limit = guarded.get(f).place().limitC().orElseThrow();
        excesses.put(f, features.get(f).peakC() - limit);
      }
    }
    return excesses;
  }

  /** Peak temperatures around each run, in the order of welding. */
  public List<PeakField> peaks() {
    return peaks.fields();
  }
}
