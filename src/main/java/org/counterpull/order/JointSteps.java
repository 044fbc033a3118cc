package org.counterpull.order;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.jointplan.EdgePreparation;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.weldment.Joint;

/** Bevelling, cleaning, preheating, tacking and welding of joints. */
final class JointSteps {
  private JointSteps() {}

  static void add(Steps all) {
    Vector3D middle = Middle.of(all.weldment());
    int turn = 0;
    for (JointPlan plan : all.joints()) {
      prepare(all, plan, turn);
      tack(all, plan);
      for (RunPlan run : plan.runs()) {
        weld(all, plan, run, middle, turn++);
      }
    }
  }

  private static List<String> partsOf(JointPlan plan) {
    return List.of(plan.joint().first(), plan.joint().second());
  }

  private static void prepare(Steps all, JointPlan plan, int turn) {
    Joint joint = plan.joint();
    EdgePreparation preparation = plan.preparation();
    boolean holes =
        preparation.kind() == EdgePreparation.Kind.PLUG
            || preparation.kind() == EdgePreparation.Kind.SLOT;
    if (holes || preparation.firstDepthMm() > 0 && preparation.angleDeg() > 0) {
      String cut = holes ? joint.first() : preparation.bevelledPart();
      boolean one = !cut.isEmpty();
      String part = one ? cut : Steps.names(partsOf(plan));
      all.add(
          new Steps.Draft(
                  StepTag.BEVEL,
                  joint.name(),
                  String.format(
                      Locale.ROOT,
                      "Prepare %s for %s: %s",
                      part,
                      joint.name(),
                      preparation.kind().words()),
                  joint.name())
              .parts(one ? List.of(cut) : partsOf(plan))
              .joint(joint.name())
              .why(List.of(preparation.how(), preparation.reason()))
              .turn(turn));
    }
    all.add(
        new Steps.Draft(
                StepTag.CLEAN,
                joint.name(),
                "Clean " + joint.name() + " to bright metal, 25 mm each side",
                joint.name())
            .parts(partsOf(plan))
            .joint(joint.name())
            .why(WithRule.texts(StepTag.CLEAN, all.weldment(), partsOf(plan)))
            .cautions(List.of("No solvent with chlorine; let what was degreased dry."))
            .turn(turn));
  }

  private static boolean preheated(Steps all, JointPlan plan) {
    return tackPreheatC(plan) > all.weldment().surroundings().ambientC();
  }

  private static double tackPreheatC(JointPlan plan) {
    return plan.steel().tackPreheat().orElse(plan.preheat()).value();
  }

  private static void tack(Steps all, JointPlan plan) {
    Joint joint = plan.joint();
    int turn = all.fitOrder().of(joint);
    boolean preheated = preheated(all, plan);
    if (preheated) {
      all.add(
          new Steps.Draft(
                  StepTag.PREHEAT_FOR_TACKS,
                  joint.name(),
                  String.format(
                      Locale.ROOT,
                      "Preheat %s to %.0f C for its tacks",
                      joint.name(),
                      tackPreheatC(plan)),
                  joint.name())
              .parts(partsOf(plan))
              .joint(joint.name())
              .why(
                  tackPreheatC(plan) > plan.preheat().value() + 1
                      ? List.of(
                          String.format(
                              Locale.ROOT,
                              "A tack is a short bead with little heat, so it asks for more than"
                                  + " the %.0f C of the runs.",
                              plan.preheat().value()))
                      : List.of())
              .turn(turn));
    }
    if (plan.runs().isEmpty()) {
      return;
    }
    List<String> why = new ArrayList<>();
    why.add("Tacks on opposite sides in turn keep the part from leaning.");
    why.addAll(WithRule.texts(StepTag.TACK, all.weldment(), List.of(joint.first())));
    RunPlan longest =
        plan.runs().stream().max(Comparator.comparingDouble(RunPlan::weldedMm)).orElseThrow();
    TackLayout layout = TackLayout.of(longest.line(), preheated);
    int count = 0;
    for (RunPlan run : plan.runs()) {
      count += TackLayout.of(run.line(), preheated).count();
    }
    all.add(
        new Steps.Draft(
                StepTag.TACK,
                joint.name(),
                String.format(
                    Locale.ROOT,
                    "Tack %s: %d of %s mm, ends first, opposite sides in turn",
                    joint.name(),
                    Math.max(2, count),
                    Steps.mm(layout.lengthMm())),
                joint.name())
            .parts(partsOf(plan))
            .joint(joint.name())
            .links(all.rows().links(joint.first()))
            .why(why)
            .times(Math.max(2, count))
            .turn(turn));
  }

  private static void weld(Steps all, JointPlan plan, RunPlan run, Vector3D middle, int turn) {
    Set<String> hiddenBy = new TreeSet<>();
    if (!run.line().reach().open()) {
      run.line().reach().blockedBy().stream()
          .filter(part -> !partsOf(plan).contains(part))
          .map(Step::partLink)
          .forEach(hiddenBy::add);
    }
    List<String> why = new ArrayList<>();
    for (WithRule rule : WithRule.all()) {
      if (rule.tag() == StepTag.WELD
          && rule.circumstance().holds(all.weldment(), all.rows(), plan, run)) {
        why.add(rule.text());
      }
    }
    Step step =
        new Steps.Draft(StepTag.WELD, run.name(), what(all, plan, run, middle), plan.joint().name())
            .parts(partsOf(plan))
            .joint(plan.joint().name())
            .subject(run.name())
            .links(hiddenBy)
            .why(why)
            .turn(turn)
            .step(run.place());
    all.addWeld(step, run);
  }

  private static String what(Steps all, JointPlan plan, RunPlan run, Vector3D middle) {
    String from =
        RunStart.of(all.weldment(), plan.joint().second(), run, middle)
            .map(face -> ", from the " + face.word())
            .orElse(", all the way round");
    int passes = run.passes().size();
    return String.format(
        Locale.ROOT,
        "Weld %s: %s mm, %d %s%s",
        run.name(),
        Steps.mm(run.weldedMm()),
        passes,
        passes == 1 ? "pass" : "passes",
        from);
  }

  /** The step of a run with its run and active time set. */
  static Step withRun(Step step, RunPlan run) {
    Operation plain = step.operation();
    Operation operation =
        new Operation(
            plain.id(),
            plain.kind(),
            plain.what(),
            run.name(),
            run.place(),
            plain.why(),
            plain.cautions(),
            RunTime.activeS(run),
            Optional.of(run.name()));
    return new Step(
        step.tag(),
        operation,
        step.parts(),
        step.joint(),
        step.subject(),
        step.links(),
        step.turn(),
        Optional.of(run),
        step.cause());
  }
}
