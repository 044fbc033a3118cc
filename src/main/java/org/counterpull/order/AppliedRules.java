package org.counterpull.order;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.counterpull.order.AppliedRule.Hardness;
import org.counterpull.weldment.OwnRule;
import org.counterpull.weldment.Weldment;

/** Collects the rules that had a say: those that tie steps, go with steps, or chose among runs. */
final class AppliedRules {
  private AppliedRules() {}

  static List<AppliedRule> of(
      Weldment weldment,
      List<Step> steps,
      List<Precedence> precedence,
      Set<RunCriterion> criteria) {
    List<AppliedRule> applied = new ArrayList<>();
    for (OrderRule rule : OrderRules.with(weldment)) {
      int times = (int) precedence.stream().filter(p -> p.rule().equals(rule.id())).count();
      if (times > 0) {
        applied.add(tie(rule, times));
      }
    }
    for (AddedStep added : AddedStep.all()) {
      int times = count(steps, s -> s.tag() == added.tag() && s.cause().equals(added.id()));
      if (times > 0) {
        String what = "adds the step: " + added.tag().words();
        applied.add(
            new AppliedRule(
                added.id(),
                added.when(),
                what,
                added.reason(),
                Hardness.MUST,
                times,
                added.source()));
      }
    }
    for (WithRule rule : WithRule.all()) {
      int times = count(steps, s -> s.operation().why().contains(rule.text()));
      if (times > 0) {
        String what = "with the step: " + rule.tag().words();
        applied.add(
            new AppliedRule(
                rule.id(), rule.when(), what, rule.text(), Hardness.WITH, times, rule.source()));
      }
    }
    for (RunCriterion criterion : criteria) {
      if (criterion.isRule()) {
        applied.add(criterion.applied());
      }
    }
    return List.copyOf(applied);
  }

  private static AppliedRule tie(OrderRule rule, int times) {
    return new AppliedRule(
        rule.id(),
        rule.when(),
        rule.earlier().words() + " before " + rule.later().words(),
        rule.reason(),
        rule.hard() ? Hardness.MUST : Hardness.SHOULD,
        times,
        rule.source());
  }

  private static int count(List<Step> steps, Predicate<Step> which) {
    return (int) steps.stream().filter(which).count();
  }

  /** A rule of the file's own among those that come with the program. */
  static OrderRule own(OwnRule rule) {
    return new OrderRule(
        rule.name(),
        "asked for by the file",
        StepTag.of(rule.earlier()),
        StepTag.of(rule.later()),
        Match.of(rule.match()),
        rule.reason(),
        rule.hard(),
        false,
        true,
        rule.source(),
        "Leave out the file's rule \"" + rule.name() + "\".");
  }
}
