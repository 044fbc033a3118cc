package org.counterpull.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import org.counterpull.jointplan.PassPlan;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.machine.Dial;
import org.counterpull.machine.Panel;
import org.counterpull.machine.Panel.Reading;
import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Printed;
import org.counterpull.weldment.ShopMachine;

/**
 * What is set on the machine for a run, in one line, as its front shows it: the range where passes
 * differ.
 */
final class Settings {
  private final Measures measures;
  private final Map<String, Panel> panels = new TreeMap<>();

  Settings(List<ShopMachine> machines, Measures measures) {
    this.measures = measures;
    machines.forEach(shop -> panels.put(shop.machine().name(), shop.machine().panel()));
  }

  /** Current, voltage, wire feed, dial positions and travel. */
  Shown of(RunPlan run) {
    Panel panel = panel(run);
    List<Shown> parts = new ArrayList<>();
    if (panel.prints(Reading.CURRENT)) {
      parts.add(set(run, panel, Reading.CURRENT, PassPlan::currentA, this::current));
    }
    if (panel.prints(Reading.VOLTAGE)) {
      parts.add(set(run, panel, Reading.VOLTAGE, PassPlan::voltageV, this::voltage));
    }
    boolean fed =
        run.passes().stream().allMatch(p -> p.wireFeed().isPresent()) && !run.passes().isEmpty();
    if (fed && panel.prints(Reading.WIRE_FEED)) {
      Shown feed = set(run, panel, Reading.WIRE_FEED, Settings::feed, measures::wireFeed);
      parts.add(new Shown("wire " + feed.first(), feed.other()));
    } else if (!panel.prints(Reading.CURRENT)) {
      parts.add(set(run, panel, Reading.CURRENT, PassPlan::currentA, this::current));
    }
    Shown travel = range(run, PassPlan::travelMmPerS, measures::travel);
    parts.add(new Shown("travel " + travel.first(), travel.other()));
    return joined(parts);
  }

  private Panel panel(RunPlan run) {
    return panels.getOrDefault(run.machine(), Panel.PLAIN);
  }

  /** Current and voltage of one pass, with the dials' positions. */
  String pass(RunPlan run, PassPlan pass) {
    Panel panel = panel(run);
    return current(pass.currentA()).first()
        + dial(panel, Reading.CURRENT, pass.currentA(), pass.currentA())
        + ", "
        + voltage(pass.voltageV()).first()
        + dial(panel, Reading.VOLTAGE, pass.voltageV(), pass.voltageV());
  }

  /** Wire feed of one pass, with the dial's position. */
  Shown feed(RunPlan run, PassPlan pass) {
    if (pass.wireFeed().isEmpty()) {
      return Shown.only("by hand");
    }
    Shown shown = measures.wireFeed(feed(pass));
    String position = dial(panel(run), Reading.WIRE_FEED, feed(pass), feed(pass));
    return new Shown(shown.first() + position, shown.other());
  }

  private static double feed(PassPlan pass) {
    return pass.wireFeed().map(Computed::value).orElseThrow();
  }

  private Shown current(double amperes) {
    return Shown.only(Printed.number(amperes, 3) + " A");
  }

  private Shown voltage(double volts) {
    return Shown.only(Printed.number(volts, 3) + " V");
  }

  private static Shown set(
      RunPlan run,
      Panel panel,
      Reading reading,
      ToDoubleFunction<PassPlan> number,
      DoubleFunction<Shown> show) {
    double low = run.passes().stream().mapToDouble(number).min().orElse(0);
    double high = run.passes().stream().mapToDouble(number).max().orElse(0);
    Shown range = range(run, number, show);
    return new Shown(range.first() + dial(panel, reading, low, high), range.other());
  }

  private static String dial(Panel panel, Reading reading, double low, double high) {
    Optional<Dial> dial = panel.dial(reading);
    if (dial.isEmpty() || !(high > 0)) {
      return "";
    }
    String from = dial.get().position(low);
    String to = dial.get().position(high);
    return " (dial at " + from + (from.equals(to) ? "" : " to " + to) + ")";
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
