package org.counterpull.report;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.counterpull.jointplan.Coupon;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.machine.MachineVerdict;
import org.counterpull.machine.Verdict;
import org.counterpull.mount.MountAnswer;
import org.counterpull.order.Operation;
import org.counterpull.order.Timed;
import org.counterpull.plan.PinRow;
import org.counterpull.plan.Plan;
import org.counterpull.plan.PullAnswer.CheckAnswer;
import org.counterpull.swing.SwingResult;

/** A plan as Markdown that reads as plain text, too. */
final class PlanMarkdown {
  private final Plan plan;
  private final PlanWords words;
  private final PlanTables tables;
  private final PracticeTables practice;
  private final MachineLimits limits;
  private final FormulasUsed formulas;
  private final Measures measures;
  private final StringBuilder out = new StringBuilder();

  PlanMarkdown(Plan plan, Measures measures, FormulasUsed formulas) {
    this.plan = plan;
    this.formulas = formulas;
    this.measures = measures;
    words = new PlanWords(plan, measures);
    tables = new PlanTables(plan, measures);
    practice = new PracticeTables(plan, measures);
    limits = new MachineLimits(plan, measures);
  }

  String write() {
    line("# " + escaped(plan.weldment().name()));
    line("");
    line("**" + escaped(words.answer()) + "**");
    refusals();
    cautions();
    heading("The job");
    words.head().forEach(l -> bullet(l.label() + ": " + l.value().text()));
    heading("Welds");
    table(tables.welds());
    steps();
    heading("Why in this order");
    plan.orderReasons().forEach(this::bullet);
    shape();
    heat();
    heading("What each machine can weld");
    table(tables.verdicts());
    line("");
    limits.sentences().forEach(this::bullet);
    words.alike().forEach(this::joints);
    plan.practice().mounts().forEach(this::mount);
    coupons();
    section("Checks", tables.checks());
    section("What no tool reaches any more", practice.access());
    plan.practice().pins().forEach(this::pin);
    plan.practice().swings().forEach(this::swing);
    section("Strip, mask, drill, put back", tables.lists());
    section("Cutting list", tables.cuts().cuts());
    section("Bars to buy", tables.cuts().bars());
    section("What is used up", tables.consumables());
    section("Cost", tables.cost());
    section("Rules that had a say", practice.rules());
    heading("Assumptions");
    plan.weldment().assumptions().forEach(a -> bullet(a.where() + ": " + a.what()));
    section("Where the numbers come from", PlanTables.formulas(formulas));
    line("");
    line("---");
    line("");
    line(escaped(PlanWords.FOOT));
    return out.toString();
  }

  private void pin(PinRow row) {
    PinWords pins = new PinWords(measures);
    heading(PinWords.title(row));
    pins.sentences(row).forEach(this::bullet);
    table(new PinTables(measures).bores(row));
    table(new PinTables(measures).uses(row));
  }

  private void swing(SwingResult swing) {
    heading("Swing of " + swing.swing().name());
    practice.words(swing).forEach(this::bullet);
    table(practice.drive(swing));
  }

  private void mount(MountAnswer mount) {
    heading(MountSection.title(mount));
    mount.verdict().forEach(this::bullet);
    table(MountSection.table(mount));
  }

  private void refusals() {
    if (plan.refusals().isEmpty()) {
      return;
    }
    heading("What can't or mustn't be done");
    for (Plan.Refusal refusal : plan.refusals()) {
      line(
          "- **"
              + escaped(refusal.where())
              + "**: "
              + escaped(refusal.why())
              + (refusal.wayForward().isEmpty()
                  ? ""
                  : " Way forward: " + escaped(refusal.wayForward())));
    }
  }

  private void cautions() {
    heading("Cautions");
    for (Plan.Caution caution : plan.cautions()) {
      String because = caution.because().isEmpty() ? "" : " Here because: " + caution.because();
      bullet(caution.text() + because + " [" + caution.id() + "; " + caution.basis() + "]");
    }
  }

  private void shape() {
    if (plan.shape().isPresent()) {
      ShapeSection shape = new ShapeSection(plan.shape().get(), measures);
      heading("How it comes out");
      table(shape.verdicts());
      line("");
      shape.why().forEach(this::bullet);
      table(shape.orders());
      for (CheckAnswer check : shape.checks()) {
        line("");
        line("### " + escaped(check.check().name()));
        line("");
        shape.check(check).forEach(this::bullet);
      }
      line("");
      shape.notes().forEach(this::bullet);
    }
  }

