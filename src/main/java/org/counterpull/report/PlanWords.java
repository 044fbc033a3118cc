package org.counterpull.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.counterpull.jointplan.Coupon;
import org.counterpull.jointplan.EdgePreparation;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.machine.MachineVerdict;
import org.counterpull.machine.Stretch;
import org.counterpull.machine.Verdict;
import org.counterpull.order.Operation;
import org.counterpull.order.Timed;
import org.counterpull.plan.Plan;
import org.counterpull.weldment.Part;

/** What a plan says in sentences and lists, the same on every kind of page. */
final class PlanWords {
  static final String FOOT =
      "A plan, not a certificate. Local codes, a qualified procedure, a certified welder and an"
          + " engineer come first where people can be hurt.";

  private final Plan plan;
  private final Measures measures;

  /**
   * A line with its label.
   *
   * @param label what it is
   * @param value what it says
   */
  record Line(String label, Shown value) {
    Line(String label, String value) {
      this(label, Shown.only(value));
    }
  }

  /**
   * Steps that belong together.
   *
   * @param title what they are about
   * @param place where
   * @param steps in order
   */
  record Phase(String title, String place, List<Timed> steps) {}

  PlanWords(Plan plan, Measures measures) {
    this.plan = plan;
    this.measures = measures;
  }

  /** The answer in one sentence. */
  String answer() {
    long refused = plan.joints().stream().filter(j -> j.runs().isEmpty()).count();
    if (!plan.refusals().isEmpty() || refused > 0) {
      return "Not all of this can be done as it is asked for: read this first.";
    }
    List<String> tests = joints(Verdict.TEST_FIRST);
    if (!tests.isEmpty()) {
      return "Can be done, but weld, cut and etch a test piece first for "
          + String.join(", ", tests)
          + "; not where people depend on it.";
    }
    return "Can be done with the machines at hand.";
  }

  /** Joints whose chosen machine got this verdict. */
  List<String> joints(Verdict verdict) {
    return plan.joints().stream()
        .filter(j -> Verdicts.chosen(j).map(MachineVerdict::verdict).equals(Optional.of(verdict)))
        .map(j -> j.joint().name())
        .toList();
  }

  /** The head of the sheet. */
  List<Line> head() {
    List<Line> lines = new ArrayList<>();
    machines().forEach((machine, use) -> lines.add(new Line("machine", machine + ": " + use)));
    Set<String> fillers = new LinkedHashSet<>();
    for (RunPlan run : plan.runs()) {
      fillers.add(
          run.filler().designation()
              + " "
              + measures.length(run.filler().diameterMm()).text()
              + ", gas: "
              + run.filler().gas()
              + ", "
              + run.filler().polarity());
    }
    fillers.forEach(filler -> lines.add(new Line("filler and gas", filler)));
    Set<String> steels = new LinkedHashSet<>();
    for (Part part : plan.weldment().parts()) {
      steels.add(
          part.steel().designation()
              + switch (part.steel().certainty()) {
                case CERTIFIED -> " (certificate)";
                case TYPICAL -> " (typical values)";
                case UNKNOWN -> "";
              });
    }
    lines.add(new Line("steel", String.join(", ", steels)));
    lines.add(new Line("mass", measures.of(plan.consumables().massKg())));
    lines.add(
        new Line("welds", plan.runs().size() + " runs at " + plan.joints().size() + " joints"));
    lines.add(
        new Line(
            "time",
            Measures.duration(plan.consumables().elapsedS())
                + " in all: arc "
                + Measures.duration(plan.consumables().arcS())
                + ", waits "
                + Measures.duration(plan.consumables().waitS())));
    lines.add(preheat());
    return lines;
  }

  private Map<String, String> machines() {
    Map<String, String> machines = new LinkedHashMap<>();
    for (RunPlan run : plan.runs()) {
      String place = run.place().equals("here") ? "" : ", at " + run.place();
      String process = run.process().word() + " (" + run.process().iso4063() + ")" + place;
      machines.merge(
          run.machine(), process, (a, b) -> List.of(a.split("; ")).contains(b) ? a : a + "; " + b);
    }
    return machines;
  }

