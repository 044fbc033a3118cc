package org.counterpull.pull;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The fast way over many orders against laying every run on the full structure. */
class RunSequenceTest {

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void anyOrderAgreesWithLayingItPlainly(long seed) {
    RandomJob job = new RandomJob(seed, 5, 8, 2);
    RunSequence sequence = job.sequence();
    Random random = new Random(seed);
    for (int trial = 0; trial < 12; trial++) {
      List<Integer> order = new ArrayList<>(List.of(0, 1, 2, 3, 4, 5, 6, 7));
      Collections.shuffle(order, random);
      Structure plain = job.fitted.copy();
      RunSequence.State state = sequence.start();
      for (int run : order) {
        boolean reversed = random.nextBoolean();
        job.runs.get(run).layOn(plain, reversed, run);
        state = sequence.after(state, run, reversed);
        assertSame(job, plain, sequence.readings(state));
      }
      job.fixtures.forEach(plain::release);
      assertSame(job, plain, sequence.readingsAtEnd(state));
      for (int r : job.readings) {
        double shares = 0;
        for (int run = 0; run < job.runs.size(); run++) {
          shares += plain.share(r, run);
        }
        assertThat(shares).isCloseTo(plain.reading(r), within(1e-12));
      }
    }
  }

  @Test
  void directionMatters() {
    RandomJob job = new RandomJob(3, 5, 8);
    RunSequence sequence = job.sequence();
    double[] forward = sequence.readings(sequence.after(sequence.start(), 0, false));
    double[] backward = sequence.readings(sequence.after(sequence.start(), 0, true));
    assertThat(Math.abs(forward[0] - backward[0])).isGreaterThan(1e-7);
  }

  @Test
  void whatWasLaidOnceIsNotLaidAgain() {
    RandomJob job = new RandomJob(3, 5, 8);
    RunSequence sequence = job.sequence();
    evaluate(sequence, 0, 1, 2, 3, 4, 5, 6, 7);
    long once = sequence.laid();
    evaluate(sequence, 0, 1, 2, 3, 4, 5, 6, 7);
    assertThat(sequence.laid()).isEqualTo(once);
    // Two neighbours change places: only those two are laid anew.
    evaluate(sequence, 0, 1, 2, 4, 3, 5, 6, 7);
    assertThat(sequence.laid()).isEqualTo(once + 2);
  }

  @Test
  void aRunIsWeldedOnce() {
    RunSequence sequence = new RandomJob(3, 5, 8).sequence();
    RunSequence.State state = sequence.after(sequence.start(), 2, false);
    assertThatThrownBy(() -> sequence.after(state, 2, true))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("run r2 is welded already");
  }

  private static void evaluate(RunSequence sequence, int... order) {
    RunSequence.State state = sequence.start();
    for (int run : order) {
      state = sequence.after(state, run, false);
    }
    sequence.readingsAtEnd(state);
  }

  private static void assertSame(RandomJob job, Structure plain, double[] readings) {
    for (int i = 0; i < job.readings.size(); i++) {
      double expected = plain.reading(job.readings.get(i));
      assertThat(readings[i]).isCloseTo(expected, within(1e-10));
    }
  }
}
