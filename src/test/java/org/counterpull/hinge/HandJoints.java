package org.counterpull.hinge;

import java.util.List;
import org.counterpull.contact.ContactFinder;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.JointPlanner;
import org.counterpull.procedure.ProcedureLibrary;
import org.counterpull.weldment.Weldment;

/** Joints of a weldment, planned one by one. */
final class HandJoints {
  private HandJoints() {}

  static List<JointPlan> of(Weldment weldment) {
    JointPlanner planner = new JointPlanner(weldment, ProcedureLibrary.bundled());
    return ContactFinder.usual().find(weldment).contacts().stream()
        .map(c -> planner.plan(weldment.joint(c.joint()), c))
        .toList();
  }
}
