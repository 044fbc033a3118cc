package org.counterpull.pull.search;

import java.util.List;

/**
 * What a search found.
 *
 * @param order the best order
 * @param cost its cost
 * @param proved true when every admissible order was evaluated or bounded away
 * @param evaluations how many orders were evaluated, also in part; work on beginnings alone is
 *     counted by its runs over the runs of an order
 * @param interrupted true when it was stopped before its effort was used up
 */
public record FoundOrder(
    List<Step> order, double cost, boolean proved, long evaluations, boolean interrupted) {
  public FoundOrder {
    order = List.copyOf(order);
  }
}
