package org.counterpull.pull;

import java.util.List;

/**
 * One continuous weld as a chain of segments in its own direction.
 *
 * @param name as on the plan
 * @param segments in the order in which they are born when the run is welded as it is drawn
 */
public record Run(String name, List<Segment> segments) {
  public Run {
    segments = List.copyOf(segments);
    if (segments.isEmpty()) {
      throw new IllegalArgumentException("run " + name + " has no segment");
    }
  }

  /**
   * Lays the whole run on a structure.
   *
   * @param reversed from its end to its start
   * @param origin account on which everything it moves is booked
   */
  public void layOn(Structure structure, boolean reversed, int origin) {
    int last = segments.size() - 1;
    for (int i = 0; i <= last; i++) {
      segments.get(reversed ? last - i : i).layOn(structure, origin);
    }
  }
}
