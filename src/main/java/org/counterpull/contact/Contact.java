package org.counterpull.contact;

import java.util.List;

/**
 * How the two parts of a joint meet.
 *
 * @param joint name of the joint
 * @param form how they meet
 * @param areaMm2 area over which the faces lie on each other, within the joint's gap
 * @param gapMm least distance between the two, 0 where they touch
 * @param lines every line that could be welded, in a stable order; unreachable ones included
 */
public record Contact(
    String joint, JointForm form, double areaMm2, double gapMm, List<WeldLine> lines) {
  public Contact {
    lines = List.copyOf(lines);
  }
}
