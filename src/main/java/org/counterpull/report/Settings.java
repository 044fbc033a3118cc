package org.counterpull.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import org.counterpull.jointplan.PassPlan;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Printed;

/** What is set on the machine for a run, in one line: the range where passes differ. */
final class Settings {
  private final Measures measures;

  Settings(Measures measures) {
    this.measures = measures;
  }

  /** Current, voltage, wire feed and travel. */
  Shown of(RunPlan run) {
    List<Shown> parts = new ArrayList<>();
    parts.add(range(run, PassPlan::currentA, a -> Shown.only(Printed.number(a, 3) + " A")));
    parts.add(range(run, PassPlan::voltageV, v -> Shown.only(Printed.number(v, 3) + " V")));
    if (run.passes().stream().allMatch(p -> p.wireFeed().isPresent()) && !run.passes().isEmpty()) {
      Shown feed =
          range(
              run, p -> p.wireFeed().map(Computed::value).orElseThrow(), v -> measures.wireFeed(v));
      parts.add(new Shown("wire " + feed.first(), feed.other()));
    }
    Shown travel = range(run, PassPlan::travelMmPerS, measures::travel);
    parts.add(new Shown("travel " + travel.first(), travel.other()));
    return joined(parts);
  }

  private static Shown range(
      RunPlan run, ToDoubleFunction<PassPlan> number, DoubleFunction<Shown> show) {
    double low = run.passes().stream().mapToDouble(number).min().orElse(0);
    double high = run.passes().stream().mapToDouble(number).max().orElse(0);
    Shown lowest = show.apply(low);
    Shown highest = show.apply(high);
    if (lowest.equals(highest)) {
      return lowest;
    }
    return new Shown(
        between(lowest.first(), highest.first()),
        lowest.other().isEmpty() ? "" : between(lowest.other(), highest.other()));
  }

  private static String between(String low, String high) {
    return low.substring(0, low.indexOf(' ')) + " to " + high;
  }

  private static Shown joined(List<Shown> parts) {
    String first = String.join(", ", parts.stream().map(Shown::first).toList());
    Optional<String> other =
        parts.stream().map(Shown::other).filter(o -> !o.isEmpty()).reduce((a, b) -> a + ", " + b);
    return new Shown(first, other.orElse(""));
  }
}
