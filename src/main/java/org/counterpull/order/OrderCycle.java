package org.counterpull.order;

import java.util.List;

/**
 * Rules that none of them can be broken and that go round in a circle: a fault of the weldment's
 * design, not of the order.
 *
 * @param members the rules of the circle, each one's later step the next one's earlier step
 * @param remedies what would open the circle, in sentences
 */
public record OrderCycle(List<Precedence> members, List<String> remedies) implements OrderResult {
  public OrderCycle {
    members = List.copyOf(members);
    remedies = List.copyOf(remedies);
  }

  /** The circle in words, one sentence for each rule. */
  public List<String> inWords() {
    return members.stream()
        .map(p -> p.earlier() + " before " + p.later() + " (" + p.rule() + "): " + p.reason())
        .toList();
  }
}
