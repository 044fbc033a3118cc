package org.counterpull.heatjob;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.counterpull.heatjob.Schedule.Arc;
import org.counterpull.heatjob.WeldedRun.Stretch;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.order.Operation;
import org.counterpull.order.TackLayout;
import org.counterpull.order.Timed;
import org.counterpull.plan.Plan;

/** Arcs at the times of a plan. */
final class PlannedSchedule {
  private static final String PASS = ":pass-";

  private final Plan plan;
  private final Map<String, WeldedRun> runs = new LinkedHashMap<>();
  private final List<Arc> arcs = new ArrayList<>();

  private PlannedSchedule(Plan plan, RunHeats heats) {
    this.plan = plan;
    plan.runs().forEach(run -> runs.put(run.name(), heats.of(run)));
  }

  static Schedule of(Plan plan, RunHeats heats) {
    PlannedSchedule made = new PlannedSchedule(plan, heats);
    double endS = 0;
    for (Timed timed : plan.operations()) {
      Operation operation = timed.operation();
      if (operation.kind() == Operation.Kind.WELD) {
        made.weld(timed);
      } else if (operation.kind() == Operation.Kind.TACK) {
        made.tack(timed);
      }
      endS = Math.max(endS, timed.endS());
    }
    List<String> notes = new ArrayList<>();
    if (made.runs.values().stream().anyMatch(r -> r.preheatC().isPresent())) {
      notes.add("The flame that preheats is left out: metal at preheated runs starts cooler here.");
    }
    return new Schedule(List.copyOf(made.runs.values()), made.arcs, Optional.of(endS), notes);
  }

  /** Passes share a step in proportion to their arc time. */
  private void weld(Timed timed) {
    WeldedRun run = runs.get(timed.operation().run().orElseThrow());
    int from = firstPass(timed.operation());
    int to = Math.min(run.passes().size() + 1, nextPiece(timed));
    double arcS = 0;
    for (int n = from; n < to; n++) {
      arcS += run.arcTimeS(run.passes().get(n - 1));
    }
    double startS = timed.startS();
    double stretch = Math.max(1, (timed.endS() - timed.startS()) / arcS);
    for (int n = from; n < to; n++) {
      WeldedRun.Pass pass = run.passes().get(n - 1);
      arcs.add(new Arc(run, n, pass, run.stretches(), startS));
      startS += stretch * run.arcTimeS(pass);
    }
  }

  private static int firstPass(Operation operation) {
    int at = operation.id().lastIndexOf(PASS);
    return at < 0 ? 1 : Integer.parseInt(operation.id().substring(at + PASS.length()));
  }

  private int nextPiece(Timed timed) {
    return plan.operations().stream()
        .filter(o -> o.operation().kind() == Operation.Kind.WELD)
        .filter(o -> o.operation().run().equals(timed.operation().run()))
        .filter(o -> o.startS() > timed.startS())
        .mapToInt(o -> firstPass(o.operation()))
        .min()
        .orElse(Integer.MAX_VALUE);
  }

  /** Tacks of a joint, one after the other through their step, with the heat of a first pass. */
  private void tack(Timed timed) {
    List<Arc> tacks = new ArrayList<>();
    for (RunPlan plan : this.plan.runs()) {
      if (plan.line().joint().equals(timed.operation().where())) {
        WeldedRun run = runs.get(plan.name());
        for (Stretch stretch : tacks(plan, run)) {
          tacks.add(new Arc(run, 0, run.passes().get(0), List.of(stretch), 0));
        }
      }
    }
    double each = (timed.endS() - timed.startS()) / Math.max(1, tacks.size());
    for (int i = 0; i < tacks.size(); i++) {
      Arc t = tacks.get(i);
      arcs.add(new Arc(t.run(), 0, t.pass(), t.stretches(), timed.startS() + i * each));
    }
  }

  /** Where a run is tacked. */
  static List<Stretch> tacks(RunPlan plan, WeldedRun run) {
    TackLayout layout = TackLayout.of(plan.line(), run.preheatC().isPresent());
    double length = run.path().lengthMm();
    boolean closed = run.path().start().distance(run.path().end()) < 1e-6;
    List<Stretch> tacks = new ArrayList<>();
    for (int i = 0; i < layout.count(); i++) {
      double share =
          layout.count() == 1 ? 0.5 : (double) i / (closed ? layout.count() : layout.count() - 1);
      double from = Math.min(length - layout.lengthMm(), share * (length - layout.lengthMm()));
      tacks.add(new Stretch(Math.max(0, from), Math.min(length, from + layout.lengthMm())));
    }
    return tacks;
  }
}
