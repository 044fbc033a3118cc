package org.counterpull.report;

import org.counterpull.jointplan.RunPlan;
import org.counterpull.markup.Markup;
import org.counterpull.order.Operation;
import org.counterpull.order.Timed;

/** The steps of the page: a box to tick, a number, what to do, with what, until when and why. */
final class StepsSection {
  private static final double SHORTEST_TIMER_S = 20;

  private final PlanWords words;
  private final PlanTables tables;

  StepsSection(PlanWords words, PlanTables tables) {
    this.words = words;
    this.tables = tables;
  }

  Markup write() {
    Markup out = new Markup();
    out.open("div", "class", "bench", "id", "bench", "hidden", "hidden");
    out.element("button", "One step per screen", "id", "single", "type", "button").close();
    for (PlanWords.Phase phase : words.phases()) {
      out.open("div", "class", "phase").element("h3", phase.title() + at(phase.place()));
      out.open("ol", "class", "steps").text("\n");
      phase.steps().forEach(timed -> out.add(step(timed)));
      out.close().closeLine();
    }
    out.open("div", "class", "pager");
    out.element("button", "Back", "id", "back", "type", "button");
    out.element("button", "Next", "id", "next", "type", "button", "class", "dark");
    return out.close();
  }

  private static String at(String place) {
    return place.equals("here") || place.isEmpty() ? "" : ", at " + place;
  }

  private Markup step(Timed timed) {
    Operation operation = timed.operation();
    String id = "step-" + timed.number();
    Markup out = new Markup();
    out.open("li", "class", PlanWords.holds(operation) ? "step hold" : "step", "id", id);
    out.open("label", "class", "tick");
    out.empty("input", "type", "checkbox", "aria-label", "step " + timed.number() + " done");
    out.element("span", Integer.toString(timed.number()), "class", "no").close();
    out.open("div", "class", "body").open("p", "class", "what");
    operation
        .run()
        .filter(run -> operation.kind() == Operation.Kind.WELD)
        .ifPresent(run -> out.element("span", tables.weldNumber(run), "class", "weldno").text(" "));
    out.text(operation.what()).close();
    if (operation.kind() == Operation.Kind.WELD) {
      tables.run(operation).ifPresent(run -> out.add(settings(run)));
    }
    operation.cautions().forEach(c -> out.element("p", "! " + c, "class", "caution"));
    out.element("p", when(timed), "class", "when");
    if (!operation.why().isEmpty()) {
      out.element("p", "Why: " + String.join(" ", operation.why()), "class", "why");
    }
    out.add(timer(timed));
    return out.close().closeLine();
  }

  private Markup settings(RunPlan run) {
    String passes = run.passes().size() == 1 ? "1 pass" : run.passes().size() + " passes";
    return new Markup()
        .open("p", "class", "set")
        .text(passes + ": ")
        .add(PageParts.shown(tables.settings(run)))
        .close();
  }

  private static String when(Timed timed) {
    return "at "
        + Measures.clock(timed.startS())
        + " h, takes "
        + Measures.duration(timed.endS() - timed.startS());
  }

  /** A button that counts a wait down; it shows only where scripts run. */
  private static Markup timer(Timed timed) {
    double seconds = timed.endS() - timed.startS();
    boolean waits =
        timed.operation().kind() == Operation.Kind.WAIT
            || timed.operation().kind() == Operation.Kind.COOL;
    Markup out = new Markup();
    if (waits && seconds >= SHORTEST_TIMER_S) {
      out.element(
          "button",
          "Start " + Measures.duration(seconds),
          "type",
          "button",
          "class",
          "timer",
          "hidden",
          "hidden",
          "data-seconds",
          Long.toString(Math.round(seconds)));
    }
    return out;
  }
}
