package org.counterpull.order;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A place that a tool does not get to any more.
 *
 * @param place the feature or run
 * @param tool what was to get there
 * @param doneAt number of the step that needs it
 * @param blockedBy the part in the way
 * @param lostAt number of the step after which it is lost
 */
public record AccessLost(String place, String tool, int doneAt, String blockedBy, int lostAt) {

  /** What gets a step done that needs a way to its place. */
  private static final Map<StepTag, String> TOOLS =
      Map.of(
          StepTag.DRILL, "drill and chuck",
          StepTag.WELD, "torch or electrode",
          StepTag.REAM, "reamer",
          StepTag.CHASE, "tap with wrench",
          StepTag.FIT_NIPPLE, "grease gun",
          StepTag.REFIT, "hand",
          StepTag.INSERT, "hand",
          StepTag.FIT_PIN, "pin",
          StepTag.REMOVE_ROD, "rod");

  /** Every place that is lost at some step, in the order in which they are lost. */
  static List<AccessLost> of(List<Step> steps, List<Timed> done) {
    Map<String, Integer> numbers = new TreeMap<>();
    done.forEach(timed -> numbers.putIfAbsent(timed.operation().id(), timed.number()));
    List<AccessLost> lost = new ArrayList<>();
    for (Step step : steps) {
      String tool = TOOLS.getOrDefault(step.tag(), "");
      for (Step fit : steps) {
        boolean blocks =
            fit.tag() == StepTag.FIT && !tool.isEmpty() && Match.CLOSED_BY_PART.ties(step, fit);
        if (blocks && numbers.containsKey(step.id()) && numbers.containsKey(fit.id())) {
          lost.add(
              new AccessLost(
                  step.subject().orElse(step.operation().where()),
                  tool,
                  numbers.get(step.id()),
                  fit.subject().orElseThrow(),
                  numbers.get(fit.id())));
        }
      }
    }
    return lost.stream().sorted(Comparator.comparingInt(AccessLost::lostAt)).toList();
  }
}
