package org.counterpull.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import org.counterpull.machine.Figure;
import org.counterpull.machine.GateResult;
import org.counterpull.machine.MachineVerdict;
import org.counterpull.machine.Stretch;
import org.counterpull.quantity.Printed;

/** A machine's verdict, for people and for machines. */
final class VerdictText {
  private VerdictText() {}

  /** The verdict with the figures of its gates. */
  static void print(PrintWriter out, MachineVerdict verdict) {
    out.printf(
        Locale.ROOT,
        "%s, %s in %s: %s%n",
        verdict.machine(),
        verdict.task().joint().word(),
        thickness(verdict),
        verdict.verdict().word());
    out.printf(
        Locale.ROOT,
        "  %s set at %s A, %s V, %s wire or electrode %s mm, duty %s %%%n",
        verdict.point().process().word(),
        Printed.number(verdict.point().currentA(), 3),
        Printed.number(verdict.point().voltageV(), 3),
        verdict.point().transfer().word(),
        Printed.number(verdict.point().diameterMm(), 3),
        Printed.number(verdict.point().dutyPercent(), 2));
    for (GateResult gate : verdict.gates()) {
      out.printf("  %-10s %-10s %s%n", gate.name(), outcome(gate), gate.why());
      out.printf("             %s%n", figures(gate.figures()));
    }
    out.println(
        "  preparation: "
            + verdict.preparation().words()
            + ", passes: "
            + verdict.preparation().passes());
    verdict.preheatC().ifPresent(c -> out.println("  preheat: " + Math.round(c) + " C"));
    out.printf(
        Locale.ROOT,
        "  a metre takes %s min of arc and %s min of rests%n",
        Printed.number(verdict.arcTimeSPerM() / 60, 2),
        Printed.number(verdict.waitSPerM() / 60, 2));
    out.printf(
        Locale.ROOT,
        "  fused in one pass up to %s mm; a first pass is not chilled %s%n",
        Printed.number(verdict.fusedInOnePassMm(), 2),
        Double.isInfinite(verdict.notChilledUpToMm())
            ? "in any thickness"
            : "up to " + Printed.number(verdict.notChilledUpToMm(), 2) + " mm");
    verdict.notes().forEach(note -> out.println("  " + note));
    Stretch.of(verdict).forEach(way -> out.println("  " + way));
    verdict.whatWouldChangeIt().forEach(change -> out.println("  would change it: " + change));
  }

  /** One line a thickness. */
  static void printTable(PrintWriter out, List<MachineVerdict> rows) {
    out.println();
    rows.stream()
        .findFirst()
        .ifPresent(row -> out.println("with " + row.point().process().word() + ":"));
    out.println("thickness  verdict           passes  preheat  preparation");
    for (MachineVerdict row : rows) {
      out.printf(
          Locale.ROOT,
          "%6s mm  %-17s %6d  %7s  %s%n",
          Printed.number(row.task().thinnerMm(), 3),
          row.verdict().word(),
          row.preparation().passes(),
          row.preheatC().isPresent() ? Math.round(row.preheatC().getAsDouble()) + " C" : "-",
          row.preparation().words());
    }
  }

  /** The verdict as JSON. */
  static ObjectNode json(MachineVerdict verdict) {
    ObjectNode node = JsonText.object();
    node.put("machine", verdict.machine());
    node.put("process", verdict.point().process().word());
    node.put("joint", verdict.task().joint().word());
    node.put("thicknessMm", verdict.task().thinnerMm());
    node.put("verdict", verdict.verdict().word());
    node.put("currentA", verdict.point().currentA());
    node.put("voltageV", verdict.point().voltageV());
    node.put("dutyPercent", verdict.point().dutyPercent());
    node.put("transfer", verdict.point().transfer().word());
    ArrayNode gates = node.putArray("gates");
    for (GateResult gate : verdict.gates()) {
      ObjectNode one = gates.addObject();
      one.put("name", gate.name()).put("outcome", outcome(gate)).put("why", gate.why());
      one.put("wouldChange", gate.wouldChange());
      ArrayNode figures = one.putArray("figures");
      for (Figure figure : gate.figures()) {
        figures
            .addObject()
            .put("name", figure.name())
            .put("value", figure.value())
            .put("unit", figure.unit());
      }
    }
    node.put("preparation", verdict.preparation().words());
    node.put("passes", verdict.preparation().passes());
    if (verdict.preheatC().isPresent()) {
      node.put("preheatC", verdict.preheatC().getAsDouble());
    } else {
      node.putNull("preheatC");
    }
    node.put("arcTimeSPerM", verdict.arcTimeSPerM()).put("waitSPerM", verdict.waitSPerM());
    ArrayNode notes = node.putArray("notes");
    verdict.notes().forEach(notes::add);
    ArrayNode ways = node.putArray("stretch");
    Stretch.of(verdict).forEach(ways::add);
    ArrayNode changes = node.putArray("wouldChange");
    verdict.whatWouldChangeIt().forEach(changes::add);
    return node;
  }

  private static String thickness(MachineVerdict verdict) {
    double thin = verdict.task().thinnerMm();
    double thick = verdict.task().thickerMm();
    return thin == thick
        ? Printed.quantity(thin, "mm")
        : Printed.number(thin, 4) + " on " + Printed.quantity(thick, "mm");
  }

  private static String outcome(GateResult gate) {
    return switch (gate.outcome()) {
      case OPEN -> "open";
      case WITH_HELP -> "with help";
      case AFTER_TEST -> "after test";
      case SHUT -> "shut";
    };
  }

  private static String figures(List<Figure> figures) {
    return String.join(
        ", ",
        figures.stream().map(f -> f.name() + " " + Printed.quantity(f.value(), f.unit())).toList());
  }
}
