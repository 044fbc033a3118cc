package org.counterpull.order;

import java.util.List;
import java.util.Locale;
import org.counterpull.weldment.Check;
import org.counterpull.weldment.Fixture;
import org.counterpull.weldment.Weldment;

/** Steps of the whole weldment: checking the datum, and everything after the last arc. */
final class ClosingSteps {
  private ClosingSteps() {}

  static void add(Steps all) {
    Weldment weldment = all.weldment();
    String checks = Steps.names(weldment.checks().stream().map(Check::name).toList());
    if (weldment.joints().size() >= 2 || !weldment.checks().isEmpty()) {
      String what = checks.isEmpty() ? "Check the tacked weldment" : "Check, tacked: " + checks;
      add(all, StepTag.CHECK_DATUM, what);
    }
    if (all.joints().stream().allMatch(plan -> plan.runs().isEmpty())) {
      return;
    }
    add(all, StepTag.FIRE_WATCH, "Keep a fire watch for 60 min after the last arc");
    boolean held =
        weldment.fixtures().stream()
            .map(Fixture::kind)
            .anyMatch(
                kind ->
                    kind == Fixture.Kind.CLAMP
                        || kind == Fixture.Kind.STRONGBACK
                        || kind == Fixture.Kind.SPACER);
    if (held) {
      add(
          all,
          StepTag.COOL_TO_HAND_WARM,
          String.format(
              Locale.ROOT, "Let it cool to hand-warm, %.0f C", BenchTimes.value("hand-warm")));
    }
    add(all, StepTag.COOL, "Let it cool to room temperature before measuring");
    add(
        all,
        StepTag.MEASURE_COLD,
        checks.isEmpty()
            ? "Look over all welds and measure"
            : "Look over, then measure: " + checks);
    if (!weldment.checks().isEmpty()) {
      add(all, StepTag.STRAIGHTEN, "Straighten what is out, then measure again");
    }
    add(all, StepTag.PAINT, "Paint, with bores and threads covered");
  }

  private static void add(Steps all, StepTag tag, String what) {
    all.add(
        new Steps.Draft(tag, "", what, "")
            .parts(List.of())
            .cautions(
                tag == StepTag.STRAIGHTEN
                    ? List.of("Nothing to do where every check is within its tolerance.")
                    : List.of()));
  }
}
