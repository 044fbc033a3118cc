package org.counterpull.pull;

import java.util.Arrays;

/**
 * What a piece of weld wants while it cools.
 *
 * @param link where it lies
 * @param pulling stiffness while it pulls
 * @param wanted change of the opening that it wants, in the link's six components, mm and rad
 */
public record Pull(int link, SpringStiffness pulling, double[] wanted) {
  public Pull {
    wanted = wanted.clone();
  }

  @Override
  public double[] wanted() {
    return wanted.clone();
  }

  /** The same with a share of the stiffness. */
  Pull withShare(double share) {
    return share == 1 ? this : new Pull(link, pulling.times(share), wanted);
  }

  double wantedIn(int component) {
    return wanted[component];
  }

  /** Nothing can be wanted where the cold metal doesn't hold or the hot one doesn't pull. */
  void checkFree(int[] held) {
    double[] pull = pulling.components();
    for (int c = 0; c < 6; c++) {
      boolean free = Arrays.binarySearch(held, c) < 0 || !(pull[c] > 0);
      if (wanted[c] != 0 && free) {
        throw new IllegalArgumentException("link " + link + " can't pull in a free component " + c);
      }
    }
  }

  /** By how much softer it is hot than cold. */
  double addedCompliance(int component, double cold) {
    double pull = pulling.components()[component];
    double added = 1 / pull - 1 / cold;
    if (!(added >= -1e-12 / cold)) {
      throw new IllegalArgumentException(
          "a weld can't pull with " + pull + " and be softer, " + cold + ", cold");
    }
    return added;
  }
}
