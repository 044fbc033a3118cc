package org.counterpull.planning;

import java.util.List;
import java.util.Optional;
import org.counterpull.contact.Contact;
import org.counterpull.heat.solve.Progress;
import org.counterpull.heatjob.Resolution;
import org.counterpull.heatjob.SuperposedWaits;
import org.counterpull.heatjob.TrialWelding;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.order.AskedStep;
import org.counterpull.order.DutyCycles;
import org.counterpull.order.OrderPlanner;
import org.counterpull.order.WorkOrder;
import org.counterpull.plan.PlanHeat;
import org.counterpull.weldment.Weldment;

/** Goes through an order in the full heat model and gives it the waits that hold there. */
final class Verification {
  private static final int MOST_TRIALS = 4;

  private final Weldment weldment;
  private final List<Contact> contacts;
  private final List<JointPlan> joints;
  private final Resolution resolution;
  private final SuperposedWaits superposed;

  Verification(
      Weldment weldment,
      List<Contact> contacts,
      List<JointPlan> joints,
      Resolution resolution,
      SuperposedWaits superposed) {
    this.weldment = weldment;
    this.contacts = contacts;
    this.joints = joints;
    this.resolution = resolution;
    this.superposed = superposed;
  }

  /** An order with the waits that hold, and the temperatures in it. */
  record Verified(WorkOrder order, PlanHeat heat) {}

  /** One trial as a rule; features that are waited for take some more to find the least wait. */
  Verified of(WorkOrder first, List<AskedStep> asked, Progress progress) {
    Optional<Verified> safe = Optional.empty();
    for (int trial = 1; ; trial++) {
      TrialWelding welding =
          new TrialWelding(weldment, contacts, joints, resolution, superposed, progress);
      WorkOrder order =
          new OrderPlanner(welding, DutyCycles.of(weldment), asked)
              .again(weldment, joints, contacts, first);
      Verified verified = new Verified(order, welding.heat(order.elapsedS()));
      if (welding.sparesFeatures()) {
        safe = Optional.of(verified);
      }
      if (trial == MOST_TRIALS || !welding.learn()) {
        return safe.orElse(verified);
      }
    }
  }
}
