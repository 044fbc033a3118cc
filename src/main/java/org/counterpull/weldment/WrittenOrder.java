package org.counterpull.weldment;

import java.util.List;
import java.util.Optional;
import org.counterpull.space.Face;

/**
 * A sequence that the file fixes.
 *
 * @param steps in order
 */
public record WrittenOrder(List<Step> steps) {

  public WrittenOrder {
    steps = List.copyOf(steps);
  }

  /**
   * One run of the sequence.
   *
   * @param run name of the run
   * @param from the end that it starts at, as the direction (in the axes of the joint's second
   *     part) in which that end lies; empty for the planner's choice
   * @param startS when the arc starts, seconds from the beginning
   * @param pauseS wait before it, seconds after the run before
   */
  public record Step(
      String run, Optional<Face> from, Optional<Double> startS, Optional<Double> pauseS) {}
}
