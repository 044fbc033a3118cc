package org.counterpull.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.counterpull.contact.Contact;
import org.counterpull.contact.WeldLine;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.JointPlanner;
import org.counterpull.order.OrderCycle;
import org.counterpull.order.OrderPlanner;
import org.counterpull.order.OrderResult;
import org.counterpull.order.Precedence;
import org.counterpull.weldment.Weldment;

/**
 * The joints with every line that some order of work can reach. A line that nobody asked for and
 * that would have to be welded before a part on which it waits itself is left out; one that the
 * file asks for stays, and its circle of rules is a fault of the design.
 *
 * @param joints their plans
 * @param order what came of them
 */
record Reachable(List<JointPlan> joints, OrderResult order) {
  private static final String WELD = "weld:";
  private static final String HIDDEN = "R07";

  static Reachable of(Weldment weldment, List<Contact> contacts, JointPlanner planner, long seed) {
    List<Contact> left = new ArrayList<>(contacts);
    List<JointPlan> joints = new ArrayList<>();
    left.forEach(c -> joints.add(planner.plan(weldment.joint(c.joint()), c)));
    while (true) {
      List<JointPlan> shared = JointPlanner.sharing(joints);
      OrderResult result = OrderPlanner.plan(weldment, shared, contacts, seed);
      Optional<WeldLine> dropped = lineToDrop(joints, result);
      if (dropped.isEmpty()) {
        return new Reachable(shared, result);
      }
      for (int i = 0; i < left.size(); i++) {
        if (left.get(i).joint().equals(dropped.get().joint())) {
          left.set(i, shut(left.get(i), dropped.get()));
          joints.set(i, planner.plan(weldment.joint(left.get(i).joint()), left.get(i)));
        }
      }
    }
  }

  /** The first line of a circle that was not asked for and has others beside it. */
  private static Optional<WeldLine> lineToDrop(List<JointPlan> joints, OrderResult result) {
    if (!(result instanceof OrderCycle cycle)) {
      return Optional.empty();
    }
    for (Precedence member : cycle.members()) {
      if (member.rule().equals(HIDDEN)) {
        String name = member.earlier().substring(WELD.length());
        Optional<WeldLine> line =
            joints.stream()
                .filter(plan -> plan.joint().sides().isEmpty())
                .flatMap(plan -> plan.runs().stream())
                .filter(run -> run.name().equals(name))
                .map(run -> run.line())
                .findFirst();
        if (line.isPresent()) {
          return line;
        }
      }
    }
    return Optional.empty();
  }

  /** The contact with a line counted as out of reach whatever the order. */
  private static Contact shut(Contact contact, WeldLine line) {
    List<WeldLine> lines =
        contact.lines().stream().map(l -> l.run().equals(line.run()) ? l.outOfReach() : l).toList();
    return contact.withLines(lines);
  }
}
