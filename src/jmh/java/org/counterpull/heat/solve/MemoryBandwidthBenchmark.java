package org.counterpull.heat.solve;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Threads;
import org.openjdk.jmh.annotations.Warmup;

/** What the machine's memory gives: {@code a = b + s c} over arrays too long for any cache. */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 3, time = 2)
@Fork(1)
public class MemoryBandwidthBenchmark {
  private static final int LENGTH = 10_000_000;

  private double[] a;
  private double[] b;
  private double[] c;

  @Setup
  public void fill() {
    a = new double[LENGTH];
    b = new double[LENGTH];
    c = new double[LENGTH];
    for (int i = 0; i < LENGTH; i++) {
      b[i] = i;
      c[i] = 2 * i;
    }
  }

  /** 240 MB a call and thread. */
  @Benchmark
  @Threads(2)
  public double[] triadOnTwoCores() {
    for (int i = 0; i < LENGTH; i++) {
      a[i] = b[i] + 3 * c[i];
    }
    return a;
  }

  /** The same on one core. */
  @Benchmark
  @Threads(1)
  public double[] triadOnOneCore() {
    return triadOnTwoCores();
  }
}
