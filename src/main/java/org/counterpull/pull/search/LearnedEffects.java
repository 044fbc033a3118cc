package org.counterpull.pull.search;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/**
 * A guess of what an order costs, from what the orders that were evaluated have shown.
 *
 * <p>What a run does depends on the set of runs before it. Every evaluated order shows that effect
 * for as many sets as it has runs. Where a set has not been seen, the effect is guessed from pairs
 * (what the run does alone, and what it does differently for each run that is already there) and
 * corrected by how far that guess was off for sets of the same size. Pairwise effects as a
 * surrogate for the choice of an order are published: I. Voutchkov et al., 2005 (title read).
 */
final class LearnedEffects<S> {
  private static final int REVEALING_ATTEMPTS = 20;

  private final OrderProblem problem;
  private final OrderEvaluator<S> evaluator;
  private final double[] atStart;
  private final double[][][] alone;
  private final double[][][][] change;
  private final Map<Off, double[]> sumOff = new HashMap<>();
  private final Map<Off, Integer> countOff = new HashMap<>();
  private long steps;

  private record Off(int before, Step step) {}

  /** Pairs are worked out at once: runs squared steps. */
  LearnedEffects(OrderProblem problem, OrderEvaluator<S> evaluator) {
    this.problem = problem;
    this.evaluator = evaluator;
    int n = problem.runs();
    S start = evaluator.start();
    atStart = evaluator.carried(start);
    alone = new double[n][][];
    change = new double[n][n][][];
    for (int run = 0; run < n; run++) {
      alone[run] = effects(start, run);
    }
    for (int first = 0; first < n; first++) {
      S after = evaluator.then(start, new Step(first, false));
      for (int run = 0; run < n; run++) {
        if (run != first) {
          double[][] effects = effects(after, run);
          for (int way = 0; way < effects.length; way++) {
            effects[way] = minus(effects[way], alone[run][way]);
          }
          change[first][run] = effects;
        }
      }
    }
  }

  /** Steps that the pairs took. */
  long steps() {
    return steps;
  }

  /** Takes in what an evaluated order has shown; one state after each of its runs. */
  void learn(List<Step> order, List<S> states) {
    BitSet before = new BitSet();
    double[] carried = atStart;
    for (int i = 0; i < order.size(); i++) {
      Step step = order.get(i);
      double[] after = evaluator.carried(states.get(i));
      Off off = new Off(i, step);
      double[] error = minus(minus(after, carried), fromPairs(before, step));
      sumOff.merge(off, error, LearnedEffects::plus);
      countOff.merge(off, 1, Integer::sum);
      carried = after;
      before.set(step.run());
    }
  }

  /** What the order would cost. */
  double costOf(List<Step> order) {
    double[] sum = atStart.clone();
    BitSet before = new BitSet();
    for (Step step : order) {
      Optional<double[]> known = evaluator.carriedIfKnown(before, sum, step);
      if (known.isPresent()) {
        sum = known.get();
      } else {
        add(sum, fromPairs(before, step), 1);
        Off off = new Off(before.cardinality(), step);
        int count = countOff.getOrDefault(off, 0);
        if (count > 0) {
          add(sum, sumOff.get(off), 1.0 / count);
        }
      }
      before.set(step.run());
    }
    return evaluator.costOfCarried(sum);
  }

  /** How many effects there are: each run each way after each set of the others. */
  double count() {
    double ways = 0;
    for (double[][] one : alone) {
      ways += one.length;
    }
    return ways * Math.pow(2, problem.runs() - 1.0);
  }

  /** An order made to show as many effects as it can that have not been seen. */
  List<Step> revealing(Random random) {
    List<Step> most = List.of();
    int mostUnseen = -1;
    for (int attempt = 0; attempt < REVEALING_ATTEMPTS; attempt++) {
      List<Step> order = new ArrayList<>();
      int unseen = 0;
      BitSet before = new BitSet();
      while (order.size() < problem.runs()) {
        Step next = pick(unseenFirst(before), random);
        unseen += seen(before, next) ? 0 : 1;
        order.add(next);
        before.set(next.run());
      }
      if (unseen > mostUnseen) {
        mostUnseen = unseen;
        most = order;
      }
    }
    return mostUnseen > 0 ? most : List.of();
  }

  /** Steps that may come next: those not seen there, or all when all have been. */
  private List<Step> unseenFirst(BitSet before) {
    List<Step> ready = new ArrayList<>();
    for (int run = 0; run < problem.runs(); run++) {
      if (!before.get(run) && problem.ready(run, before)) {
        ready.add(new Step(run, false));
        if (problem.eitherWay(run)) {
          ready.add(new Step(run, true));
        }
      }
    }
    List<Step> unseen = ready.stream().filter(step -> !seen(before, step)).toList();
    return unseen.isEmpty() ? ready : unseen;
  }

  private boolean seen(BitSet before, Step step) {
    return evaluator.carriedIfKnown(before, atStart, step).isPresent();
  }

  private static Step pick(List<Step> steps, Random random) {
    return steps.get(random.nextInt(steps.size()));
  }

  private double[] fromPairs(BitSet before, Step step) {
    int way = step.reversed() ? 1 : 0;
    double[] sum = alone[step.run()][way].clone();
    for (int d = before.nextSetBit(0); d >= 0; d = before.nextSetBit(d + 1)) {
      add(sum, change[d][step.run()][way], 1);
    }
    return sum;
  }

  private double[][] effects(S before, int run) {
    double[][] effects = new double[problem.eitherWay(run) ? 2 : 1][];
    double[] carried = evaluator.carried(before);
    for (int way = 0; way < effects.length; way++) {
      S after = evaluator.then(before, new Step(run, way == 1));
      effects[way] = minus(evaluator.carried(after), carried);
      steps++;
    }
    return effects;
  }

  private static double[] minus(double[] a, double[] b) {
    double[] difference = a.clone();
    add(difference, b, -1);
    return difference;
  }

  private static double[] plus(double[] a, double[] b) {
    double[] sum = a.clone();
    add(sum, b, 1);
    return sum;
  }

  private static void add(double[] sum, double[] other, double factor) {
    for (int i = 0; i < sum.length; i++) {
      sum[i] += factor * other[i];
    }
  }
}
