package org.counterpull.order;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.counterpull.jointplan.RunPlan;

/** Goes through the graph step by step: what is ready and comes first is done next. */
final class Sequencer {
  /** Steps of one phase are taken by their turn, not by their sort: fit, tack, fit, tack. */
  private static final Comparator<Step> NATURAL =
      Comparator.comparingInt((Step step) -> phase(step.tag()))
          .thenComparingInt(Step::turn)
          .thenComparing(Step::tag)
          .thenComparing(Step::id);

  private final OrderGraph graph;
  private final RunPicker picker;
  private final Timeline timeline;
  private final Map<String, Integer> open = new HashMap<>();
  private final TreeSet<Step> ready = new TreeSet<>(NATURAL);
  private final List<Step> readyRuns = new ArrayList<>();

  Sequencer(OrderGraph graph, RunPicker picker, Timeline timeline) {
    this.graph = graph;
    this.picker = picker;
    this.timeline = timeline;
  }

  private static int phase(StepTag tag) {
    return switch (tag) {
      case MASK -> StepTag.STRIP_COATING.ordinal();
      case SUPPORT, FIT, INSERT, THROUGH_ROD, FIXTURE, PREHEAT_FOR_TACKS, TACK ->
          StepTag.FIT.ordinal();
      default -> tag.ordinal();
    };
  }

  /** Does everything. */
  void run() {
    for (Step step : graph.steps()) {
      open.put(step.id(), graph.before(step.id()).size());
      release(step);
    }
    while (!ready.isEmpty() || !readyRuns.isEmpty()) {
      Step next = next();
      for (String later : graph.after(next.id())) {
        open.merge(later, -1, Integer::sum);
        release(graph.step(later));
      }
    }
  }

  private void release(Step step) {
    if (open.get(step.id()) == 0) {
      if (step.run().isPresent()) {
        readyRuns.add(step);
      } else {
        ready.add(step);
      }
    }
  }

  private Step next() {
    boolean runNext =
        !readyRuns.isEmpty()
            && (ready.isEmpty() || phase(ready.first().tag()) > StepTag.WELD.ordinal());
    if (!runNext) {
      Step step = ready.pollFirst();
      timeline.doStep(step);
      return step;
    }
    Step step = picker.next(readyRuns, timeline.handling().bench(), timeline::waitS);
    readyRuns.remove(step);
    RunPlan run = step.run().orElseThrow();
    timeline.weld(step, run);
    return step;
  }
}
