package org.counterpull.pull.search;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * Every admissible order, or a proof that a beginning can't lead to a better one.
 *
 * <p>Depth first, runs by number, so ties go to the first in that order. Cost: n! orders at worst;
 * meant for up to eight runs.
 */
public final class ExhaustiveSearch<S> {
  private final OrderProblem problem;
  private final OrderEvaluator<S> evaluator;
  private final BooleanSupplier stop;
  private List<Step> best = List.of();
  private double bestCost = Double.POSITIVE_INFINITY;
  private long evaluations;
  private boolean interrupted;

  /** {@code stop} is asked before each order; true ends the search with the best so far. */
  public ExhaustiveSearch(OrderProblem problem, OrderEvaluator<S> evaluator, BooleanSupplier stop) {
    this.problem = problem;
    this.evaluator = evaluator;
    this.stop = stop;
  }

  /** Searches. */
  public FoundOrder search() {
    best = problem.firstOrder();
    S state = evaluator.start();
    for (Step step : best) {
      state = evaluator.then(state, step);
    }
    bestCost = evaluator.cost(state);
    extend(evaluator.start(), new ArrayList<>(), new BitSet());
    return new FoundOrder(best, bestCost, !interrupted, evaluations, interrupted);
  }

  private void extend(S state, List<Step> order, BitSet done) {
    if (order.size() == problem.runs()) {
      evaluations++;
      double cost = evaluator.cost(state);
      if (cost < bestCost) {
        bestCost = cost;
        best = List.copyOf(order);
      }
      interrupted |= stop.getAsBoolean();
      return;
    }
    if (evaluator.bound(state) >= bestCost) {
      return;
    }
    for (int run = 0; run < problem.runs() && !interrupted; run++) {
      if (!done.get(run) && problem.ready(run, done)) {
        with(state, order, done, new Step(run, false));
        if (problem.eitherWay(run)) {
          with(state, order, done, new Step(run, true));
        }
      }
    }
  }

  private void with(S state, List<Step> order, BitSet done, Step step) {
    order.add(step);
    done.set(step.run());
    extend(evaluator.then(state, step), order, done);
    done.clear(step.run());
    order.remove(order.size() - 1);
  }
}
