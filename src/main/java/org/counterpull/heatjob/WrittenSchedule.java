package org.counterpull.heatjob;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.counterpull.heatjob.Schedule.Arc;
import org.counterpull.weldment.RunGiven;
import org.counterpull.weldment.Weldment;
import org.counterpull.weldment.WrittenOrder;

/** Arcs as the file writes them: start times and pauses, or one run after the other. */
final class WrittenSchedule {
  private WrittenSchedule() {}

  static Schedule of(Weldment weldment, RunHeats heats) {
    List<WeldedRun> runs = new ArrayList<>();
    List<Arc> arcs = new ArrayList<>();
    List<String> notes = new ArrayList<>();
    double nowS = 0;
    for (WrittenOrder.Step step : steps(weldment)) {
      Optional<WeldedRun> run = heats.named(step.run());
      if (run.isEmpty()) {
        notes.add(step.run() + " is left out: neither the file nor a machine gives its heat.");
        continue;
      }
      runs.add(run.get());
      nowS = step.startS().orElse(nowS + step.pauseS().orElse(0.0));
      for (int n = 1; n <= run.get().passes().size(); n++) {
        nowS += n > 1 ? Bench.value("between passes") : 0;
        WeldedRun.Pass pass = run.get().passes().get(n - 1);
        Arc arc = new Arc(run.get(), n, pass, run.get().stretches(), nowS);
        arcs.add(arc);
        nowS = arc.endS();
      }
    }
    return new Schedule(runs, arcs, Optional.empty(), notes);
  }

  private static List<WrittenOrder.Step> steps(Weldment weldment) {
    return weldment
        .order()
        .map(WrittenOrder::steps)
        .orElseGet(
            () ->
                weldment.runs().stream()
                    .filter(g -> g.heat().isPresent())
                    .map(RunGiven::run)
                    .map(
                        run ->
                            new WrittenOrder.Step(
                                run, Optional.empty(), Optional.empty(), Optional.empty()))
                    .toList());
  }
}
