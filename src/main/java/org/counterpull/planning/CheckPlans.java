package org.counterpull.planning;

import java.util.Optional;
import org.counterpull.plan.Plan.CheckPlan;
import org.counterpull.plan.PullAnswer;
import org.counterpull.plan.PullAnswer.Band;
import org.counterpull.plan.PullAnswer.Verdict;
import org.counterpull.pulljob.CheckTolerance;
import org.counterpull.weldment.Check;
import org.counterpull.weldment.Weldment;

/** The tolerance of each check in mm and what to expect of it. */
final class CheckPlans {
  private CheckPlans() {}

  static CheckPlan of(Weldment weldment, Check check, Optional<PullAnswer> shape) {
    Optional<Band> band =
        shape.stream()
            .flatMap(answer -> answer.checks().stream())
            .filter(c -> c.check().name().equals(check.name()) && c.verdict() != Verdict.UNTOLD)
            .map(PullAnswer.CheckAnswer::released)
            .findFirst();
    return new CheckPlan(
        check,
        CheckTolerance.mm(weldment, check),
        band.map(Band::expected),
        band.map(Band::low),
        band.map(Band::high));
  }
}
