package org.counterpull.pull;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * One order of single-segment runs on a heap of bars: worked out from nothing by updates, after two
 * neighbours changed places, and with assembling and factorising anew at every birth.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 4)
@Measurement(iterations = 12)
public class OrderBenchmark {
  @Param({"12", "60", "200", "600"})
  public int segments;

  private RandomFrame frame;
  private Structure fitted;
  private List<Run> runs;
  private SpringStiffness tack;
  private int bars;
  private RunSequence warm;
  private List<Integer> order;
  private Random random;

  @Setup(Level.Trial)
  public void fit() {
    bars = Math.max(4, segments / 4);
    frame = new RandomFrame(1, bars, bars - 1 + segments, RandomFrame.AS_IT_COMES);
    tack = SpringStiffness.uniform(1e5);
    fitted = new Structure(frame.assembly, 1);
    for (int l = 0; l < bars - 1; l++) {
      fitted.join(l, tack);
    }
    random = new Random(2);
    runs = new ArrayList<>();
    order = new ArrayList<>();
    for (int s = 0; s < segments; s++) {
      SpringStiffness cold = RandomFrame.stiffness(random, 3);
      double[] wanted = {0, -0.3, 0, 0.01, 0, 0};
      int link = bars - 1 + s;
      runs.add(
          Run.whole(
              "r" + s,
              List.of(
                  new Segment(link, cold.times(0.15), cold, wanted, List.of(), List.of()))));
      order.add(s);
    }
    Collections.shuffle(order, random);
    warm = new RunSequence(fitted, runs, List.of(), frame.readings.size());
    walk(warm);
  }

  private double walk(RunSequence sequence) {
    RunSequence.State state = sequence.start();
    for (int run : order) {
      state = sequence.after(state, run, false);
    }
    return sequence.readingsAtEnd(state)[0];
  }

  /** A whole order with nothing known before. */
  @Benchmark
  public double fromNothing() {
    return walk(new RunSequence(fitted, runs, List.of(), frame.readings.size()));
  }

  /** What a search does most: two neighbours change places. */
  @Benchmark
  public double neighboursSwapped() {
    int at = random.nextInt(segments - 1);
    Collections.swap(order, at, at + 1);
    return walk(warm);
  }

  /** Assembled and factorised at every birth. */
  @Benchmark
  public double anew() {
    SparseAnew solver = new SparseAnew(frame);
    for (int l = 0; l < bars - 1; l++) {
      solver.join(l, tack);
    }
    double sum = 0;
    for (int run : order) {
      sum += solver.weld(runs.get(run).segments().get(0))[0];
    }
    return sum;
  }
}
