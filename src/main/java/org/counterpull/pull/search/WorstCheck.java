package org.counterpull.pull.search;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import org.counterpull.pull.RunSequence;

/** Evaluates an order by its worst reading over that reading's tolerance, once fixtures are off. */
public final class WorstCheck implements OrderEvaluator<RunSequence.State> {
  private final RunSequence sequence;
  private final double[] tolerances;

  /**
   * An evaluator.
   *
   * @param sequence what runs do
   * @param tolerances for each reading, mm or rad, above zero; infinite for one that doesn't count
   */
  public WorstCheck(RunSequence sequence, List<Double> tolerances) {
    this.sequence = sequence;
    this.tolerances = tolerances.stream().mapToDouble(Double::doubleValue).toArray();
    for (double tolerance : this.tolerances) {
      if (!(tolerance > 0)) {
        throw new IllegalArgumentException("tolerance " + tolerance + " must be above zero");
      }
    }
  }

  @Override
  public RunSequence.State start() {
    return sequence.start();
  }

  @Override
  public RunSequence.State then(RunSequence.State before, Step step) {
    return sequence.after(before, step.run(), step.reversed());
  }

  @Override
  public double cost(RunSequence.State whole) {
    return worst(sequence.readingsAtEnd(whole));
  }

  @Override
  public double[] carried(RunSequence.State state) {
    return sequence.carried(state);
  }

  @Override
  public Optional<double[]> carriedIfKnown(BitSet done, double[] carried, Step step) {
    return sequence.carriedIfKnown(done, carried, step.run(), step.reversed());
  }

  @Override
  public double costOfCarried(double[] carried) {
    return worst(sequence.readingsAtEnd(carried));
  }

  private double worst(double[] readings) {
    double worst = 0;
    for (int i = 0; i < tolerances.length; i++) {
      worst = Math.max(worst, Math.abs(readings[i]) / tolerances[i]);
    }
    return worst;
  }
}
