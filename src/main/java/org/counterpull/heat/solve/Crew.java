package org.counterpull.heat.solve;

import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.function.IntConsumer;

/**
 * Two halves of the same work, on two cores where it pays. The halves are the same whether they run
 * together or one after the other, so results do not depend on the machine.
 */
final class Crew {
  static final int HALVES = 2;

  /** Below this many cells a handover costs more than it saves. */
  private static final int WORTH_CELLS = 15_000;

  private Crew() {}

  static void run(int cells, IntConsumer half) {
    if (cells < WORTH_CELLS) {
      half.accept(0);
      half.accept(1);
      return;
    }
    ForkJoinTask<?> other = ForkJoinPool.commonPool().submit(() -> half.accept(1));
    half.accept(0);
    other.join();
  }
}
