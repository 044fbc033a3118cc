package org.counterpull.pull;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * A seeded heap of bars, tacked, clamped twice, with runs of two segments each; every second run
 * remelts a tack that lies at its first segment, every third one that lies elsewhere.
 */
public final class RandomJob {
  public final List<Run> runs = new ArrayList<>();
  public final List<Integer> fixtures = new ArrayList<>();
  public final List<Integer> readings;
  public final Structure fitted;

  /** Every segment pulls for itself. */
  public RandomJob(long seed, int bars, int runCount) {
    this(seed, bars, runCount, 1);
  }

  /** The segments of every second run pull {@code together}. */
  RandomJob(long seed, int bars, int runCount, int together) {
    int chain = bars - 1;
    RandomFrame frame =
        new RandomFrame(seed, bars, chain + 2 + 3 * runCount, RandomFrame.AS_IT_COMES);
    readings = frame.readings;
    Random random = new Random(seed + 1000);
    fitted = new Structure(frame.assembly, runCount);
    for (int l = 0; l < chain; l++) {
      fitted.join(l, RandomFrame.stiffness(random, 1));
    }
    for (int l = chain; l < chain + 2; l++) {
      fitted.join(l, RandomFrame.stiffness(random, 10));
      fixtures.add(l);
    }
    for (int r = 0; r < runCount; r++) {
      int first = chain + 2 + 3 * r;
      if (r % 2 == 0) {
        fitted.join(first, RandomFrame.stiffness(random, 0.3));
      }
      List<Integer> remelts = List.of();
      if (r % 3 == 0) {
        fitted.join(first + 2, RandomFrame.stiffness(random, 0.3));
        remelts = List.of(first + 2);
      }
      runs.add(
          new Run(
              "r" + r,
              List.of(segment(random, first, List.of()), segment(random, first + 1, remelts)),
              r % 2 == 0 ? 1 : together,
              List.of()));
    }
  }

  public RunSequence sequence() {
    return new RunSequence(fitted, runs, fixtures, readings.size());
  }

  private static Segment segment(Random random, int link, List<Integer> remelts) {
    SpringStiffness cold = RandomFrame.stiffness(random, 3);
    double[] wanted = {0, -0.2 - random.nextDouble(), 0, 0.02 * random.nextDouble(), 0, 0};
    return new Segment(link, cold.times(0.15), cold, wanted, List.of(), remelts);
  }
}
