package org.counterpull.order;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.counterpull.contact.Contact;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.weldment.Weldment;

/**
 * Which run must come before which, whatever lies between them.
 *
 * @param earlier name of the run that comes first
 * @param later name of the run that comes after
 */
public record RunPrecedence(String earlier, String later) {

  /** All that the rules demand; none where the rules go round in a circle. */
  public static List<RunPrecedence> of(
      Weldment weldment, List<JointPlan> joints, List<Contact> contacts) {
    RuledGraph ruled = RuledGraph.of(weldment, Steps.of(weldment, joints, contacts));
    if (ruled.cycle().isPresent()) {
      return List.of();
    }
    List<RunPrecedence> all = new ArrayList<>();
    for (Step step : ruled.graph().steps()) {
      step.run()
          .ifPresent(
              run ->
                  runsAfter(ruled.graph(), step.id())
                      .forEach(later -> all.add(new RunPrecedence(run.name(), later))));
    }
    return List.copyOf(all);
  }

  private static List<String> runsAfter(OrderGraph graph, String id) {
    List<String> runs = new ArrayList<>();
    Set<String> seen = new LinkedHashSet<>();
    Deque<String> open = new ArrayDeque<>(graph.after(id));
    while (!open.isEmpty()) {
      String next = open.poll();
      if (seen.add(next)) {
        graph.step(next).run().ifPresent(run -> runs.add(run.name()));
        open.addAll(graph.after(next));
      }
    }
    return runs;
  }
}
