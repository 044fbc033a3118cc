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
 * @param beside what the welded segments of other runs in the same groove take part with, a list
 *     for each such run: published values for later passes are of the joint as it stands, and what
 *     was laid before them is part of it
 */
public record Run(String name, List<Segment> segments, int together, List<List<Pull>> beside) {
  public Run {
    segments = List.copyOf(segments);
    beside = beside.stream().map(List::copyOf).toList();
    if (segments.isEmpty()) {
      throw new IllegalArgumentException("run " + name + " has no segment");
    }
    if (together < 1 || together > segments.size()) {
      throw new IllegalArgumentException(
          "of " + segments.size() + " segments of run " + name + " " + together + " can't pull");
    }
    if (!beside.isEmpty() && together < segments.size()) {
      throw new IllegalArgumentException("run " + name + " has to pull as a whole in its groove");
    }
  }

  /** A run whose segments all pull together. */
  public static Run whole(String name, List<Segment> segments) {
    return new Run(name, segments, segments.size(), List.of());
  }

  /** The same with other runs in its groove. */
  public Run beside(List<List<Pull>> others) {
    return new Run(name, segments, together, others);
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
      segment.fill(structure);
      segment.loads().forEach(load -> structure.apply(load, 1, origin));
      hot.add(segment.pull());
      if (hot.size() == together || i == last) {
        pull(structure, hot, beside, origin);
        hot.clear();
      }
    }
  }

  /**
   * Lets segments pull, and with them what is welded beside them: all together with the stiffness
   * of one groove.
   */
  public static void pull(
      Structure structure, List<Pull> own, List<List<Pull>> beside, int origin) {
    List<List<Pull>> all = new ArrayList<>(List.of(own));
    for (List<Pull> other : beside) {
      if (other.stream().allMatch(pull -> structure.closed(pull.link()))) {
        all.add(other);
      }
    }
    double share = 1.0 / all.size();
    structure.pull(
        all.stream().flatMap(List::stream).map(pull -> pull.withShare(share)).toList(), origin);
  }
}
