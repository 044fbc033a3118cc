package org.counterpull.planning;

import java.util.ArrayList;
import java.util.List;
import org.counterpull.mount.MountAnswer;
import org.counterpull.mount.Outcome;
import org.counterpull.mount.Way;
import org.counterpull.mount.WayAnswer;
import org.counterpull.order.AskedStep;
import org.counterpull.order.StepTag;

/** The steps that the way of fastening which is taken brings into the order of work. */
final class MountSteps {
  private static final String WHY = "The mount sheet's choice: see its section.";

  private MountSteps() {}

  static List<AskedStep> of(MountAnswer answer) {
    WayAnswer way = answer.of(answer.taken());
    String joint = answer.mount().name();
    if (way.outcome() == Outcome.DONT) {
      return List.of();
    }
    return switch (way.way()) {
      case AS_DRAWN, SMALL_PASSES -> List.of();
      case STRIPPED ->
          List.of(
              step(StepTag.MAKE_SAFE, joint, "Strip the tube: " + said(way.before())),
              step(StepTag.PROVE, joint, sentence(said(way.after()))));
      case HEAT_SINK ->
          List.of(
              step(StepTag.HEAT_SINK, joint, "Cool it: " + said(way.before())),
              step(StepTag.REMOVE_SINK, joint, "Take bar and rag away; " + said(way.after())));
      case SLEEVE, SLEEVE_RING, SADDLE, CLAMP, PINNED -> mounted(way, joint);
    };
  }

  /** Made first, welded to off the tube, put on cold. */
  private static List<AskedStep> mounted(WayAnswer way, String joint) {
    List<AskedStep> steps = new ArrayList<>();
    List<String> made = new ArrayList<>(way.parts());
    List<String> last = new ArrayList<>();
    if (way.way() == Way.PINNED) {
      made.addAll(way.before());
    } else {
      last.addAll(behindFirst(way.before()));
    }
    steps.add(step(StepTag.MAKE_MOUNT, joint, "Make for " + joint + ": " + said(made)));
    last.addAll(way.after());
    String rest = last.isEmpty() ? "" : ": " + said(last);
    steps.add(
        step(
            StepTag.FIT_MOUNT,
            joint,
            "Put " + joint + " in its place, cold, with " + noun(way.way()) + rest));
    return steps;
  }

  /** The first tells what is welded to what, and stands at the welds. */
  private static List<String> behindFirst(List<String> before) {
    return before.subList(1, before.size());
  }

  private static String noun(Way way) {
    return switch (way) {
      case SLEEVE, SLEEVE_RING -> "sleeve";
      case SADDLE -> "saddle and cap";
      case CLAMP -> "clamp";
      case PINNED -> "bracket and pin";
      case AS_DRAWN, SMALL_PASSES, STRIPPED, HEAT_SINK -> "welds";
    };
  }

  /** What to heed at every tack and run of the joint. */
  static List<String> heed(MountAnswer answer) {
    WayAnswer way = answer.of(answer.taken());
    if (way.outcome() == Outcome.DONT) {
      return List.of();
    }
    return switch (way.way()) {
      case AS_DRAWN, STRIPPED, HEAT_SINK -> List.of();
      case SMALL_PASSES ->
          List.of(sentence(way.passes() + " passes in all: " + said(way.before())));
      case SLEEVE, SLEEVE_RING, SADDLE, CLAMP ->
          List.of("No arc on the tube: " + way.before().get(0) + ".");
      case PINNED -> List.of("No arc on the tube: weld it to its bracket.");
    };
  }

  private static AskedStep step(StepTag tag, String joint, String what) {
    return new AskedStep(tag, joint, what, WHY);
  }

  private static String said(List<String> texts) {
    return String.join("; ", texts);
  }

  private static String sentence(String text) {
    return text.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + text.substring(1);
  }
}
