package org.counterpull.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.PassPlan;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.machine.Machine;
import org.counterpull.order.TackLayout;
import org.counterpull.plan.Plan;
import org.counterpull.quantity.Printed;
import org.counterpull.steel.Family;
import org.counterpull.steel.Grades;
import org.counterpull.weldment.Fixture;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.ShopMachine;

/**
 * The fields of a preliminary welding procedure specification in the order of ISO 15609-1, clause
 * 4. What the plan doesn't know is left to be filled in, not left out.
 */
final class SheetFields {
  private static final String FILL_IN = "____________";
  private static final String NONE = "none";

  /**
   * A group of fields.
   *
   * @param title of the group
   * @param lines its fields
   */
  record Group(String title, List<PlanWords.Line> lines) {}

  private final Plan plan;
  private final Measures measures;

  SheetFields(Plan plan, Measures measures) {
    this.plan = plan;
    this.measures = measures;
  }

  /** All groups of a joint that is welded. */
  List<Group> of(JointPlan joint) {
    return List.of(
        new Group("Manufacturer", manufacturer(joint)),
        new Group("Parent material", parents(joint)),
        new Group("Joint", joint(joint)),
        new Group("Technique", technique(joint)),
        new Group("Filler and gas", filler(joint)),
        new Group("Electrical and speed", electrical(joint)),
        new Group("Heat", heat(joint)),
        new Group("For this process", new ProcessFields(measures).of(joint)));
  }

  private static PlanWords.Line line(String label, String value) {
    return new PlanWords.Line(label, value);
  }

  private List<PlanWords.Line> manufacturer(JointPlan joint) {
    return List.of(
        line("manufacturer", FILL_IN),
        line("pWPS no.", plan.weldment().name() + " / " + joint.joint().name()),
        line("WPQR no.", "none: preliminary, not qualified"));
  }

  private List<PlanWords.Line> parents(JointPlan joint) {
    List<PlanWords.Line> lines = new ArrayList<>();
    for (String name : List.of(joint.joint().first(), joint.joint().second())) {
      Part part = plan.weldment().part(name);
      String grade = part.steel().designation();
      lines.add(
          line(
              name,
              grade + ", ISO/TR 15608 group " + group(grade) + "; " + part.stock().describe()));
    }
    RunPlan run = joint.runs().get(0);
    double thin = Math.min(run.line().firstWallMm(), run.line().secondWallMm());
    double thick = Math.max(run.line().firstWallMm(), run.line().secondWallMm());
    lines.add(
        line(
            "thickness",
            thin == thick
                ? measures.length(thin).text() + " both; for this thickness only until qualified"
                : measures.length(thin).text()
                    + " on "
                    + measures.length(thick).text()
                    + "; for these only until qualified"));
    lines.add(
        line(
            "outside diameter",
            run.line()
                .flareRadiusMm()
                .map(r -> measures.length(2 * r).text())
                .orElse("plate or bar, no pipe")));
    return lines;
  }

  /** From memory: ISO/TR 15608, by family and yield strength. */
  private static String group(String designation) {
    return Grades.find(designation)
        .map(
            grade ->
                switch (grade.family()) {
                  case CARBON ->
                      grade.typical().isPresent() && grade.yieldMPa().isEmpty()
                          ? "11 or none (hardening steel)"
                          : grade.yieldMPa().orElse(0) <= 275 ? "1.1" : "1.2";
                  case QUENCHED_AND_TEMPERED -> "3.2";
                  case STAINLESS -> "8.1";
                  case ALUMINIUM -> designation.startsWith("6") ? "23.1" : "22";
                  case CAST_IRON -> "71";
                })
        .orElse(FILL_IN);
  }

  private List<PlanWords.Line> joint(JointPlan joint) {
    List<PlanWords.Line> lines = new ArrayList<>();
    lines.add(
        line(
            "type",
            joint.contact().form().word()
                + ", "
                + joint.preparation().kind().words()
                + ", "
                + joint.runs().size()
                + (joint.runs().size() == 1 ? " run" : " runs")));
    lines.add(new PlanWords.Line("size", new PlanTables(plan, measures).size(joint)));
    lines.add(line("preparation", joint.preparation().how()));
    lines.add(
        line(
            "cleaning",
            measures.sentences().of("bright metal 25 mm each side; no solvent with chlorine")));
    lines.add(
        line(
            "positions",
            joint.runs().stream()
                .map(r -> r.position().name() + " " + r.position().meaning())
                .distinct()
                .collect(Collectors.joining(", "))));
    lines.add(line("run sequence", sequence(joint)));
    lines.add(line("jigs", jigs(joint)));
    lines.add(line("tacks", tacks(joint)));
    return lines;
  }

  private String sequence(JointPlan joint) {
    PlanTables tables = new PlanTables(plan, measures);
    return plan.runs().stream()
        .filter(r -> r.line().joint().equals(joint.joint().name()))
        .map(
            r ->
                tables.weldNumber(r.name())
                    + " "
                    + r.line().side().word()
                    + " ("
                    + r.passes().size()
                    + (r.passes().size() == 1 ? " pass)" : " passes)"))
        .collect(Collectors.joining(", then "));
  }

  private String jigs(JointPlan joint) {
    List<String> names =
        plan.weldment().fixtures().stream()
            .filter(
                f ->
                    f.parts().contains(joint.joint().first())
                        || f.parts().contains(joint.joint().second()))
            .map(SheetFields::fixture)
            .toList();
    return names.isEmpty() ? NONE : String.join(", ", names);
  }

