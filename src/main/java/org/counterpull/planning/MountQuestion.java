package org.counterpull.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.mount.MountAnswer;
import org.counterpull.mount.MountCases;
import org.counterpull.mount.MountScreen;
import org.counterpull.mount.MountWays;
import org.counterpull.mount.Outcome;
import org.counterpull.mount.Way;
import org.counterpull.mount.WayAnswer;
import org.counterpull.order.AskedStep;
import org.counterpull.order.Operation;
import org.counterpull.order.Timed;
import org.counterpull.plan.Plan.Caution;
import org.counterpull.plan.Plan.Refusal;
import org.counterpull.weldment.Weldment;

/**
 * Straight to the tube, or how else: asked by the plan itself. Closed forms say where; there the
 * ways are compared by engine, and the one taken brings its steps.
 *
 * @param asked the welds that come near something
 * @param answers for each of them; empty where nobody wants engines
 * @param notKnown what lies on other parts than tubes, in sentences; empty where nobody wants
 *     engines
 */
record MountQuestion(List<MountScreen> asked, List<MountAnswer> answers, List<String> notKnown) {
  private static final String BASIS =
      "closed forms of rings and shells; common practice, no source";

  static MountQuestion of(Weldment weldment, List<JointPlan> joints, boolean engine) {
    List<MountScreen> asked = MountScreen.of(weldment, joints);
    List<MountAnswer> answers =
        engine ? asked.stream().map(near -> MountWays.of(near.mount())).toList() : List.of();
    List<String> notKnown = engine ? MountCases.notOnTubes(weldment, Optional.empty()) : List.of();
    return new MountQuestion(asked, answers, notKnown);
  }

  /** The steps of every way that is taken. */
  List<AskedStep> steps() {
    return answers.stream().flatMap(answer -> MountSteps.of(answer).stream()).toList();
  }

  /** Welds that must not be made as the file draws them. */
  List<Refusal> refusals() {
    return answers.stream().filter(MountQuestion::spoils).map(MountQuestion::refusal).toList();
  }

  private static boolean spoils(MountAnswer answer) {
    return answer.of(Way.AS_DRAWN).outcome() == Outcome.DONT;
  }

  private static Refusal refusal(MountAnswer answer) {
    String why =
        "straight on the tube, as it is drawn, it must not be welded: "
            + String.join("; ", answer.of(Way.AS_DRAWN).deciding());
    return new Refusal(answer.mount().name(), why, wayForward(answer));
  }

  private static String wayForward(MountAnswer answer) {
    if (answer.of(answer.taken()).outcome() == Outcome.DONT) {
      return "none of the ways looked at keeps it: take it off before welding or change the drawing";
    }
    String others =
        answer.ways().stream()
            .filter(w -> w.outcome() != Outcome.DONT && w.way() != answer.taken())
            .map(w -> w.way().words() + " (" + w.outcome().words() + ")")
            .collect(Collectors.joining(", "));
    return answer.taken().words()
        + " ("
        + answer.of(answer.taken()).outcome().words()
        + "); the steps below are for it"
        + (others.isEmpty() ? "" : ". These would do too: " + others);
  }

  /** Where to look, or what the way that is taken hangs on. */
  List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>();
    for (MountScreen near : asked) {
      cautions.add(new Caution("mount-" + near.joint(), text(near.joint()), near.because(), BASIS));
    }
    if (!notKnown.isEmpty()) {
      cautions.add(
          new Caution(
              "mount-not-known",
              "Gauge what must keep its size when it is cold, and leave stock to ream or bore it.",
              String.join(" ", notKnown).replaceAll("[.]$", ""),
              "common practice, no source"));
    }
    return cautions;
  }

  private String text(String joint) {
    return answers.stream()
        .filter(a -> a.mount().name().equals(joint))
        .findFirst()
        .map(MountQuestion::answered)
        .orElse(
            "Ask counterpull mount before this is welded straight to the tube: it compares sleeve,"
                + " saddle, clamp and pins by heat, bore and strength.");
  }

  private static String answered(MountAnswer answer) {
    WayAnswer taken = answer.of(answer.taken());
    return answer.mount().name()
        + ", straight on the tube: "
        + answer.of(Way.AS_DRAWN).outcome().words()
        + (answer.taken() == Way.AS_DRAWN
            ? "."
            : "; planned instead: "
                + answer.taken().words()
                + ", "
                + taken.outcome().words()
                + ".");
  }

  /** Steps with what to heed at each: where the weld goes, how its passes wait. */
  List<Timed> noted(List<Timed> operations) {
    List<Timed> noted = operations;
    for (MountAnswer answer : answers) {
      List<String> heed = MountSteps.heed(answer);
      if (!heed.isEmpty()) {
        String weld = "weld:" + answer.mount().name() + "/";
        String tack = "tack:" + answer.mount().name();
        noted = noted.stream().map(t -> with(t, weld, tack, heed)).toList();
      }
    }
    return noted;
  }

  private static Timed with(Timed timed, String weld, String tack, List<String> heed) {
    Operation operation = timed.operation();
    boolean here = operation.id().startsWith(weld) || operation.id().equals(tack);
    return here
        ? new Timed(timed.number(), operation.withCautions(heed), timed.startS(), timed.endS())
        : timed;
  }
}
