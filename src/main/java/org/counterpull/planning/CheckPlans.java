package org.counterpull.planning;

import java.util.Optional;
import org.counterpull.plan.Plan.CheckPlan;
import org.counterpull.pulljob.CheckTolerance;
import org.counterpull.weldment.Check;
import org.counterpull.weldment.Weldment;

/** The tolerance of each check in mm; what to expect comes from the shape engine. */
final class CheckPlans {
  private CheckPlans() {}

  static CheckPlan of(Weldment weldment, Check check) {
    return new CheckPlan(
        check,
        CheckTolerance.mm(weldment, check),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }
}
