package org.counterpull.pull.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.counterpull.pull.RandomJob;
import org.junit.jupiter.api.Test;

/** The search against exhaustion, precedence, interruption and itself. */
class OrderSearchTest {
  private static final long ALL_ORDERS_OF_SEVEN = 5040;

  private static WorstCheck evaluator(RandomJob job) {
    return new WorstCheck(job.sequence(), List.of(0.5, 0.5, 0.5));
  }

  // Twenty random jobs of seven runs: the proved optimum with at most 5 % of all orders evaluated.
  @Test
  void findsTheProvedOptimumOfSevenRunsWithFivePercentOfTheOrders() {
    List<Long> missed = new ArrayList<>();
    for (long seed = 1; seed <= 20; seed++) {
      OrderProblem problem = OrderProblem.free(7);
      RandomJob job = new RandomJob(seed, 4, 7);
      FoundOrder proved = new ExhaustiveSearch<>(problem, evaluator(job), () -> false).search();
      assertThat(proved.proved()).isTrue();
      assertThat(proved.evaluations()).isEqualTo(ALL_ORDERS_OF_SEVEN);
      FoundOrder found =
          new LocalSearch<>(problem, evaluator(job), 1, ALL_ORDERS_OF_SEVEN / 20, () -> false)
              .search(List.of());
      assertThat(found.evaluations()).isLessThanOrEqualTo(ALL_ORDERS_OF_SEVEN / 20);
      if (found.cost() > proved.cost() * (1 + 1e-9)) {
        missed.add(seed);
      }
    }
    assertThat(missed).isEmpty();
  }

  @Test
  void precedenceIsKeptAndProvedWithin() {
    List<OrderProblem.Before> before =
        List.of(new OrderProblem.Before(4, 0), new OrderProblem.Before(2, 4));
    OrderProblem problem = new OrderProblem(Collections.nCopies(5, false), before);
    FoundOrder found =
        OrderSearch.best(problem, evaluator(new RandomJob(3, 4, 5)), List.of(), 1, 10, () -> false);
    assertThat(found.proved()).isTrue();
    // Of the 120 orders of five, a chain of three leaves a sixth.
    assertThat(found.evaluations()).isEqualTo(20);
    assertThat(problem.allows(found.order())).isTrue();
  }

  // Delay of eight jobs: the sum of finishing times, shortest first is best (W. E. Smith 1956).
  // What is
  // already sure bounds the rest, so most orders are never evaluated and the answer is still
  // proved.
  @Test
  void boundedAwayIsProvedToo() {
    double[] duration = {5, 3, 8, 1, 9, 2, 7, 4};
    Delay delay = new Delay(duration);
    FoundOrder found = OrderSearch.best(OrderProblem.free(8), delay, List.of(), 1, 10, () -> false);
    assertThat(found.proved()).isTrue();
    assertThat(found.order().stream().map(Step::run).toList())
        .containsExactly(3, 5, 1, 7, 0, 6, 2, 4);
    assertThat(found.evaluations()).isLessThan(40_320 / 10);
  }

  /**
   * Time so far, sum of finishing times, jobs left and their work: each job left ends no sooner
   * than now plus its own duration.
   */
  private record Delay(double[] duration) implements OrderEvaluator<double[]> {
    @Override
    public double[] start() {
      return new double[] {0, 0, duration.length, Arrays.stream(duration).sum()};
    }

    @Override
    public double[] then(double[] before, Step step) {
      double time = before[0] + duration[step.run()];
      double left = before[3] - duration[step.run()];
      return new double[] {time, before[1] + time, before[2] - 1, left};
    }

    @Override
    public double cost(double[] whole) {
      return whole[1];
    }

    @Override
    public double bound(double[] part) {
      return part[1] + part[2] * part[0] + part[3];
    }

    @Override
    public double[] carried(double[] state) {
      return state.clone();
    }

    @Override
    public double costOfCarried(double[] carried) {
      return carried[1];
    }
  }

  @Test
  void aCycleIsRefusedWithItsMembers() {
    List<OrderProblem.Before> cycle =
        List.of(new OrderProblem.Before(0, 1), new OrderProblem.Before(1, 0));
    assertThatThrownBy(() -> new OrderProblem(List.of(false, false, false), cycle))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("run=0")
        .hasMessageContaining("run=1");
  }

