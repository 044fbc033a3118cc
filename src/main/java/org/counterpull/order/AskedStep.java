package org.counterpull.order;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.counterpull.weldment.Joint;

/**
 * A step at a joint that planning asks for beside those of the weldment itself: what a way of
 * fastening takes.
 *
 * @param tag what sort of step; one of each sort at a joint
 * @param joint where
 * @param what is done
 * @param why a sentence
 */
public record AskedStep(StepTag tag, String joint, String what, String why) {

  /** Adds those at joints that are welded. */
  static void add(Steps all, List<AskedStep> asked) {
    for (AskedStep step : asked) {
      Joint at = all.weldment().joint(step.joint());
      Set<String> parts = new TreeSet<>(List.of(at.first(), at.second()));
      all.add(
          new Steps.Draft(step.tag(), step.joint(), step.what(), step.joint())
              .parts(parts)
              .joint(step.joint())
              .subject(step.joint())
              .why(step.why()));
    }
  }
}
