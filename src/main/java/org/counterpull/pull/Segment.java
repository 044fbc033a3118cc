package org.counterpull.pull;

import java.util.List;
import java.util.stream.IntStream;

/**
 * One piece of a run, at most 50 mm or an eighth of it, that is born at once.
 *
 * @param link where it lies; a tack that lies there already is remelted
 * @param pulling stiffness while it pulls
 * @param cold stiffness once cold
 * @param wanted change of the opening that it wants, in the link's six components, mm and rad
 * @param loads numbers of the wall loads and tendon forces that come with it
 * @param remelts links of further tacks that it takes out
 */
public record Segment(
    int link,
    SpringStiffness pulling,
    SpringStiffness cold,
    double[] wanted,
    List<Integer> loads,
    List<Integer> remelts) {

  public Segment {
    wanted = wanted.clone();
    loads = List.copyOf(loads);
    remelts = List.copyOf(remelts);
    if (wanted.length != 6) {
      throw new IllegalArgumentException("a segment wants six components, not " + wanted.length);
    }
  }

  @Override
  public double[] wanted() {
    return wanted.clone();
  }

  int[] coldComponents() {
    double[] stiffness = cold.components();
    return IntStream.range(0, 6).filter(c -> stiffness[c] > 0).toArray();
  }

  /** Fills its link: tacks let go, it is born; it doesn't pull yet and its walls don't shrink. */
  public void fill(Structure structure) {
    for (int tack : remelts) {
      // A tack that carries its part alone bears nothing; it goes once the segment holds the part.
      if (structure.closed(tack) && !structure.holdsAlone(tack)) {
        structure.release(tack);
      }
    }
    structure.lay(link, cold);
    for (int tack : remelts) {
      if (structure.closed(tack)) {
        structure.release(tack);
      }
    }
  }

  /** The same, remelting these tacks too. */
  public Segment remelting(List<Integer> tacks) {
    return new Segment(link, pulling, cold, wanted, loads, tacks);
  }

  Pull pull() {
    return new Pull(link, pulling, wanted);
  }
}