  // The orders of the published rules are the starts; twenty restarts of descent by swaps get the
  // same number of evaluations.
  @Test
  void neverWorseThanRulesAndSwapDescentAtEqualEvaluationsAndOftenBetter() {
    int runs = 10;
    int effort = 600;
    int better = 0;
    OrderProblem problem = OrderProblem.free(runs);
    for (long seed = 1; seed <= 5; seed++) {
      WorstCheck evaluator = evaluator(new RandomJob(seed, 6, runs));
      List<List<Step>> rules = rules(runs);
      FoundOrder found = OrderSearch.best(problem, evaluator, rules, seed, effort, () -> false);
      assertThat(found.proved()).isFalse();
      assertThat(found.evaluations()).isLessThanOrEqualTo(effort);
      for (List<Step> rule : rules) {
        assertThat(found.cost()).isLessThanOrEqualTo(cost(evaluator, rule));
      }
      double descent = swapDescent(evaluator, runs, effort, seed);
      assertThat(found.cost()).as("seed " + seed).isLessThanOrEqualTo(descent * (1 + 1e-12));
      better += found.cost() < descent * (1 - 1e-9) ? 1 : 0;
    }
    assertThat(better).isGreaterThanOrEqualTo(2);
  }

  /** One after the other, from the middle outwards, and ends in turn. */
  private static List<List<Step>> rules(int runs) {
    List<Step> along = new ArrayList<>(OrderProblem.free(runs).firstOrder());
    List<Step> outwards = new ArrayList<>();
    List<Step> inwards = new ArrayList<>();
    for (int k = 0; k < runs; k++) {
      int aside = k % 2 == 0 ? k / 2 : -(k + 1) / 2;
      outwards.add(along.get(runs / 2 + aside));
      inwards.add(along.get(k % 2 == 0 ? k / 2 : runs - 1 - k / 2));
    }
    return List.of(along, outwards, inwards);
  }

  @Test
  void freeDirectionsAreUsed() {
    int runs = 9;
    OrderProblem fixed = OrderProblem.free(runs);
    OrderProblem either = new OrderProblem(Collections.nCopies(runs, true), List.of());
    RandomJob job = new RandomJob(5, 5, runs);
    FoundOrder asDrawn = OrderSearch.best(fixed, evaluator(job), List.of(), 1, 600, () -> false);
    FoundOrder turned =
        OrderSearch.best(either, evaluator(job), List.of(asDrawn.order()), 1, 600, () -> false);
    assertThat(turned.cost()).isLessThan(asDrawn.cost());
    assertThat(turned.order()).anyMatch(Step::reversed);
  }

  @Test
  void sameSeedSameAnswer() {
    OrderProblem problem = OrderProblem.free(10);
    FoundOrder one =
        OrderSearch.best(
            problem, evaluator(new RandomJob(9, 5, 10)), List.of(), 4, 300, () -> false);
    FoundOrder other =
        OrderSearch.best(
            problem, evaluator(new RandomJob(9, 5, 10)), List.of(), 4, 300, () -> false);
    assertThat(other).isEqualTo(one);
    assertThat(one.evaluations()).isEqualTo(300);
  }

  @Test
  void interruptedItKeepsTheBestSoFar() {
    OrderProblem problem = OrderProblem.free(10);
    int[] asked = {0};
    FoundOrder found =
        OrderSearch.best(
            problem,
            evaluator(new RandomJob(9, 5, 10)),
            List.of(),
            4,
            10_000,
            () -> ++asked[0] > 20);
    assertThat(found.interrupted()).isTrue();
    assertThat(found.evaluations()).isLessThan(100);
    assertThat(problem.allows(found.order())).isTrue();
    assertThat(found.cost())
        .isCloseTo(cost(evaluator(new RandomJob(9, 5, 10)), found.order()), within(1e-12));
  }

  private static <S> double cost(OrderEvaluator<S> evaluator, List<Step> order) {
    S state = evaluator.start();
    for (Step step : order) {
      state = evaluator.then(state, step);
    }
    return evaluator.cost(state);
  }

  /** Twenty restarts of descent by swapping two runs, within the given number of evaluations. */
  private static <S> double swapDescent(
      OrderEvaluator<S> evaluator, int runs, int effort, long seed) {
    Random random = new Random(seed);
    double best = Double.POSITIVE_INFINITY;
    int used = 0;
    for (int restart = 0; restart < 20 && used < effort; restart++) {
      List<Step> order = new ArrayList<>(OrderProblem.free(runs).firstOrder());
      Collections.shuffle(order, random);
      double cost = cost(evaluator, order);
      used++;
      boolean better = true;
      while (better) {
        better = false;
        for (int i = 0; i < runs && used < effort; i++) {
          for (int j = i + 1; j < runs && used < effort; j++) {
            Collections.swap(order, i, j);
            double next = cost(evaluator, order);
            used++;
            if (next < cost) {
              cost = next;
              better = true;
            } else {
              Collections.swap(order, i, j);
            }
          }
        }
      }
      best = Math.min(best, cost);
    }
    return best;
  }
}
