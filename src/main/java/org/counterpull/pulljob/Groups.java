package org.counterpull.pulljob;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.Weldment;

/** Which parts hang together by their welds. */
final class Groups {
  private final Map<String, Integer> groups = new LinkedHashMap<>();

  Groups(Weldment weldment, List<PulledRun> runs) {
    int number = 0;
    for (Part part : weldment.parts()) {
      groups.put(part.name(), number++);
    }
    for (PulledRun run : runs) {
      if (run.walls().size() == 2) {
        join(groups.get(run.walls().get(0).part()), groups.get(run.walls().get(1).part()));
      }
    }
  }

  private void join(int one, int other) {
    int low = Math.min(one, other);
    int high = Math.max(one, other);
    groups.replaceAll((part, group) -> group == high ? low : group);
  }

  int of(String part) {
    return groups.get(part);
  }

  /** Parts by group, in file order. */
  Map<Integer, List<String>> all() {
    Map<Integer, List<String>> all = new LinkedHashMap<>();
    groups.forEach(
        (part, group) -> all.computeIfAbsent(group, g -> new java.util.ArrayList<>()).add(part));
    return all;
  }
}
