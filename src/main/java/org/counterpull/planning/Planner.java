package org.counterpull.planning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.counterpull.caution.Cautions;
import org.counterpull.contact.Contact;
import org.counterpull.cost.Consumption;
import org.counterpull.cost.Costing;
import org.counterpull.heat.solve.Progress;
import org.counterpull.hinge.PinRows;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.JointPlanner;
import org.counterpull.order.OrderCycle;
import org.counterpull.order.WorkOrder;
import org.counterpull.plan.Plan;
import org.counterpull.plan.Plan.Refusal;
import org.counterpull.procedure.ProcedureBook;
import org.counterpull.swing.SwingResult;
import org.counterpull.swing.Swings;
import org.counterpull.weldment.Weldment;

/** From a sound weldment to its plan. The same weldment and seed give the same plan. */
public final class Planner {
  private final ProcedureBook procedures;

  /**
   * A planner.
   *
   * @param procedures starting settings
   */
  public Planner(ProcedureBook procedures) {
    this.procedures = procedures;
  }

  /**
   * Plans the job with waits by closed forms, which nothing has verified.
   *
   * @param weldment what is built
   * @param contacts how its parts meet, one for each joint
   * @param seed for searches
   */
  public Plan plan(Weldment weldment, List<Contact> contacts, long seed) {
    return plan(weldment, contacts, seed, Engines.NONE, Progress.NONE);
  }

  /**
   * Plans the job.
   *
   * @param weldment what is built
   * @param contacts how its parts meet, one for each joint
   * @param seed for searches
   * @param engines what full models work out
   * @param progress told of the simulated time
   */
  public Plan plan(
      Weldment weldment, List<Contact> contacts, long seed, Engines engines, Progress progress) {
    JointPlanner jointPlanner = new JointPlanner(weldment, procedures);
    List<SwingResult> swings = Swings.of(weldment);
    Reachable reachable = Reachable.of(weldment, contacts, jointPlanner, seed);
    List<JointPlan> joints = reachable.joints();
    MountQuestion mounts = MountQuestion.of(weldment, joints, engines.mounts());
    List<Refusal> refusals = new ArrayList<>(mounts.refusals());
    refusals.addAll(Refusals.of(weldment, joints, swings));
    OrderedWork work =
        OrderedWork.of(
            new OrderedWork.Job(weldment, contacts, joints, seed),
            reachable.order(),
            mounts.steps(),
            engines,
            progress);
    work.cycle().ifPresent(cycle -> refusals.add(circle(cycle)));
    refusals.addAll(SensitiveNear.of(weldment, joints, work.heat()));
    WorkOrder done = work.order();
    Plan.Consumables used = Consumption.of(weldment, joints, done);
    List<Plan.Caution> cautions = new ArrayList<>(Cautions.apply(weldment, joints));
    cautions.addAll(mounts.cautions());
    return new Plan(
        weldment,
        seed,
        refusals,
        cautions,
        joints,
        done.runs().stream().map(run -> Directed.of(weldment, run)).toList(),
        preheat(joints, weldment.surroundings().ambientC()),
        mounts.noted(Cautions.whereTheyBite(done.operations(), cautions)),
        done.precedence(),
        done.orderReasons(),
        used,
        weldment.prices().map(prices -> Costing.of(done, used, prices)),
        weldment.checks().stream()
            .map(check -> CheckPlans.of(weldment, check, work.shape()))
            .toList(),
        new Plan.Practice(
            done.rules(),
            done.accessLost(),
            swings,
            PinRows.of(weldment, joints, done.operations(), swings, work.shape(), work.heat()),
            mounts.answers()),
        work.heat(),
        work.shape());
  }

  /** The rules of a circle, counted, one behind the other. */
  private static Refusal circle(OrderCycle cycle) {
    List<String> words = new ArrayList<>();
    for (String rule : cycle.inWords()) {
      words.add((words.size() + 1) + ") " + rule);
    }
    return new Refusal(
        "the order of work",
        "these rules go round in a circle, which is a fault of the design: "
            + String.join(" ", words),
        String.join(" ", cycle.remedies()));
  }

  private static Plan.Preheat preheat(List<JointPlan> joints, double ambientC) {
    JointPlan highest =
        joints.stream()
            .max(Comparator.comparingDouble(j -> j.preheat().value()))
            .orElseThrow(() -> new IllegalArgumentException("a plan needs a joint"));
    List<String> warmed =
        joints.stream()
            .filter(j -> j.preheat().value() > ambientC + 1)
            .map(j -> j.joint().name())
            .toList();
    List<String> how =
        warmed.isEmpty()
            ? List.of()
            : List.of(
                "warm both parts over at least 75 mm each side with a broad flame, not a cutting one",
                "let it soak two minutes for each 25 mm of thickness, then measure four thicknesses from"
                    + " the seam, at most 50 mm (75 mm above 50 mm thick), on the far side (from memory:"
                    + " EN ISO 13916); each joint below says how far and how long");
    return new Plan.Preheat(highest.preheat(), warmed, how);
  }
}
