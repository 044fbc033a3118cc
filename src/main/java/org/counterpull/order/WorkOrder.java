package org.counterpull.order;

import java.util.List;
import org.counterpull.jointplan.RunPlan;

/**
 * The work in order.
 *
 * @param operations every step with its times, in the order of work
 * @param precedence every rule that bound the order
 * @param runs in the order in which they are welded
 * @param orderReasons why the runs are in this order, in sentences
 * @param rules every rule that had a say
 * @param accessLost what no tool gets to any more after which step
 */
public record WorkOrder(
    List<Timed> operations,
    List<Precedence> precedence,
    List<RunPlan> runs,
    List<String> orderReasons,
    List<AppliedRule> rules,
    List<AccessLost> accessLost)
    implements OrderResult {
  public WorkOrder {
    operations = List.copyOf(operations);
    precedence = List.copyOf(precedence);
    runs = List.copyOf(runs);
    orderReasons = List.copyOf(orderReasons);
    rules = List.copyOf(rules);
    accessLost = List.copyOf(accessLost);
  }

  /** From the beginning to the end of the last step, s. */
  public double elapsedS() {
    return operations.stream().mapToDouble(Timed::endS).max().orElse(0);
  }

  /** All waits together, s: those between runs and those for the work to cool. */
  public double waitS() {
    return operations.stream()
        .filter(
            o ->
                o.operation().kind() == Operation.Kind.WAIT
                    || o.operation().kind() == Operation.Kind.COOL)
        .mapToDouble(o -> o.endS() - o.startS())
        .sum();
  }
}
