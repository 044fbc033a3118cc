package org.counterpull.pulljob;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import org.counterpull.order.HandlingTimes;
import org.counterpull.pull.RunSequence;
import org.counterpull.pull.search.OrderEvaluator;
import org.counterpull.pull.search.Step;

/**
 * What an order costs: first the worst check in units of its tolerance, as long as it is above one
 * half, then the minutes that turning over and moving take. Differences of less than {@value
 * #TOLD_APART} of a tolerance are not told apart: the figures don't know them.
 */
final class ShapeCost implements OrderEvaluator<ShapeCost.State> {
  /** Worst check below which nothing is gained. */
  private static final double GOOD_ENOUGH = 0.5;

  private static final double TOLD_APART = 0.05;
  private static final double MORE_THAN_ALL_MINUTES = 1e5;
  private static final double SECONDS_A_MINUTE = 60;

  private final PullModel model;
  private final RunSequence sequence;

  ShapeCost(PullModel model, RunSequence sequence) {
    this.model = model;
    this.sequence = sequence;
  }

  /** The shape so far, the run before and the minutes spent. */
  record State(RunSequence.State shape, int lastRun, double minutes) {}

  @Override
  public State start() {
    return new State(sequence.start(), -1, 0);
  }

  @Override
  public State then(State before, Step step) {
    double minutes = before.lastRun < 0 ? 0 : minutes(before.lastRun, step.run());
    return new State(
        sequence.after(before.shape, step.run(), step.reversed()),
        step.run(),
        before.minutes + minutes);
  }

  private double minutes(int from, int to) {
    return minutes(model.runs().get(from), model.runs().get(to));
  }

  /** Turning over and moving between two runs, min. */
  static double minutes(PulledRun from, PulledRun to) {
    if (from.bench().isEmpty() || to.bench().isEmpty()) {
      return 0;
    }
    PulledRun.Bench one = from.bench().get();
    PulledRun.Bench other = to.bench().get();
    double seconds = one.place().equals(other.place()) ? 0 : HandlingTimes.moveS();
    seconds += one.lay() == other.lay() ? 0 : HandlingTimes.turnOverS();
    return seconds / SECONDS_A_MINUTE;
  }

  @Override
  public double cost(State whole) {
    return cost(sequence.readingsAtEnd(whole.shape), whole.minutes);
  }

  private double cost(double[] readings, double minutes) {
    double worst = worst(model.measures(), readings);
    double steps = Math.rint(Math.max(worst, GOOD_ENOUGH) / TOLD_APART);
    // A touch of the worst check itself keeps the search going down where steps are level.
    return steps * MORE_THAN_ALL_MINUTES + minutes + worst;
  }

  /** The worst check in units of its tolerance. */
  static double worst(List<Measure> measures, double[] readings) {
    double worst = 0;
    int first = 0;
    for (Measure measure : measures) {
      double value = Math.abs(measure.value(readings, first)) / measure.toleranceMm();
      worst = Math.max(worst, value);
      first += measure.readings();
    }
    return worst;
  }

  @Override
  public double[] carried(State state) {
    return sequence.carried(state.shape);
  }

  @Override
  public Optional<double[]> carriedIfKnown(BitSet done, double[] carried, Step step) {
    return sequence.carriedIfKnown(done, carried, step.run(), step.reversed());
  }

  @Override
  public double costOfCarried(double[] carried) {
    return cost(sequence.readingsAtEnd(carried), 0);
  }
}
