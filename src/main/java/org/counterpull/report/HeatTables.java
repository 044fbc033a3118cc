package org.counterpull.report;

import static org.counterpull.report.Table.row;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.counterpull.order.Timed;
import org.counterpull.plan.Plan;
import org.counterpull.plan.PlanHeat;
import org.counterpull.plan.PlanHeat.PassStart;
import org.counterpull.plan.PlanHeat.Spot;

/** The temperatures of a plan: each pass at its start, each feature at its peak. */
final class HeatTables {
  private final Plan plan;
  private final Measures measures;
  private final PlanTables tables;

  HeatTables(Plan plan, Measures measures) {
    this.plan = plan;
    this.measures = measures;
    this.tables = new PlanTables(plan, measures);
  }

  /** How the temperatures were found, in one sentence; empty when they were not. */
  Optional<String> how() {
    return plan.heat()
        .map(
            heat ->
                String.format(
                    Locale.ROOT,
                    "The order was welded in the full heat model (%s, %d cells), and each wait ends"
                        + " when the metal along the run is at its limit there. Superposed: the same wait"
                        + " as a sum of single runs, by which the order was chosen.",
                    heat.resolution(),
                    heat.cells()));
  }

  /** What was assumed. */
  List<String> notes() {
    return plan.heat().map(PlanHeat::notes).orElse(List.of());
  }

  /** Pass by pass: how warm, how long to wait and why. */
  Table starts() {
    List<List<Shown>> rows = new ArrayList<>();
    for (PassStart start : plan.heat().map(PlanHeat::starts).orElse(List.of())) {
      rows.add(
          row(
              tables.weldNumber(start.run()) + (start.pass() > 1 ? ", pass " + start.pass() : ""),
              start.run(),
              measures.temperature(start.hottestC()),
              limits(start),
              waits(start),
              seconds(start.waitS()),
              seconds(start.superposedS())));
    }
    return new Table(
        List.of(
            "weld",
            "run",
            "metal at its start",
            "must be",
            "wait before it",
            "for metal",
            "superposed"),
        rows);
  }

  private Shown limits(PassStart start) {
    Shown most = measures.temperature(start.interpassMaxC());
    String wrong = start.tooWarm() ? "TOO WARM: " : start.tooCold() ? "TOO COLD: " : "";
    String least =
        start.preheatC().map(c -> measures.temperature(c).first() + " or more, ").orElse("");
    return Shown.only(wrong + least + "at most " + most.first());
  }

  private static String seconds(double seconds) {
    return seconds > 0 ? String.format(Locale.ROOT, "%.0f s", seconds) : "none";
  }

  private String waits(PassStart start) {
    String id = "wait:" + start.run() + (start.pass() > 1 ? ":pass-" + start.pass() : "");
    return plan.operations().stream()
        .filter(timed -> timed.operation().id().equals(id))
        .map(HeatTables::wait)
        .collect(Collectors.joining(", "));
  }

  private static String wait(Timed timed) {
    String what = timed.operation().what();
    String why = what.substring(what.lastIndexOf(": ") + 2);
    return Measures.exactly(timed.endS() - timed.startS()) + ", " + why;
  }

  /** Features: how hot they get, and what to do where that is too hot. */
  Table features() {
    List<List<Shown>> rows = new ArrayList<>();
    for (Spot spot : spots()) {
      rows.add(
          row(
              spot.name(),
              measures.temperature(spot.peakC()),
              Measures.clock(spot.peakS()) + " h",
              spot.limitC().map(measures::temperature).orElse(Shown.only("none")),
              verdict(spot)));
    }
    return new Table(List.of("feature", "hottest", "at", "limit", "so"), rows);
  }

  private List<Spot> spots() {
    return plan.heat().map(PlanHeat::spots).orElse(List.of()).stream()
        .filter(Spot::feature)
        .toList();
  }

  private static String verdict(Spot spot) {
    if (spot.limitC().isEmpty()) {
      return "";
    }
    String over = spot.overLimit() && !spot.takenOut() ? "TOO HOT. " : "";
    return spot.overLimit() ? over + String.join(" ", spot.advice()) : "stays below it";
  }

  /** For the terminal: what needs attention, and what the waits come to. */
  List<String> inShort() {
    List<String> lines = new ArrayList<>();
    List<PassStart> starts = plan.heat().map(PlanHeat::starts).orElse(List.of());
    if (starts.isEmpty()) {
      return lines;
    }
    long waits = starts.stream().filter(s -> s.waitS() > 0).count();
    double sum = starts.stream().mapToDouble(PassStart::waitS).sum();
    double superposed = starts.stream().mapToDouble(PassStart::superposedS).sum();
    lines.add(
        String.format(
            Locale.ROOT,
            "metal cools before %d of %d passes, %.0f s in all (superposed %.0f s); verified: %s",
            waits,
            starts.size(),
            sum,
            superposed,
            plan.heat().orElseThrow().resolution()));
    for (PassStart start : starts) {
      if (start.tooWarm() || start.tooCold()) {
        lines.add(
            String.format(
                Locale.ROOT,
                "%s begins at %.0f to %.0f C: %s",
                start.run(),
                start.coolestC(),
                start.hottestC(),
                limits(start).first()));
      }
    }
    for (Spot spot : spots()) {
      if (spot.limitC().isPresent()) {
        lines.add(
            String.format(
                Locale.ROOT,
                "%s: at most %.0f C, limit %.0f C: %s",
                spot.name(),
                spot.peakC(),
                spot.limitC().get(),
                verdict(spot)));
      }
    }
    return lines;
  }
}
