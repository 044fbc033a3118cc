package org.counterpull.order;

import java.util.Optional;
import java.util.Set;
import org.counterpull.jointplan.RunPlan;

/**
 * An operation with what the rules ask about it.
 *
 * @param tag the sort of step
 * @param operation the step as the plan shows it
 * @param parts names of the parts that it touches
 * @param joint name of the joint, for steps at one
 * @param subject name of the feature, fixture or run, for steps at one
 * @param links what ties it to other steps in a way that the rule's match knows: the parts that
 *     hide a run, the joints that close over a captive piece, the runs that close a cavity
 * @param turn place in the natural order among steps of the same sort, lowest first
 * @param run the run, for a weld
 * @param cause id of the rule that put it there; empty for what the weldment itself asks for
 */
record Step(
    StepTag tag,
    Operation operation,
    Set<String> parts,
    Optional<String> joint,
    Optional<String> subject,
    Set<String> links,
    int turn,
    Optional<RunPlan> run,
    String cause) {
  Step {
    parts = Set.copyOf(parts);
    links = Set.copyOf(links);
  }

  String id() {
    return operation.id();
  }

  boolean sharesPart(Step other) {
    return parts.stream().anyMatch(other.parts::contains);
  }

  static String partLink(String part) {
    return "part " + part;
  }

  static String jointLink(String joint) {
    return "joint " + joint;
  }

  static String runLink(String run) {
    return "run " + run;
  }
}
