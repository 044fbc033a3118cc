package org.counterpull.pull.search;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;

/**
 * The ways in which an order is changed a little: insertion, swap, reversal, turning a run round.
 */
final class Moves {
  private Moves() {}

  /** All admissible orders one move away, without repeats. */
  static List<List<Step>> neighbours(OrderProblem problem, List<Step> order) {
    Set<List<Step>> found = new LinkedHashSet<>();
    int n = order.size();
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        if (i != j) {
          found.add(inserted(order, i, j));
        }
        if (i < j) {
          found.add(swapped(order, i, j));
          found.add(reversed(order, i, j));
        }
      }
      if (problem.eitherWay(order.get(i).run())) {
        found.add(turned(order, i));
      }
    }
    found.remove(order);
    return found.stream().filter(problem::allows).toList();
  }

  /** One move at random; where precedence forbids it, repaired. */
  static List<Step> random(OrderProblem problem, List<Step> order, Random random) {
    int i = random.nextInt(order.size());
    int j = random.nextInt(order.size());
    List<Step> moved =
        switch (random.nextInt(4)) {
          case 0 -> swapped(order, i, j);
          case 1 -> reversed(order, Math.min(i, j), Math.max(i, j));
          case 2 ->
              problem.eitherWay(order.get(i).run()) ? turned(order, i) : inserted(order, i, j);
          default -> inserted(order, i, j);
        };
    return problem.repaired(moved);
  }

  /** An admissible order at random. */
  static List<Step> shuffled(OrderProblem problem, Random random) {
    List<Step> order = new ArrayList<>();
    for (int run = 0; run < problem.runs(); run++) {
      order.add(new Step(run, problem.eitherWay(run) && random.nextBoolean()));
    }
    Collections.shuffle(order, random);
    return problem.repaired(order);
  }

  private static List<Step> inserted(List<Step> order, int from, int to) {
    List<Step> moved = new ArrayList<>(order);
    moved.add(to, moved.remove(from));
    return moved;
  }

  private static List<Step> swapped(List<Step> order, int i, int j) {
    List<Step> moved = new ArrayList<>(order);
    Collections.swap(moved, i, j);
    return moved;
  }

  private static List<Step> reversed(List<Step> order, int from, int to) {
    List<Step> moved = new ArrayList<>(order);
    Collections.reverse(moved.subList(from, to + 1));
    return moved;
  }

  private static List<Step> turned(List<Step> order, int at) {
    List<Step> moved = new ArrayList<>(order);
    Step step = order.get(at);
    moved.set(at, new Step(step.run(), !step.reversed()));
    return moved;
  }
}
