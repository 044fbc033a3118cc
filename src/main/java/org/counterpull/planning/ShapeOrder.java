package org.counterpull.planning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.counterpull.contact.Contact;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.order.OrderPlanner;
import org.counterpull.order.WorkOrder;
import org.counterpull.plan.NamedOrder;
import org.counterpull.plan.PullAnswer;
import org.counterpull.plan.PullAnswer.Compared;
import org.counterpull.pulljob.PullJob;
import org.counterpull.weldment.Weldment;

/**
 * The order of runs that keeps the checks true.
 *
 * @param rules the order by the published rules
 * @param answer what the chosen order does to the shape
 */
record ShapeOrder(WorkOrder rules, PullAnswer answer) {
  /** Orders that the search looks at for a plan; the pull command looks as long as it is told. */
  private static final long EFFORT = 60;

  /** Gain in the worst check below which two orders are as good as each other. */
  private static final double WORTH = 0.05;

  /** Searches; empty where there is nothing to check. */
  static Optional<ShapeOrder> of(
      Weldment weldment,
      List<Contact> contacts,
      List<JointPlan> joints,
      WorkOrder rules,
      long seed) {
    if (weldment.checks().isEmpty()) {
      return Optional.empty();
    }
    List<String> byRules = rules.runs().stream().map(RunPlan::name).toList();
    return PullJob.planned(weldment, contacts, joints, byRules, seed)
        .map(job -> new ShapeOrder(rules, answer(job, weldment)));
  }

  private static PullAnswer answer(PullJob job, Weldment weldment) {
    if (weldment.order().isPresent()) {
      return job.answer(NamedOrder.WRITTEN, EFFORT, () -> false);
    }
    PullAnswer best = job.answer(NamedOrder.BEST, EFFORT, () -> false);
    boolean better = worst(best, NamedOrder.BEST) < worst(best, NamedOrder.RULES) - WORTH;
    return better ? best : job.answer(NamedOrder.RULES, EFFORT, () -> false);
  }

  private static double worst(PullAnswer answer, NamedOrder order) {
    return compared(answer, order).map(Compared::worst).orElse(Double.MAX_VALUE);
  }

  private static Optional<Compared> compared(PullAnswer answer, NamedOrder order) {
    return answer.orders().stream().filter(o -> o.order() == order).findFirst();
  }

  /** The work in that order, with its waits. */
  WorkOrder kept(
      OrderPlanner planner, Weldment weldment, List<Contact> contacts, List<JointPlan> joints) {
    if (answer.order() != NamedOrder.BEST) {
      List<String> reasons = new ArrayList<>(rules.orderReasons());
      reasons.add(0, why());
      return withRuns(rules, rules.runs(), reasons);
    }
    List<String> sequence = answer.sequence().stream().map(PullAnswer.Turn::run).toList();
    List<RunPlan> runs = new ArrayList<>(rules.runs());
    runs.sort(Comparator.comparingInt(run -> sequence.indexOf(run.name())));
    WorkOrder wanted = withRuns(rules, runs, List.of(why()));
    return planner.again(weldment, joints, contacts, wanted);
  }

  private static WorkOrder withRuns(WorkOrder order, List<RunPlan> runs, List<String> reasons) {
    return new WorkOrder(
        order.operations(), order.precedence(), runs, reasons, order.rules(), order.accessLost());
  }

  /** Why this order, in figures. */
  private String why() {
    List<String> others = new ArrayList<>();
    for (Compared other : answer.orders()) {
      if (other.order() != answer.order()) {
        others.add(
            String.format(
                Locale.ROOT,
                "%s %.2f (%.0f min)",
                other.order().words(),
                other.worst(),
                other.handlingMin()));
      }
    }
    Compared own = compared(answer, answer.order()).orElseThrow();
    String how =
        switch (answer.order()) {
          case BEST ->
              "This order was searched for the shape: its worst check comes to %.2f of its"
                  + " tolerance (turning and moving %.0f min); %s.";
          case RULES ->
              "The order by the rules is kept, no other was found that does better for the shape:"
                  + " its worst check comes to %.2f of its tolerance (turning and moving %.0f min);"
                  + " %s.";
          case WRITTEN, ONE_SIDE_FIRST, LEFT_TO_RIGHT ->
              "The order is kept as the file writes it: its worst check comes to %.2f of its"
                  + " tolerance (turning and moving %.0f min); %s.";
        };
    return String.format(
        Locale.ROOT, how, own.worst(), own.handlingMin(), String.join(", ", others));
  }
}