  private Line preheat() {
    return plan.preheat().joints().isEmpty()
        ? new Line("preheat", "none needed above the temperature of the shop")
        : new Line(
            "preheat",
            new Shown(
                "up to "
                    + measures.of(plan.preheat().highest()).first()
                    + " at "
                    + String.join(", ", plan.preheat().joints()),
                measures.of(plan.preheat().highest()).other()));
  }

  /** The steps, with a heading whenever the work or the place changes. */
  List<Phase> phases() {
    List<Phase> phases = new ArrayList<>();
    String title = "Get ready";
    for (int i = 0; i < plan.operations().size(); i++) {
      Timed timed = plan.operations().get(i);
      title = title(i, title);
      String place = timed.operation().place();
      Phase last = phases.isEmpty() ? null : phases.get(phases.size() - 1);
      if (last == null || !last.title().equals(title) || !last.place().equals(place)) {
        last = new Phase(title, place, new ArrayList<>());
        phases.add(last);
      }
      last.steps().add(timed);
    }
    return phases;
  }

  /** Waits, turns and preheat belong to what they lead to, checks on the way to what was before. */
  private String title(int i, String before) {
    return switch (plan.operations().get(i).operation().kind()) {
      case CUT, BEVEL, DRILL, CLEAN, STRIP, MASK, TEST -> "Get ready";
      case INSERT, FIT, TACK -> "Fit and tack";
      case WELD -> "Weld";
      case PREHEAT, MOVE, TURN_OVER, WAIT, COOL ->
          weldsAfter(i) ? title(i + 1, before) : "Finish and measure";
      case RELEASE, MEASURE, DRESS, REFIT, PAINT, WATCH ->
          weldsAfter(i) ? before : "Finish and measure";
    };
  }

  private boolean weldsAfter(int i) {
    return plan.operations().subList(i + 1, plan.operations().size()).stream()
        .anyMatch(t -> t.operation().kind() == Operation.Kind.WELD);
  }

  /** Steps at which work stops until something is true. */
  static boolean holds(Operation operation) {
    return switch (operation.kind()) {
      case WAIT, COOL, MEASURE, PREHEAT, WATCH, TEST -> true;
      case CUT,
          BEVEL,
          DRILL,
          CLEAN,
          STRIP,
          MASK,
          INSERT,
          FIT,
          TACK,
          MOVE,
          TURN_OVER,
          WELD,
          RELEASE,
          DRESS,
          REFIT,
          PAINT ->
          false;
    };
  }

  /** What is to be known of joints that are alike, beside their passes. */
  List<Line> joints(List<JointPlan> alike) {
    JointPlan joint = alike.get(0);
    List<Line> lines = new ArrayList<>();
    lines.add(
        new Line(
            joint.contact().form().word(),
            alike.stream()
                .map(j -> j.joint().first() + " onto " + j.joint().second())
                .collect(Collectors.joining("; "))));
    if (alike.size() == 1 && !joint.runs().isEmpty()) {
      lines.add(new Line("runs", runsOf(alike)));
    }
    lines.add(
        new Line("edges", joint.preparation().kind().words() + ". " + joint.preparation().how()));
    lines.add(
        new Line("why", joint.preparation().reason() + " (" + joint.preparation().source() + ")"));
    Shown size = new PlanTables(plan, measures).size(joint);
    lines.add(
        new Line("size", new Shown(size.first() + ". " + joint.size().reason(), size.other())));
    joint
        .loadCheck()
        .ifPresent(
            c ->
                lines.add(
                    new Line(
                        "load",
                        Math.round(100 * c.utilisation().value()) + " % used, " + c.governs())));
    joint.machine().ifPresent(machine -> lines.add(new Line("machine", machine)));
    String settings =
        joint.runs().stream().map(RunPlan::procedure).distinct().collect(Collectors.joining("; "));
    if (!settings.isEmpty()) {
      lines.add(new Line("settings from", settings));
    }
    joint
        .filler()
        .ifPresent(
            f ->
                lines.add(
                    new Line(
                        "filler",
                        f.designation()
                            + ", "
                            + f.polarity()
                            + ", gas: "
                            + f.gas()
                            + "; "
                            + f.storage())));
    lines.addAll(steel().lines(joint));
    return lines;
  }

