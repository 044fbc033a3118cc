package org.counterpull.report;

import static org.counterpull.report.Table.row;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.counterpull.contact.Lay;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.PassPlan;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.machine.GateResult;
import org.counterpull.machine.MachineVerdict;
import org.counterpull.order.Operation;
import org.counterpull.order.Timed;
import org.counterpull.plan.Plan;
import org.counterpull.quantity.Computed;

/** The tables of a plan, the same on every kind of page. */
final class PlanTables {
  private final Plan plan;
  private final Measures measures;
  private final Settings settings;

  PlanTables(Plan plan, Measures measures) {
    this.plan = plan;
    this.measures = measures;
    this.settings = new Settings(plan.weldment().machines(), measures);
  }

  /** The number of a run on the weld map; empty for one that isn't welded. */
  String weldNumber(String run) {
    for (int i = 0; i < plan.runs().size(); i++) {
      if (plan.runs().get(i).name().equals(run)) {
        return "W" + (i + 1);
      }
    }
    return "";
  }

  Optional<RunPlan> run(Operation operation) {
    return operation
        .run()
        .flatMap(name -> plan.runs().stream().filter(r -> r.name().equals(name)).findFirst());
  }

  Shown settings(RunPlan run) {
    return settings.of(run);
  }

  /** Weld by weld, in the order of welding. */
  Table welds() {
    List<List<Shown>> rows = new ArrayList<>();
    for (RunPlan run : plan.runs()) {
      Optional<JointPlan> joint = joint(run);
      rows.add(
          row(
              weldNumber(run.name()),
              run.name(),
              joint.map(this::size).orElse(Shown.only("")),
              measures.length(run.weldedMm()),
              joint.map(j -> j.preparation().kind().words()).orElse(""),
              run.position().name() + " " + run.position().meaning() + lay(run),
              run.passes().size(),
              settings.of(run),
              step(run)));
    }
    return new Table(
        List.of("weld", "run", "size", "length", "edges", "position", "passes", "set", "step"),
        rows);
  }

  private static String lay(RunPlan run) {
    return run.lay() == Lay.AS_DRAWN ? "" : ", " + run.lay().words();
  }

  private Optional<JointPlan> joint(RunPlan run) {
    return plan.joints().stream()
        .filter(j -> j.joint().name().equals(run.line().joint()))
        .findFirst();
  }

  private String step(RunPlan run) {
    return plan.operations().stream()
        .filter(t -> t.operation().kind() == Operation.Kind.WELD)
        .filter(t -> t.operation().run().equals(Optional.of(run.name())))
        .map(t -> Integer.toString(t.number()))
        .collect(Collectors.joining(", "));
  }

  /** Leg and throat, both by name. */
  Shown size(JointPlan joint) {
    Shown throat = measures.length(joint.size().throat().value());
    Optional<Shown> leg = joint.size().leg().map(l -> measures.length(l.value()));
    return new Shown(
        leg.map(l -> "leg z " + l.first() + ", ").orElse("") + "throat a " + throat.first(),
        leg.map(l -> "z " + l.other() + ", ").orElse("") + "a " + throat.other());
  }

  /** The passes of joints that are alike; runs that are set alike share a line. */
  Table passes(List<JointPlan> joints) {
    Map<List<Shown>, List<String>> sameSettings = new LinkedHashMap<>();
    for (JointPlan joint : joints) {
      for (RunPlan run : joint.runs()) {
        for (PassPlan pass : run.passes()) {
          sameSettings
              .computeIfAbsent(pass(run, pass), k -> new ArrayList<>())
              .add(weldNumber(run.name()));
        }
      }
    }
    List<List<Shown>> rows = new ArrayList<>();
    sameSettings.forEach(
        (cells, welds) -> {
          List<Shown> row = new ArrayList<>(cells);
          row.add(1, Shown.only(String.join(" ", inOrder(welds))));
          rows.add(row);
        });
    return new Table(
        List.of(
            "pass", "welds", "kind", "set", "wire feed", "travel", "heat input", "bead", "t8/5"),
        rows);
  }

