package org.counterpull.pull.search;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;

/** How many runs there are, which come before which, and which may be welded either way. */
public final class OrderProblem {
  private final List<BitSet> before = new ArrayList<>();
  private final boolean[] eitherWay;

  /** A pair of runs of which the first comes first. */
  public record Before(int earlier, int later) {}

  /**
   * A problem.
   *
   * @param eitherWay for each run whether its direction is free
   * @param precedence what must come before what; must have no cycle
   */
  public OrderProblem(List<Boolean> eitherWay, List<Before> precedence) {
    this.eitherWay = new boolean[eitherWay.size()];
    for (int i = 0; i < this.eitherWay.length; i++) {
      this.eitherWay[i] = eitherWay.get(i);
      before.add(new BitSet());
    }
    precedence.forEach(pair -> before.get(pair.later()).set(pair.earlier()));
    firstOrder();
  }

  /** Any order, directions as drawn. */
  public static OrderProblem free(int runs) {
    return new OrderProblem(Collections.nCopies(runs, false), List.of());
  }

  /** How many runs. */
  public int runs() {
    return eitherWay.length;
  }

  /** True when a run may be welded from either end. */
  public boolean eitherWay(int run) {
    return eitherWay[run];
  }

  /** True when no run may be turned round. */
  public boolean directionsFixed() {
    for (boolean one : eitherWay) {
      if (one) {
        return false;
      }
    }
    return true;
  }

  /** True when all that must come before a run is done. */
  public boolean ready(int run, BitSet done) {
    BitSet missing = (BitSet) before.get(run).clone();
    missing.andNot(done);
    return missing.isEmpty();
  }

  /** True when an order breaks no precedence and turns no run that mustn't be. */
  public boolean allows(List<Step> order) {
    BitSet done = new BitSet();
    for (Step step : order) {
      boolean turned = step.reversed() && !eitherWay[step.run()];
      if (turned || done.get(step.run()) || !ready(step.run(), done)) {
        return false;
      }
      done.set(step.run());
    }
    return order.size() == runs();
  }

  /** The runs by their numbers as far as precedence lets them. */
  public List<Step> firstOrder() {
    List<Integer> numbers = new ArrayList<>();
    for (int i = 0; i < runs(); i++) {
      numbers.add(i);
    }
    List<Step> steps = numbers.stream().map(run -> new Step(run, false)).toList();
    return repaired(steps);
  }

  /** The same order with each run put off until what must precede it is done. */
  public List<Step> repaired(List<Step> order) {
    List<Step> waiting = new ArrayList<>(order);
    List<Step> repaired = new ArrayList<>();
    BitSet done = new BitSet();
    while (!waiting.isEmpty()) {
      int next = 0;
      while (next < waiting.size() && !ready(waiting.get(next).run(), done)) {
        next++;
      }
      if (next == waiting.size()) {
        throw new IllegalArgumentException("the runs " + waiting + " wait for each other");
      }
      Step step = waiting.remove(next);
      done.set(step.run());
      repaired.add(step);
    }
    return repaired;
  }
}