  /** What the steels ask for. */
  SteelWords steel() {
    return new SteelWords(measures, plan.weldment().surroundings().ambientC());
  }

  /** How a small machine is stretched, and its limits. */
  List<String> stretch(MachineVerdict verdict) {
    return measures.sentences().of(Stretch.of(verdict));
  }

  /** Joints in groups that are prepared, welded and judged alike, in the order of the file. */
  List<List<JointPlan>> alike() {
    Map<List<Object>, List<JointPlan>> groups = new LinkedHashMap<>();
    for (JointPlan joint : plan.joints()) {
      groups.computeIfAbsent(likeness(joint), k -> new ArrayList<>()).add(joint);
    }
    return List.copyOf(groups.values());
  }

  private List<Object> likeness(JointPlan joint) {
    PlanTables tables = new PlanTables(plan, measures);
    List<Object> traits = new ArrayList<>();
    traits.add(joint.contact().form());
    traits.add(joint.size());
    traits.add(joint.machine());
    traits.add(joint.preheat());
    traits.add(joint.carbonEquivalents());
    traits.add(joint.refusals());
    EdgePreparation p = joint.preparation();
    traits.add(List.of(p.kind(), p.firstDepthMm(), p.secondDepthMm(), p.angleDeg()));
    traits.add(List.of(p.rootFaceMm(), p.rootGapMm(), p.how()));
    for (RunPlan run : joint.runs()) {
      traits.add(run.line().shape());
      traits.add(List.of(run.line().firstWallMm(), run.line().secondWallMm()));
      traits.add(run.line().flareRadiusMm());
      traits.add(tables.settings(run));
      traits.add(run.passes().stream().map(x -> x.area().value()).toList());
    }
    joint.verdicts().forEach(v -> traits.add(List.of(v.machine(), v.verdict())));
    return traits;
  }

  /** Runs of joints with their numbers: W3 hinge-1/top, W4 hinge-1/bottom. */
  String runsOf(List<JointPlan> joints) {
    PlanTables tables = new PlanTables(plan, measures);
    return joints.stream()
        .flatMap(joint -> joint.runs().stream())
        .map(r -> tables.weldNumber(r.name()) + " " + r.name())
        .collect(Collectors.joining(", "));
  }

  /** What is to be noted of joints, each sentence once. */
  static List<String> notesOf(List<JointPlan> joints) {
    return joints.stream()
        .flatMap(
            joint ->
                joint.notes().stream()
                    .map(n -> joints.size() == 1 ? n : joint.joint().name() + ": " + n))
        .distinct()
        .toList();
  }

  /** Test pieces with the joints that share each, numbered as in the steps. */
  Map<Coupon, List<JointPlan>> coupons() {
    Map<Coupon, List<JointPlan>> coupons = new LinkedHashMap<>();
    for (JointPlan joint : plan.joints()) {
      joint.coupon().ifPresent(c -> coupons.computeIfAbsent(c, k -> new ArrayList<>()).add(joint));
    }
    return coupons;
  }

  /** What is to be done about one test piece. */
  static List<Line> coupon(Coupon coupon) {
    List<Line> lines = new ArrayList<>();
    lines.add(new Line("why", coupon.why()));
    lines.add(new Line("pieces", coupon.pieces()));
    lines.add(new Line("weld", coupon.welded()));
    coupon.cut().forEach(c -> lines.add(new Line("cut and etch", c)));
    coupon.see().forEach(s -> lines.add(new Line("see", s)));
    lines.add(new Line("found", "good / not good: __________  by: __________  date: __________"));
    return lines;
  }

  static String namesOf(List<JointPlan> joints) {
    return joints.stream().map(j -> j.joint().name()).collect(Collectors.joining(", "));
  }
}
