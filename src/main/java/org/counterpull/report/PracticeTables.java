package org.counterpull.report;

import static org.counterpull.report.Table.row;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.counterpull.order.AccessLost;
import org.counterpull.order.AppliedRule;
import org.counterpull.plan.Plan;
import org.counterpull.swing.SwingResult;
import org.counterpull.swing.SwingResult.Drive;
import org.counterpull.swing.SwingResult.Position;
import org.counterpull.weldment.Swing;

/** What practice says of a plan: rules that had a say, access that is lost, what swings. */
final class PracticeTables {
  private final Plan plan;
  private final Measures measures;

  PracticeTables(Plan plan, Measures measures) {
    this.plan = plan;
    this.measures = measures;
  }

  /** Every rule that had a say, by its id. */
  Table rules() {
    List<List<Shown>> rows = new ArrayList<>();
    plan.practice().rules().stream()
        .sorted(
            Comparator.comparing((AppliedRule rule) -> rule.id().startsWith("P"))
                .thenComparing(AppliedRule::id))
        .forEach(
            rule ->
                rows.add(
                    row(
                        rule.id(),
                        rule.when(),
                        rule.relation(),
                        rule.reason(),
                        rule.hardness().words(),
                        rule.times() + " x",
                        rule.source())));
    return new Table(
        List.of("rule", "when", "what", "because", "how hard", "here", "source"), rows);
  }

  /** What no tool gets to any more after which step. */
  Table access() {
    List<List<Shown>> rows = new ArrayList<>();
    for (AccessLost lost : plan.practice().accessLost()) {
      rows.add(
          row(
              lost.place(),
              lost.tool(),
              "step " + lost.doneAt(),
              lost.blockedBy(),
              "step " + lost.lostAt()));
    }
    return new Table(
        List.of("feature or run", "reached by", "done at", "blocked by", "after"), rows);
  }

  /** What is to be known of a swing, in sentences. */
  List<String> words(SwingResult swing) {
    List<String> words = new ArrayList<>();
    Swing asked = swing.swing();
    words.add(
        String.format(
            Locale.ROOT,
            "%s turns about the axis of %s from %.0f to %.0f degrees: %d parts, %s.",
            asked.name(),
            asked.about(),
            asked.fromDeg(),
            asked.toDeg(),
            swing.moving().size(),
            measures.mass(swing.massKg()).first()));
    words.add(
        swing
            .clash()
            .map(
                c ->
                    String.format(
                        Locale.ROOT,
                        "First clash: %s meets %s at %.1f degrees.",
                        c.movingPart(),
                        c.standingPart(),
                        c.angleDeg()))
            .orElse("Nothing clashes over the whole range."));
    swing
        .faults()
        .forEach(f -> words.add("Fault: " + f.why() + ". Way out: " + f.wayForward() + "."));
    swing.grease().forEach(g -> words.add(grease(g)));
    swing.ports().ifPresent(p -> words.add(ports(p)));
    asked.cylinder().ifPresent(c -> words.add(reserve(swing, c)));
    return words;
  }

  private static String grease(SwingResult.Grease grease) {
    if (grease.blockedDeg().isEmpty()) {
      return "Grease gun gets to " + grease.feature() + " in every position.";
    }
    return "Grease gun gets to "
        + grease.feature()
        + (grease.reachedDeg().isEmpty()
            ? " in no position"
            : " at " + degrees(grease.reachedDeg()) + ", not at " + degrees(grease.blockedDeg()))
        + ": "
        + String.join(", ", grease.blockedBy())
        + " in the way.";
  }

  private static String degrees(List<Double> angles) {
    return String.join(
            ", ", angles.stream().map(a -> String.format(Locale.ROOT, "%.0f", a)).toList())
        + " degrees";
  }

  private String ports(SwingResult.Ports ports) {
    if (ports.roomMm() == ports.worstRoomMm()) {
      return "Ports and hoses: "
          + measures.length(ports.roomMm()).text()
          + " of room or more on every side of the barrel in every position.";
    }
    return "Ports and hoses: most room on the "
        + ports.side()
        + " ("
        + measures.length(ports.roomMm()).text()
        + " or more in every position), least on the "
        + ports.worstSide()
        + " ("
        + measures.length(ports.worstRoomMm()).text()
        + ").";
  }

  private String reserve(SwingResult swing, Swing.Cylinder cylinder) {
    double shortest = Double.MAX_VALUE;
    double longest = 0;
    for (Position position : swing.positions()) {
      double length = position.drive().map(Drive::lengthMm).orElse(0.0);
      shortest = Math.min(shortest, length);
      longest = Math.max(longest, length);
    }
    return "Stroke left: "
        + measures.length(shortest - cylinder.closedMm()).text()
        + " at the closed end, "
        + measures.length(cylinder.closedMm() + cylinder.strokeMm() - longest).text()
        + " at the open end; forces hold the weight of what is drawn, without friction, wind, jerks and loads.";
  }

  /** A cylinder over the range; empty without one. */
  Table drive(SwingResult swing) {
    List<List<Shown>> rows = new ArrayList<>();
    for (Position position : swing.positions()) {
      Optional<Drive> drive = position.drive();
      drive.ifPresent(
          d ->
              rows.add(
                  row(
                      String.format(Locale.ROOT, "%.1f", position.angleDeg()),
                      measures.length(d.lengthMm()),
                      measures.length(Math.abs(d.armMm().value())),
                      force(d.neededN().value()),
                      d.neededN().value() >= 0
                          ? force(d.pushN().value())
                          : force(-d.pullN().value()))));
    }
    return new Table(
        List.of("angle, degrees", "pin to pin", "lever arm", "force needed", "force there"), rows);
  }

  private static String force(double newtons) {
    String kind = newtons >= 0 ? " push" : " pull";
    return String.format(Locale.ROOT, "%.2f kN", Math.abs(newtons) / 1000) + kind;
  }
}
