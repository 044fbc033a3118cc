package org.counterpull.contact;

import java.util.List;

/**
 * How the two parts of a joint meet.
 *
 * @param joint name of the joint
 * @param form how they meet
 * @param areaMm2 area over which the faces are no further apart than the joint's gap and the usual
 *     fit-up; for something round on a flat the strip beside the tangent line
 * @param gapMm least distance between the two, 0 where they touch
 * @param lines every line that could be welded, in a stable order; unreachable ones included
 * @param leftOut lines that are too short to weld, in words
 */
public record Contact(
    String joint,
    JointForm form,
    double areaMm2,
    double gapMm,
    List<WeldLine> lines,
    List<String> leftOut) {
  public Contact {
    lines = List.copyOf(lines);
    leftOut = List.copyOf(leftOut);
  }

  /** The same contact with other lines. */
  public Contact withLines(List<WeldLine> others) {
    return new Contact(joint, form, areaMm2, gapMm, others, leftOut);
  }

  /** A contact of which nothing was left out. */
  public Contact(String joint, JointForm form, double areaMm2, double gapMm, List<WeldLine> lines) {
    this(joint, form, areaMm2, gapMm, lines, List.of());
  }
}
