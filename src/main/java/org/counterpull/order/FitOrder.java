package org.counterpull.order;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.counterpull.weldment.Joint;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.PartMass;
import org.counterpull.weldment.Weldment;

/**
 * The natural order of fitting: from the heaviest part outwards along the joints, file order among
 * equals. Only a preference; rules decide where they speak.
 *
 * @param turns place of each part in the order, from 0
 * @param bases the parts that others are fitted to first, one for each group that joints hold
 *     together
 */
record FitOrder(Map<String, Integer> turns, List<String> bases) {

  static FitOrder of(Weldment weldment) {
    Map<String, Integer> turns = new LinkedHashMap<>();
    List<String> bases = new ArrayList<>();
    List<Part> heaviestFirst =
        weldment.parts().stream()
            .sorted(Comparator.comparingDouble((Part part) -> -PartMass.kg(part)))
            .toList();
    for (Part part : heaviestFirst) {
      if (!turns.containsKey(part.name())) {
        bases.add(part.name());
        outwards(weldment, part.name(), turns);
      }
    }
    return new FitOrder(turns, List.copyOf(bases));
  }

  private static void outwards(Weldment weldment, String base, Map<String, Integer> turns) {
    List<String> reached = new ArrayList<>(List.of(base));
    turns.put(base, turns.size());
    for (int i = 0; i < reached.size(); i++) {
      String here = reached.get(i);
      for (Joint joint : weldment.joints()) {
        String other = across(joint, here);
        if (!other.isEmpty() && !turns.containsKey(other)) {
          turns.put(other, turns.size());
          reached.add(other);
        }
      }
    }
  }

  private static String across(Joint joint, String part) {
    if (joint.first().equals(part)) {
      return joint.second();
    }
    return joint.second().equals(part) ? joint.first() : "";
  }

  int of(String part) {
    return turns.getOrDefault(part, turns.size());
  }

  boolean isBase(String part) {
    return bases.contains(part);
  }

  /** The parts that a part is fitted to: those before it that a joint ties it to. */
  List<String> fittedTo(Weldment weldment, String part) {
    return weldment.joints().stream()
        .map(joint -> across(joint, part))
        .filter(other -> !other.isEmpty() && of(other) < of(part))
        .distinct()
        .collect(Collectors.toList());
  }

  /** The place at which a joint can be closed: that of its later part. */
  int of(Joint joint) {
    return Math.max(of(joint.first()), of(joint.second()));
  }
}
