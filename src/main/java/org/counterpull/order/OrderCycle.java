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
        .map(
            p ->
                words(p.earlier())
                    + " before "
                    + words(p.later())
                    + " ("
                    + p.rule()
                    + "): "
                    + p.reason())
        .toList();
  }

  /** {@code fit-pin:eyes} as {@code fit pin eyes}. */
  static String words(String id) {
    int colon = id.indexOf(':');
    String sort = colon < 0 ? id : id.substring(0, colon);
    return sort.replace('-', ' ') + (colon < 0 ? "" : " " + id.substring(colon + 1));
  }
}
