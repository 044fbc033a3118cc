package org.counterpull.planning;

import java.util.List;
import java.util.Optional;
import org.counterpull.contact.Contact;
import org.counterpull.heat.solve.Progress;
import org.counterpull.heatjob.Resolution;
import org.counterpull.heatjob.SuperposedWaits;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.order.AskedStep;
import org.counterpull.order.DutyCycles;
import org.counterpull.order.HeatLedger;
import org.counterpull.order.OrderCycle;
import org.counterpull.order.OrderPlanner;
import org.counterpull.order.OrderResult;
import org.counterpull.order.WaitModel;
import org.counterpull.order.WorkOrder;
import org.counterpull.plan.PlanHeat;
import org.counterpull.plan.PullAnswer;
import org.counterpull.weldment.Weldment;

/**
 * The work in order: first by the rules, then for the shape, then with the waits that hold in the
 * full heat model.
 *
 * @param order the work; empty where rules go round in a circle
 * @param cycle that circle
 * @param heat temperatures in that order; empty where no full model was asked for
 * @param shape what that order does to the shape; empty without checks
 */
record OrderedWork(
    WorkOrder order,
    Optional<OrderCycle> cycle,
    Optional<PlanHeat> heat,
    Optional<PullAnswer> shape) {

  /** What is to be put in order. */
  record Job(Weldment weldment, List<Contact> contacts, List<JointPlan> joints, long seed) {
    private boolean anyPass() {
      return joints.stream()
          .flatMap(joint -> joint.runs().stream())
          .anyMatch(run -> !run.passes().isEmpty());
    }
  }

  /**
   * Puts it in order.
   *
   * @param byLedger the order by the rules with waits by closed forms
   * @param asked steps that a way of fastening asks for
   */
  static OrderedWork of(
      Job job, OrderResult byLedger, List<AskedStep> asked, Engines engines, Progress progress) {
    Optional<Resolution> heated = engines.waits().filter(r -> job.anyPass());
    Optional<SuperposedWaits> superposed =
        heated.map(r -> SuperposedWaits.of(job.weldment(), job.contacts(), job.joints()));
    OrderPlanner planner = planner(job, superposed, asked);
    OrderResult byRules =
        superposed.isEmpty() && asked.isEmpty()
            ? byLedger
            : planner.plan(job.weldment(), job.joints(), job.contacts());
    if (byRules instanceof OrderCycle cycle) {
      WorkOrder none =
          new WorkOrder(List.of(), cycle.members(), List.of(), List.of(), List.of(), List.of());
      return new OrderedWork(none, Optional.of(cycle), Optional.empty(), Optional.empty());
    }
    WorkOrder rules = (WorkOrder) byRules;
    Optional<ShapeOrder> shaped =
        ShapeOrder.of(job.weldment(), job.contacts(), job.joints(), rules, job.seed());
    WorkOrder order =
        shaped
            .map(s -> s.kept(planner, job.weldment(), job.contacts(), job.joints()))
            .orElse(rules);
    Optional<PullAnswer> shape = shaped.map(ShapeOrder::answer);
    if (superposed.isEmpty()) {
      return new OrderedWork(order, Optional.empty(), Optional.empty(), shape);
    }
    Verification.Verified verified =
        new Verification(
                job.weldment(), job.contacts(), job.joints(), heated.get(), superposed.get())
            .of(order, asked, progress);
    return new OrderedWork(verified.order(), Optional.empty(), Optional.of(verified.heat()), shape);
  }

  private static OrderPlanner planner(
      Job job, Optional<SuperposedWaits> superposed, List<AskedStep> asked) {
    WaitModel waits =
        superposed
            .<WaitModel>map(s -> s)
            .orElseGet(() -> HeatLedger.of(job.weldment(), job.joints()));
    return new OrderPlanner(waits, DutyCycles.of(job.weldment()), asked);
  }
}
