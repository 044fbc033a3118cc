package org.counterpull.jointplan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.counterpull.contact.JointForm;
import org.counterpull.contact.WeldLine;

/** What a line is to a groove. */
enum LineRole {
  /** The side that is welded first, or the only one. */
  FIRST,
  /** The other face of the same wall. */
  SECOND,
  /** The end of the wall: the groove runs out there, and a fillet is wrapped round it. */
  END;

  /**
   * Roles of a grooved joint's lines, in their order. Ends of a butt get no run of their own: the
   * groove's own passes close them.
   *
   * @param lines at least one
   */
  static Map<WeldLine, LineRole> of(JointForm form, List<WeldLine> lines) {
    boolean hasFaces = lines.stream().anyMatch(line -> !isEnd(line));
    Map<WeldLine, LineRole> roles = new LinkedHashMap<>();
    List<WeldLine> firsts = new ArrayList<>();
    for (WeldLine line : lines) {
      if (hasFaces && isEnd(line)) {
        roles.put(line, END);
      } else if (firsts.stream().anyMatch(first -> faces(first, line))) {
        roles.put(line, SECOND);
      } else if (form == JointForm.BUTT && firsts.stream().anyMatch(first -> beside(first, line))) {
        // A square bar: two pairs of faces are equally good; the first is grooved.
        roles.put(line, END);
      } else {
        roles.put(line, FIRST);
        firsts.add(line);
      }
    }
    return roles;
  }

  /** The wall is deeper than the line is long: that is the narrow end of a flat. */
  private static boolean isEnd(WeldLine line) {
    return line.firstWallMm() > 1.05 * line.path().lengthMm();
  }

  private static boolean faces(WeldLine first, WeldLine line) {
    return first.opening().dotProduct(line.opening()) < 0.25 && BothFaces.isBehind(first, line);
  }

  /** A solid bar's next face: as deep as it is wide. */
  private static boolean beside(WeldLine first, WeldLine line) {
    return first.firstWallMm() > 0.95 * first.path().lengthMm()
        && line.firstWallMm() > 0.95 * line.path().lengthMm();
  }
}
