package org.counterpull.heatjob;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.counterpull.contact.Contact;
import org.counterpull.heat.block.Block;
import org.counterpull.heat.block.Vec3;
import org.counterpull.heat.solve.Progress;
import org.counterpull.heat.solve.Simulation;
import org.counterpull.heat.source.MovingSource;
import org.counterpull.heatjob.HeatAnswer.Start;
import org.counterpull.heatjob.HeatAnswer.Trace;
import org.counterpull.heatjob.Schedule.Arc;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.plan.Plan;
import org.counterpull.weldment.Weldment;

/** The heat of one job, ready to be worked out. */
public final class HeatJob {
  private static final int SAMPLES = 9;
  private static final double LOOK_S = 60;

  private final Weldment weldment;
  private final String order;
  private final Schedule schedule;
  private final Resolution resolution;
  private final Layout layout;

  private HeatJob(Weldment weldment, String order, Schedule schedule, Resolution resolution) {
    this.weldment = weldment;
    this.order = order;
    this.schedule = schedule;
    this.resolution = resolution;
    this.layout = Layout.of(weldment, schedule.runs(), resolution);
  }

  /** The job in the order and at the times of its plan. */
  public static HeatJob planned(Plan plan, List<Contact> contacts, Resolution resolution) {
    RunHeats heats = new RunHeats(plan.weldment(), contacts, plan.joints());
    return new HeatJob(plan.weldment(), "plan", PlannedSchedule.of(plan, heats), resolution);
  }

  /**
   * The job as its file writes it.
   *
   * @param joints plans of the joints, for runs of which the file does not give the heat; may be
   *     empty
   */
  public static HeatJob written(
      Weldment weldment, List<Contact> contacts, List<JointPlan> joints, Resolution resolution) {
    RunHeats heats = new RunHeats(weldment, contacts, joints);
    return new HeatJob(weldment, "written", WrittenSchedule.of(weldment, heats), resolution);
  }

  /** Whether any arc burns. */
  public boolean anyArc() {
    return !schedule.arcs().isEmpty();
  }

  /** Runs that are so far from the metal of their parts that the arc would warm nothing. */
  public List<String> besideTheMetal() {
    return schedule.runs().stream()
        .filter(run -> !layout.meets(run))
        .map(WeldedRun::name)
        .distinct()
        .toList();
  }

  /** Time at which it ends, where that is known beforehand. */
  public Optional<Double> endS() {
    return schedule.endS();
  }

  /**
   * Works it out.
   *
   * @param untilS how long; empty for the whole job, or until all is hand-warm without a plan
   * @param progress told how far it is
   */
  public HeatAnswer answer(Optional<Double> untilS, Progress progress) {
    double ambientC = weldment.surroundings().ambientC();
    Simulation simulation = new Simulation(layout.model(), resolution.fineness(), ambientC);
    simulation.watch(progress);
    Probes probes = new Probes(weldment, layout, schedule, simulation);
    for (Arc arc : schedule.arcs()) {
      ArcInMetal.weldMetal(layout, arc).forEach(simulation::lay);
      for (MovingSource source : ArcInMetal.sources(arc)) {
        simulation.strike(source);
      }
    }
    List<Start> starts = new ArrayList<>();
    PeakFields peaks = new PeakFields(layout, simulation);
    for (Arc arc : schedule.arcs()) {
      if (untilS.isEmpty() || arc.startS() <= untilS.get()) {
        simulation.advanceTo(arc.startS());
        if (!arc.tack()) {
          peaks.begin(arc.run().name());
          starts.add(start(arc, simulation));
        }
      }
    }
    finish(simulation, untilS);
    peaks.end();
    return answer(simulation, probes, starts, peaks.fields());
  }

  private void finish(Simulation simulation, Optional<Double> untilS) {
    Optional<Double> end = untilS.or(schedule::endS);
    if (end.isPresent()) {
      simulation.advanceTo(end.get());
      return;
    }
    double lastS = schedule.lastArcEndS();
    simulation.advanceTo(lastS);
    double warmC = Math.max(Bench.value("hand-warm"), weldment.surroundings().ambientC() + 5);
    simulation.advanceUntil(
        s -> s.hottestC() <= warmC, lastS + Bench.value("longest cooling"), LOOK_S);
  }

  private HeatAnswer answer(
      Simulation simulation, Probes probes, List<Start> starts, List<PeakField> peaks) {
    List<String> notes = new ArrayList<>(schedule.notes());
    if (!weldment.joints().isEmpty()) {
      notes.add(
          "Fitted faces conduct "
              + (int) Bench.value("fitted faces")
              + " W/m2K (common practice, no source).");
    }
    return new HeatAnswer(
        weldment.name(),
        order,
        resolution,
        weldment.surroundings().ambientC(),
        probes.traces(),
        starts,
        peaks,
        simulation.balance(),
        layout.model().cells(),
        simulation.steps(),
        simulation.timeS(),
        notes);
  }

  private Start start(Arc arc, Simulation simulation) {
    WeldedRun run = arc.run();
    double hottest = -Double.MAX_VALUE;
    double coolest = Double.MAX_VALUE;
    for (String part : run.parts()) {
      for (int i = 0; i < SAMPLES; i++) {
        Vec3 at = Axes.point(run.path().at(run.path().lengthMm() * i / (SAMPLES - 1)));
        Block block = layout.nearest(part, at);
        double tempC = simulation.temperatureC(block, at);
        hottest = Math.max(hottest, tempC);
        coolest = Math.min(coolest, tempC);
      }
    }
    return new Start(
        run.name(),
        arc.number(),
        arc.startS(),
        hottest,
        coolest,
        arc.number() == 1 ? run.preheatC() : Optional.empty(),
        run.interpassMaxC());
  }

  /** Where temperatures are noted. */
  private static final class Probes {
    private final List<Trace> traces = new ArrayList<>();

    Probes(Weldment weldment, Layout layout, Schedule schedule, Simulation simulation) {
      for (Place place : Place.of(weldment, schedule)) {
        Block block = layout.nearest(place.part(), place.at());
        traces.add(
            new Trace(
                place.name(),
                place.kind(),
                place.limitC(),
                new History(simulation.probe(place.name(), block, place.at()))));
      }
    }

    List<Trace> traces() {
      return traces;
    }
  }
}