  private List<Shown> pass(RunPlan run, PassPlan pass) {
    return row(
        "pass " + pass.number(),
        pass.kind().word() + ", layer " + pass.layer(),
        settings.pass(run, pass),
        settings.feed(run, pass),
        measures.travel(pass.travelMmPerS()),
        measures.heat(pass.heatInput().value()),
        Measures.plain(pass.area().value(), "mm\u00b2"),
        Measures.plain(pass.coolingTime().value(), "s"));
  }

  /** W2 before W10. */
  private static List<String> inOrder(List<String> welds) {
    return welds.stream()
        .sorted(Comparator.comparingInt(String::length).thenComparing(Comparator.naturalOrder()))
        .toList();
  }

  /** What each machine can make of each joint. */
  Table verdicts() {
    List<String> machines =
        plan.weldment().machines().stream().map(m -> m.machine().name()).toList();
    List<String> heads = new ArrayList<>(List.of("joint"));
    heads.addAll(machines);
    List<List<Shown>> rows = new ArrayList<>();
    for (JointPlan joint : plan.joints()) {
      List<Object> cells = new ArrayList<>(List.of(joint.joint().name()));
      for (String machine : machines) {
        String word =
            Verdicts.of(machine, joint).map(v -> Verdicts.words(v.verdict())).orElse("not asked");
        cells.add(joint.machine().equals(Optional.of(machine)) ? word + " (chosen)" : word);
      }
      rows.add(row(cells.toArray()));
    }
    return new Table(heads, rows);
  }

  /** The gates of one machine at one joint. */
  static Table gates(MachineVerdict verdict) {
    List<List<Shown>> rows = new ArrayList<>();
    for (GateResult gate : verdict.gates()) {
      rows.add(
          row(
              gate.name(),
              Verdicts.outcomeWords(gate.outcome()),
              gate.why(),
              gate.figures().stream()
                  .map(f -> f.name() + " " + Measures.plain(f.value(), f.unit()))
                  .collect(Collectors.joining("; ")),
              gate.wouldChange().isEmpty() ? "\u2013" : gate.wouldChange()));
    }
    return new Table(List.of("gate", "answer", "why", "figures", "what would change it"), rows);
  }

  Table checks() {
    List<List<Shown>> rows = new ArrayList<>();
    for (Plan.CheckPlan plan : plan.checks()) {
      String subjects =
          plan.check().subjects().stream().map(Shown::subject).collect(Collectors.joining(", "));
      rows.add(
          row(
              plan.check().name(),
              plan.check().kind().word() + ": " + subjects,
              measures.fine(plan.toleranceMm().value()),
              expected(plan),
              "__________"));
    }
    return new Table(List.of("check", "what", "within", "expect", "measured"), rows);
  }

  private Shown expected(Plan.CheckPlan plan) {
    if (plan.expectedMm().isEmpty()) {
      return Shown.only("not calculated: measure it");
    }
    Shown expected = measures.fine(plan.expectedMm().orElseThrow());
    if (plan.lowMm().isEmpty() || plan.highMm().isEmpty()) {
      return expected;
    }
    Shown low = measures.fine(plan.lowMm().orElseThrow());
    Shown high = measures.fine(plan.highMm().orElseThrow());
    return new Shown(
        expected.first() + ", 9 times in 10 between " + low.first() + " and " + high.first(),
        low.other() + " to " + high.other());
  }

  CutTables cuts() {
    return new CutTables(plan.consumables().cutList(), measures);
  }

