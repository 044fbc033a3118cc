package org.counterpull.pull;

import java.util.ArrayList;
import java.util.List;

/**
 * One continuous weld as a chain of segments in its own direction.
 *
 * <p>Segments that pull together don't hold each other with the stiffness of cold metal. A free
 * shrinkage that was measured on plates welded from end to end has in it what the beginning of such
 * a weld holds against its end: to let each segment pull against the cold ones behind it would
 * count that twice.
 *
 * @param name as on the plan
 * @param segments in the order in which they are born when the run is welded as it is drawn
 * @param together how many segments, one after the other, pull together
 */
public record Run(String name, List<Segment> segments, int together) {
  public Run {
    segments = List.copyOf(segments);
    if (segments.isEmpty()) {
      throw new IllegalArgumentException("run " + name + " has no segment");
    }
    if (together < 1 || together > segments.size()) {
      throw new IllegalArgumentException(
          "of " + segments.size() + " segments of run " + name + " " + together + " can't pull");
    }
  }

  /** A run whose segments all pull together. */
  public static Run whole(String name, List<Segment> segments) {
    return new Run(name, segments, segments.size());
  }

  /**
   * Lays the whole run on a structure.
   *
   * @param reversed from its end to its start
   * @param origin account on which everything it moves is booked
   */
  public void layOn(Structure structure, boolean reversed, int origin) {
    List<Pull> hot = new ArrayList<>();
    int last = segments.size() - 1;
    for (int i = 0; i <= last; i++) {
      Segment segment = segments.get(reversed ? last - i : i);
      segment.layOn(structure, origin);
      hot.add(segment.pull());
      if (hot.size() == together || i == last) {
        structure.pull(hot, origin);
        hot.clear();
      }
    }
  }
}
