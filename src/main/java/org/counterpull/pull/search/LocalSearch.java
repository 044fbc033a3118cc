package org.counterpull.pull.search;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.BooleanSupplier;

/**
 * Seeded iterated local search over orders and directions.
 *
 * <p>It starts from the orders that it is given. Up to sixteen runs it then evaluates the orders
 * that {@link LearnedEffects} likes best, learning from each; where a third of the effort can show
 * every effect that there is, it lets them be shown first. It goes on from the best order to the
 * first better neighbour until none is left, shakes the best order and starts again. The same seed
 * and effort give the same answer. An order that was seen before isn't evaluated again.
 *
 * <p>Source of the scheme: H. R. Lourenco, O. C. Martin, T. Stutzle, Iterated local search, 2003
 * (from memory).
 */
public final class LocalSearch<S> {
  private static final int LEARNED_UP_TO = 16;
  private static final double GUESSED_SHARE = 0.8;
  private static final double COVERABLE_SHARE = 0.3;
  private static final int GUESSED_STARTS = 4;
  private static final int GUESSED_MOVES = 100;
  private static final int MOST_IDLE = 1000;

  private final OrderProblem problem;
  private final OrderEvaluator<S> evaluator;
  private final long effort;
  private final Random random;
  private final BooleanSupplier stop;
  private final Map<List<Step>, Double> seen = new HashMap<>();
  private final List<Step> lastOrder = new ArrayList<>();
  private final List<S> lastStates = new ArrayList<>();
  private Optional<LearnedEffects<S>> learned = Optional.empty();
  private List<Step> best = List.of();
  private double bestCost = Double.POSITIVE_INFINITY;
  private long evaluations;
  private boolean interrupted;

  /**
   * A search.
   *
   * @param problem what is admissible
   * @param evaluator what it costs
   * @param seed of the pseudo-random choices
   * @param effort evaluations at most, at least one
   * @param stop asked before each evaluation; true ends the search with the best so far
   */
  public LocalSearch(
      OrderProblem problem,
      OrderEvaluator<S> evaluator,
      long seed,
      long effort,
      BooleanSupplier stop) {
    this.problem = problem;
    this.evaluator = evaluator;
    this.effort = Math.max(1, effort);
    this.random = new Random(seed);
    this.stop = stop;
  }

  /** Searches from the given orders on; the admissible ones are evaluated first, in turn. */
  public FoundOrder search(List<List<Step>> given) {
    List<List<Step>> starts = new ArrayList<>();
    given.forEach(order -> starts.add(problem.repaired(order)));
    if (starts.isEmpty()) {
      starts.add(problem.firstOrder());
    }
    starts.forEach(this::cost);
    if (problem.runs() <= LEARNED_UP_TO && more()) {
      learned = Optional.of(new LearnedEffects<>(problem, evaluator));
      evaluations += (learned.get().steps() + problem.runs() - 1) / problem.runs();
      followGuesses(learned.get());
    }
    descend(best);
    int idle = 0;
    while (more() && idle < MOST_IDLE) {
      long before = evaluations;
      descend(shaken());
      idle = evaluations == before ? idle + 1 : 0;
    }
    return new FoundOrder(best, bestCost, false, evaluations, interrupted);
  }

  private List<Step> shaken() {
    List<Step> order = best;
    int kicks = 2 + random.nextInt(Math.max(1, Math.min(4, problem.runs() / 2)));
    for (int k = 0; k < kicks; k++) {
      order = Moves.random(problem, order, random);
    }
    return order;
  }

  /** Evaluates, again and again, the order that what was learned so far likes best. */
  private void followGuesses(LearnedEffects<S> guess) {
    if (guess.count() <= COVERABLE_SHARE * effort * problem.runs()) {
      List<Step> revealing = guess.revealing(random);
      while (more() && !revealing.isEmpty()) {
        cost(revealing);
        revealing = guess.revealing(random);
      }
    }
    long until = evaluations + (long) ((effort - evaluations) * GUESSED_SHARE);
    while (more() && evaluations < until) {
      Candidate candidate = new Candidate();
      for (int start = 0; start < GUESSED_STARTS; start++) {
        List<Step> from = start % 2 == 0 ? shaken() : Moves.shuffled(problem, random);
        guessedClimb(guess, from, candidate);
      }
      if (candidate.order.isEmpty()) {
        return;
      }
      cost(candidate.order);
    }
  }

  private void guessedClimb(LearnedEffects<S> guess, List<Step> from, Candidate candidate) {
    List<Step> order = from;
    double cost = guess.costOf(order);
    candidate.offer(order, cost);
    for (int move = 0; move < GUESSED_MOVES; move++) {
      List<Step> next = Moves.random(problem, order, random);
      double nextCost = guess.costOf(next);
      candidate.offer(next, nextCost);
      if (nextCost < cost) {
        order = next;
        cost = nextCost;
      }
    }
  }

  /** The order not evaluated yet that is guessed to cost least. */
  private final class Candidate {
    private List<Step> order = List.of();
    private double cost = Double.POSITIVE_INFINITY;

    void offer(List<Step> other, double otherCost) {
      if (otherCost < cost && !seen.containsKey(other)) {
        order = other;
        cost = otherCost;
      }
    }
  }

  private boolean more() {
    return evaluations < effort && !interrupted;
  }

  private void descend(List<Step> start) {
    List<Step> order = start;
    double cost = cost(order);
    boolean better = true;
    while (better && more()) {
      better = false;
      List<List<Step>> neighbours = new ArrayList<>(Moves.neighbours(problem, order));
      Collections.shuffle(neighbours, random);
      for (List<Step> next : neighbours) {
        double nextCost = cost(next);
        if (nextCost < cost) {
          order = next;
          cost = nextCost;
          better = true;
          break;
        }
        if (!more()) {
          break;
        }
      }
    }
  }

  /** Cost of an order; infinite once the effort is used up, except for the very first. */
  private double cost(List<Step> order) {
    Double known = seen.get(order);
    if (known != null) {
      return known;
    }
    interrupted |= !best.isEmpty() && stop.getAsBoolean();
    if (!best.isEmpty() && !more()) {
      return Double.POSITIVE_INFINITY;
    }
    evaluations++;
    double cost = evaluator.cost(stateAfter(order));
    seen.put(List.copyOf(order), cost);
    learned.ifPresent(guess -> guess.learn(lastOrder, lastStates));
    if (best.isEmpty() || cost < bestCost) {
      best = List.copyOf(order);
      bestCost = cost;
    }
    return cost;
  }

  /** States of the last order are kept: an order with the same beginning goes on from there. */
  private S stateAfter(List<Step> order) {
    int same = 0;
    while (same < lastOrder.size() && lastOrder.get(same).equals(order.get(same))) {
      same++;
    }
    lastOrder.subList(same, lastOrder.size()).clear();
    lastStates.subList(same, lastStates.size()).clear();
    S state = same == 0 ? evaluator.start() : lastStates.get(same - 1);
    for (Step step : order.subList(same, order.size())) {
      state = evaluator.then(state, step);
      lastOrder.add(step);
      lastStates.add(state);
    }
    return state;
  }
}