  Table consumables() {
    Plan.Consumables c = plan.consumables();
    List<List<Shown>> rows = new ArrayList<>();
    for (Plan.FillerUse filler : c.fillers()) {
      rows.add(
          row(
              filler.designation() + ", " + measures.length(filler.diameterMm()).text(),
              measures.of(filler.kg()),
              (filler.pieces() > 0 ? filler.pieces() + " pieces" : "wire")
                  + " to buy; "
                  + measures.mass(filler.depositedKg()).text()
                  + " of it stays in the joints"));
    }
    rows.add(row("shielding gas", Measures.plain(c.gasLitres().value(), "litres"), ""));
    rows.add(row("electricity", Measures.plain(c.energyKWh().value(), "kWh"), ""));
    rows.add(row("weld metal", measures.of(c.weldMetalKg()), "in the joints"));
    rows.add(row("finished weldment", measures.of(c.massKg()), "mass to lift and turn"));
    rows.add(row("arc time", Measures.duration(c.arcS()), ""));
    rows.add(row("waits", Measures.duration(c.waitS()), "included in the whole job"));
    rows.add(row("whole job", Measures.duration(c.elapsedS()), ""));
    return new Table(List.of("item", "amount", "remark"), rows);
  }

  Table cost() {
    List<List<Shown>> rows = new ArrayList<>();
    plan.cost()
        .ifPresent(
            cost -> {
              rows.add(row("labour", money(cost.labour(), cost.currency())));
              rows.add(row("filler", money(cost.filler(), cost.currency())));
              rows.add(row("gas", money(cost.gas(), cost.currency())));
              rows.add(row("electricity", money(cost.energy(), cost.currency())));
              rows.add(row("stock, the pieces alone", money(cost.stock(), cost.currency())));
              rows.add(row("together", money(cost.total(), cost.currency())));
            });
    return new Table(List.of("cost", "amount"), rows);
  }

  private static String money(Computed amount, String currency) {
    return String.format(Locale.ROOT, "%.2f %s", amount.value(), currency);
  }

  /** What is stripped, masked, drilled, put in and put back, with the step that does it. */
  Table lists() {
    List<List<Shown>> rows = new ArrayList<>();
    for (Timed timed : plan.operations()) {
      boolean listed =
          switch (timed.operation().kind()) {
            case STRIP, MASK, DRILL, INSERT, REFIT -> true;
            case CUT,
                TEST,
                BEVEL,
                CLEAN,
                FIT,
                PREHEAT,
                TACK,
                MOVE,
                TURN_OVER,
                WELD,
                WAIT,
                COOL,
                RELEASE,
                MEASURE,
                DRESS,
                PAINT,
                WATCH ->
                false;
          };
      if (listed) {
        rows.add(
            row(
                timed.operation().kind().words(),
                timed.operation().what(),
                "step " + timed.number() + ", " + beforeWelding(timed)));
      }
    }
    return new Table(List.of("list", "what", "when"), rows);
  }

  private String beforeWelding(Timed timed) {
    int first = firstStep(Operation.Kind.WELD, true);
    int last = firstStep(Operation.Kind.WELD, false);
    if (timed.number() < first) {
      return "before welding";
    }
    return timed.number() > last ? "after welding" : "between welds";
  }

  private int firstStep(Operation.Kind kind, boolean first) {
    return plan.operations().stream()
        .filter(t -> t.operation().kind() == kind)
        .mapToInt(Timed::number)
        .reduce((a, b) -> first ? Math.min(a, b) : Math.max(a, b))
        .orElse(Integer.MAX_VALUE);
  }

  static Table formulas(FormulasUsed formulas) {
    List<List<Shown>> rows = new ArrayList<>();
    for (FormulasUsed.Use use : formulas.uses()) {
      rows.add(
          row(
              use.name(),
              use.formula().gives(),
              use.numbers(),
              use.formula().source(),
              use.warnings().isEmpty() ? "yes" : String.join("; ", use.warnings())));
    }
    return new Table(List.of("formula", "gives", "numbers", "source", "inside its range"), rows);
  }
}
