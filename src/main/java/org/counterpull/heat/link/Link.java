package org.counterpull.heat.link;

import java.util.List;
import org.counterpull.heat.block.Block;

/**
 * A set of pairs between two blocks under one law.
 *
 * @param name as it is reported
 * @param a first block
 * @param b second block
 * @param law what lies between
 * @param pairs which patches exchange heat
 * @param fromS time from which it conducts; 0 for what is there from the start
 */
public record Link(String name, Block a, Block b, LinkLaw law, List<Pair> pairs, double fromS) {

  public Link {
    pairs = List.copyOf(pairs);
    if (a == b) {
      throw new IllegalArgumentException("link " + name + " joins block " + a + " to itself");
    }
  }

  /** The same link, conducting from another time on. */
  public Link from(double timeS) {
    return new Link(name, a, b, law, pairs, timeS);
  }

  /** Area over which it conducts. */
  public double areaMm2() {
    return pairs.stream().mapToDouble(Pair::areaMm2).sum();
  }
}
