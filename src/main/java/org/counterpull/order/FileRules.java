package org.counterpull.order;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.counterpull.weldment.Before;
import org.counterpull.weldment.Weldment;
import org.counterpull.weldment.WrittenOrder;

/** The file's own order: its {@code before} rules and the sequence that it fixes. */
final class FileRules {
  /** Id of the file's before rules. */
  static final String BEFORE = "before";

  /** Id of the sequence that the file fixes. */
  static final String WRITTEN = "written order";

  private static final Set<StepTag> AFTER_WELDING =
      Set.of(
          StepTag.RELEASE,
          StepTag.REMOVE_ROD,
          StepTag.UNMASK,
          StepTag.REAM,
          StepTag.CHASE,
          StepTag.REFIT,
          StepTag.FIT_NIPPLE);

  private FileRules() {}

  static List<Precedence> of(Weldment weldment, List<Step> steps) {
    List<Precedence> rules = new ArrayList<>();
    for (Before before : weldment.before()) {
      String reason = before.reason().orElse("The file asks for it.");
      for (Step earlier : named(steps, before.earlier())) {
        for (Step later : named(steps, before.later())) {
          rules.add(new Precedence(earlier.id(), later.id(), BEFORE, reason, true));
        }
      }
    }
    rules.addAll(written(weldment, steps));
    return rules;
  }

  private static List<Precedence> written(Weldment weldment, List<Step> steps) {
    Set<String> ids = new TreeSet<>();
    steps.forEach(step -> ids.add(step.id()));
    List<String> listed =
        weldment.order().stream()
            .flatMap(order -> order.steps().stream())
            .map(WrittenOrder.Step::run)
            .map(run -> "weld:" + run)
            .filter(ids::contains)
            .distinct()
            .toList();
    List<Precedence> rules = new ArrayList<>();
    for (int i = 1; i < listed.size(); i++) {
      rules.add(
          new Precedence(
              listed.get(i - 1), listed.get(i), WRITTEN, "The file writes this order down.", true));
    }
    return rules;
  }

  /**
   * The steps that a name means: the run of that name; else the runs of the joint; else the fitting
   * of the part; else what is done to the feature or fixture before welding.
   */
  private static List<Step> named(List<Step> steps, String name) {
    List<Predicate<Step>> meanings =
        List.of(
            step -> step.tag() == StepTag.WELD && step.subject().filter(name::equals).isPresent(),
            step -> step.tag() == StepTag.WELD && step.joint().filter(name::equals).isPresent(),
            step -> step.tag() == StepTag.FIT && step.subject().filter(name::equals).isPresent(),
            step ->
                !AFTER_WELDING.contains(step.tag())
                    && step.subject().filter(name::equals).isPresent(),
            step -> step.subject().filter(name::equals).isPresent());
    for (Predicate<Step> meaning : meanings) {
      List<Step> found = steps.stream().filter(meaning).toList();
      if (!found.isEmpty()) {
        return found;
      }
    }
    return List.of();
  }
}
