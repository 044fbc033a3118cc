package org.counterpull.order;

import java.util.List;
import java.util.Optional;
import org.counterpull.jointplan.RunPlan;

/**
 * How warm the work is and how long it takes to cool. The order of work asks nothing else of the
 * heat, so that a finer model can take this one's place.
 */
public interface WaitModel {
  /**
   * Highest temperature of the metal along a run's line, deg C.
   *
   * @param next the run that is about to be welded
   * @param history every pass laid so far, in order
   * @param nowS time from the beginning of the job, s
   */
  double metalC(RunPlan next, List<Welded> history, double nowS);

  /** Lowest temperature along a run's line, deg C, for preheating. */
  default double coolestC(RunPlan next, List<Welded> history, double nowS) {
    return metalC(next, history, nowS);
  }

  /** How long to wait until the metal is at or below the run's interpass limit, s; 0 for not. */
  double secondsBefore(RunPlan next, List<Welded> history, double nowS);

  /** How long to wait until all the work is at or below a temperature, s; 0 for not. */
  double secondsUntilAllBelow(double tempC, List<Welded> history, double nowS);

  /**
   * The feature for whose sake the run waits longer than for its interpass limit, in words; empty
   * when there is none.
   */
  default Optional<String> spares(RunPlan next, List<Welded> history, double nowS) {
    return Optional.empty();
  }

  /** Whether it knows the heat of preheating, so that it can say when a run is too cold. */
  default boolean knowsPreheat() {
    return false;
  }

  /** Told that a job begins, with cold parts. */
  default void jobBegins() {}

  /** Told of a pass that is laid. */
  default void laid(Welded welded) {}

  /** Told of a tacking or preheating step that is done; models that leave both out do nothing. */
  default void done(Operation operation, double startS, double endS) {}
}