  private void heat() {
    if (plan.heat().isPresent()) {
      HeatTables heat = new HeatTables(plan, measures);
      heading("Temperatures");
      table(heat.features());
      table(heat.starts());
      line("");
      heat.how().ifPresent(this::bullet);
      heat.notes().forEach(this::bullet);
    }
  }

  private void steps() {
    heading("Steps");
    for (PlanWords.Phase phase : words.phases()) {
      line("");
      line("### " + escaped(phase.title()) + at(phase.place()));
      line("");
      phase.steps().forEach(this::step);
    }
  }

  private static String at(String place) {
    return place.equals("here") || place.isEmpty() ? "" : " (" + escaped(place) + ")";
  }

  private void step(Timed timed) {
    Operation operation = timed.operation();
    String what = escaped(operation.what());
    String marked = PlanWords.holds(operation) ? "**" + what + "**" : what;
    line(
        "- [ ] "
            + timed.number()
            + ". "
            + marked
            + " \u2013 at "
            + Measures.clock(timed.startS())
            + ", "
            + Measures.duration(timed.endS() - timed.startS()));
    if (operation.kind() == Operation.Kind.WELD) {
      tables
          .run(operation)
          .ifPresent(
              run -> below(tables.weldNumber(run.name()) + ": " + tables.settings(run).text()));
    }
    operation.cautions().forEach(caution -> below("Caution: " + caution));
    operation.why().forEach(why -> below("Why: " + why));
  }

  private void joints(List<JointPlan> alike) {
    JointPlan joint = alike.get(0);
    heading((alike.size() == 1 ? "Joint " : "Joints ") + PlanWords.namesOf(alike));
    joint.refusals().forEach(r -> bullet("Can't be done: " + r));
    words.joints(alike).forEach(l -> bullet(l.label() + ": " + l.value().text()));
    PlanWords.notesOf(alike).forEach(this::bullet);
    table(tables.passes(alike));
    table(words.steel().methods(joint));
    for (MachineVerdict verdict : joint.verdicts()) {
      if (verdict.verdict() != Verdict.ONE_PASS) {
        line("");
        line(escaped(verdict.machine() + ": " + Verdicts.words(verdict.verdict())) + ".");
        table(PlanTables.gates(verdict));
        line("");
        words.stretch(verdict).forEach(this::bullet);
      }
    }
  }

  private void coupons() {
    int number = 0;
    for (Map.Entry<Coupon, List<JointPlan>> entry : words.coupons().entrySet()) {
      heading("Test piece T" + ++number + " for " + PlanWords.namesOf(entry.getValue()));
      PlanWords.coupon(entry.getKey()).forEach(l -> bullet(l.label() + ": " + l.value().text()));
    }
  }

  private void section(String title, Table table) {
    if (!table.isEmpty()) {
      heading(title);
      table(table);
    }
  }

  private void heading(String title) {
    line("");
    line("## " + escaped(title));
    line("");
  }

  private void bullet(String text) {
    line("- " + escaped(text));
  }

  private void below(String text) {
    line("  - " + escaped(text));
  }

  private void table(Table table) {
    if (table.isEmpty()) {
      return;
    }
    line("");
    cells(table.heads());
    line("|" + "---|".repeat(table.heads().size()));
    table.rows().forEach(row -> cells(row.stream().map(Shown::text).toList()));
  }

  private void cells(List<String> cells) {
    line(cells.stream().map(PlanMarkdown::escaped).collect(Collectors.joining(" | ", "| ", " |")));
  }

  private void line(String text) {
    out.append(text).append('\n');
  }

  /** Text in which nothing is markup: neither HTML nor Markdown nor the edge of a cell. */
  static String escaped(String text) {
    StringBuilder safe = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '&' -> safe.append("&amp;");
        case '<' -> safe.append("&lt;");
        case '>' -> safe.append("&gt;");
        case '\\', '`', '*', '_', '[', ']', '|', '~', '#' -> safe.append('\\').append(c);
        case '\n', '\r', '\t' -> safe.append(' ');
        default -> safe.append(c < ' ' ? '\uFFFD' : c);
      }
    }
    return safe.toString();
  }
}