  private static String fixture(Fixture fixture) {
    return fixture.name() + " (" + fixture.kind().words() + ")";
  }

  private String tacks(JointPlan joint) {
    boolean warm =
        joint.steel().tackPreheat().orElse(joint.preheat()).value()
            > plan.weldment().surroundings().ambientC() + 1;
    int count = 0;
    double longest = 0;
    for (RunPlan run : joint.runs()) {
      TackLayout layout = TackLayout.of(run.line(), warm);
      count += layout.count();
      longest = Math.max(longest, layout.lengthMm());
    }
    return Math.max(2, count)
        + " of "
        + measures.length(Math.round(longest)).text()
        + ", ends first, opposite sides in turn"
        + (warm
            ? ", at "
                + measures.of(joint.steel().tackPreheat().orElse(joint.preheat())).text()
                + " or more"
            : "")
        + "; cracked ones ground out";
  }

  private List<PlanWords.Line> technique(JointPlan joint) {
    RunPlan run = joint.runs().get(0);
    return List.of(
        line("weaving", ProcessFields.weaving(run)),
        line("torch angle", ProcessFields.angles(run)),
        line(
            "gouging",
            joint.preparation().gouged()
                ? "second side ground or gouged to sound metal, a round bottom as wide as deep"
                : NONE),
        line(
            "backing",
            joint.preparation().backing().isEmpty() ? NONE : joint.preparation().backing()),
        line("between passes", "slag and silicate off, toes and stops looked at"));
  }

  private List<PlanWords.Line> filler(JointPlan joint) {
    RunPlan run = joint.runs().get(0);
    return List.of(
        line("designation", run.filler().designation()),
        line("make and trade name", FILL_IN),
        line("size", measures.length(run.filler().diameterMm()).text()),
        line("drying, handling", run.filler().storage()),
        line("shielding gas", ProcessFields.gas(run)),
        line("backing gas", ProcessFields.backingGas(run)));
  }

  private List<PlanWords.Line> electrical(JointPlan joint) {
    RunPlan run = joint.runs().get(0);
    List<PlanWords.Line> lines = new ArrayList<>();
    lines.add(line("current and pole", run.filler().polarity()));
    lines.add(line("pulse", NONE));
    lines.add(
        line("machine", run.machine() + (run.place().equals("here") ? "" : ", " + run.place())));
    lines.add(line("current", current(joint)));
    lines.add(line("voltage", range(joint, PassPlan::voltageV, 0.07, "V")));
    lines.add(line("travel", range(joint, PassPlan::travelMmPerS, 0.25, "mm/s")));
    boolean fed =
        joint.runs().stream()
            .flatMap(r -> r.passes().stream())
            .allMatch(p -> p.wireFeed().isPresent());
    lines.add(
        line(
            "wire feed",
            fed
                ? range(joint, p -> p.wireFeed().orElseThrow().value(), 0.10, "m/min")
                : "by hand, or not stated"));
    return lines;
  }

  /** As any range, but never beyond what the machine gives. */
  private String current(JointPlan joint) {
    double most =
        plan.weldment().machines().stream()
            .map(ShopMachine::machine)
            .filter(m -> m.name().equals(joint.runs().get(0).machine()))
            .mapToDouble(Machine::largestCurrentA)
            .findFirst()
            .orElse(Double.POSITIVE_INFINITY);
    return range(joint, PassPlan::currentA, 0.10, most, "A");
  }

  /** The planned span, and how far it may be left. */
  private static String range(
      JointPlan joint, ToDoubleFunction<PassPlan> number, double share, String unit) {
    return range(joint, number, share, Double.POSITIVE_INFINITY, unit);
  }

  private static String range(
      JointPlan joint, ToDoubleFunction<PassPlan> number, double share, double most, String unit) {
    double low = passes(joint).stream().mapToDouble(number).min().orElse(0);
    double high = passes(joint).stream().mapToDouble(number).max().orElse(0);
    String planned =
        Printed.number(low, 3).equals(Printed.number(high, 3))
            ? Printed.number(low, 3)
            : Printed.number(low, 3) + " to " + Printed.number(high, 3);
    return String.format(
        Locale.ROOT,
        "%s %s; allowed %s to %s",
        planned,
        unit,
        Printed.number(low * (1 - share), 3),
        Printed.number(Math.min(most, high * (1 + share)), 3));
  }

  private static List<PassPlan> passes(JointPlan joint) {
    return joint.runs().stream().flatMap(r -> r.passes().stream()).toList();
  }

  private List<PlanWords.Line> heat(JointPlan joint) {
    RunPlan run = joint.runs().get(0);
    boolean warm = joint.preheat().value() > plan.weldment().surroundings().ambientC() + 1;
    boolean hardens =
        Grades.find(plan.weldment().part(joint.joint().first()).steel().designation())
            .map(g -> g.family() == Family.QUENCHED_AND_TEMPERED)
            .orElse(false);
    return List.of(
        new PlanWords.Line("preheat, at least", measures.of(joint.preheat())),
        new PlanWords.Line("interpass, at least", measures.of(joint.preheat())),
        new PlanWords.Line("interpass, at most", measures.temperature(run.interpassMaxC())),
        line("heat input", range(joint, p -> p.heatInput().value(), 0.25, "kJ/mm")),
        line(
            "hydrogen release",
            hardens || warm && joint.preheat().value() > 150
                ? "held at the preheat until the last pass, then slowly cooled under a blanket"
                : NONE),
        line("post-heating", NONE),
        line("heat treatment", NONE));
  }
}
