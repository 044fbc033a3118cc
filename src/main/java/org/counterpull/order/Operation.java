package org.counterpull.order;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * One step at the bench.
 *
 * @param id stable identifier inside one plan, such as {@code weld:hinge-1/top}
 * @param kind what sort of step
 * @param what what is done: a verb first, at most a dozen words
 * @param where the run, joint, part, feature or fixture that it is done to; empty for the whole
 *     weldment
 * @param place where the work stands for it
 * @param why reasons, each a sentence; from the rules that put it there or before something else
 * @param cautions shown with the step, each a sentence
 * @param activeS time that somebody is busy with it, s (arc-on time of a run lies inside)
 * @param run name of the run for {@link Kind#WELD}; of the joint's run for tacks
 */
public record Operation(
    String id,
    Kind kind,
    String what,
    String where,
    String place,
    List<String> why,
    List<String> cautions,
    double activeS,
    Optional<String> run) {

  public Operation {
    why = List.copyOf(why);
    cautions = List.copyOf(cautions);
  }

  /** The same step with more cautions, each a sentence. */
  public Operation withCautions(List<String> more) {
    List<String> all = new java.util.ArrayList<>(cautions);
    all.addAll(more);
    return new Operation(id, kind, what, where, place, why, all, activeS, run);
  }

  /** Sorts of steps, roughly in the order of a job. */
  public enum Kind {
    CUT,
    BEVEL,
    DRILL,
    CLEAN,
    STRIP,
    MASK,
    INSERT,
    FIT,
    TEST,
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
    REFIT,
    PAINT,
    WATCH;

    /** The words used on plans. */
    public String words() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }
}
