package org.counterpull.pull.search;

import java.util.List;
import java.util.function.BooleanSupplier;

/** Picks the search that fits: to the end where that is possible, else local. */
public final class OrderSearch {
  /** Up to so many runs of fixed directions every order is looked at. */
  public static final int PROVED_UP_TO = 8;

  private OrderSearch() {}

  /**
   * The best order that can be found.
   *
   * @param problem what is admissible
   * @param evaluator what it costs
   * @param starts orders to begin with: those of the published rules, the one as written
   * @param seed of the pseudo-random choices
   * @param effort evaluations at most; a search that can prove its answer doesn't stop there
   * @param stop true ends the search with the best so far
   */
  public static <S> FoundOrder best(
      OrderProblem problem,
      OrderEvaluator<S> evaluator,
      List<List<Step>> starts,
      long seed,
      long effort,
      BooleanSupplier stop) {
    if (problem.runs() <= PROVED_UP_TO && problem.directionsFixed()) {
      return new ExhaustiveSearch<>(problem, evaluator, stop).search();
    }
    return new LocalSearch<>(problem, evaluator, seed, effort, stop).search(starts);
  }
}
