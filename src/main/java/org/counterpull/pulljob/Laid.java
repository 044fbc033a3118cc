package org.counterpull.pulljob;

import java.util.List;
import java.util.Map;
import org.counterpull.pull.Pull;
import org.counterpull.pull.Segment;
import org.counterpull.pull.SpringStiffness;

/**
 * A piece of a run as it is laid.
 *
 * @param link where its two walls are tied
 * @param pulling stiffness while it pulls
 * @param cold stiffness once cold
 * @param wanted what the spring wants, by effect
 * @param loads what the walls want, by effect
 * @param whole everything at once, for searching
 */
record Laid(
    int link,
    SpringStiffness pulling,
    SpringStiffness cold,
    Map<Effect, double[]> wanted,
    Map<Effect, List<Integer>> loads,
    Segment whole) {

  /** The same, remelting these tacks. */
  Laid remelting(List<Integer> tacks) {
    return new Laid(link, pulling, cold, wanted, loads, whole.remelting(tacks));
  }

  /** What it wants by one effect. */
  Pull pull(Effect effect) {
    return new Pull(link, pulling, wanted.getOrDefault(effect, new double[6]));
  }
}
