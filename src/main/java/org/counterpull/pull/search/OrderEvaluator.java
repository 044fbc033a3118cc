package org.counterpull.pull.search;

import java.util.BitSet;
import java.util.Optional;

/**
 * What an order costs, built up run by run so that orders with the same beginning share it.
 *
 * @param <S> what is known after some runs; never changed once handed out
 */
public interface OrderEvaluator<S> {

  /** Before the first run. */
  S start();

  /** After one more run. */
  S then(S before, Step step);

  /** Cost of a whole order; smaller is better. */
  double cost(S whole);

  /** A cost that no whole order with this beginning can undercut. */
  default double bound(S part) {
    return Double.NEGATIVE_INFINITY;
  }

  /** Numbers that each run adds to and that the cost is made of, as they stand after some runs. */
  double[] carried(S state);

  /**
   * The numbers after one more run, where that costs next to nothing because the run was worked out
   * before on the same set of runs; empty where it would have to be worked out.
   *
   * @param done runs before, in whatever order
   * @param carried numbers after them
   */
  default Optional<double[]> carriedIfKnown(BitSet done, double[] carried, Step step) {
    return Optional.empty();
  }

  /**
   * About what a whole order costs that ends with these numbers; used to guess where to look, and
   * only after a whole order was evaluated.
   */
  double costOfCarried(double[] carried);
}
