package org.counterpull.order;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.counterpull.contact.Contact;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.weldment.Weldment;

/**
 * From the weldment and its joint plans to operations in order with times.
 *
 * <p>Steps come from the model, rules from data; the rules tie the steps to a directed acyclic
 * graph, and the graph is worked off by published rules. Nothing is drawn at random: the seed is
 * for orders that are searched.
 */
public final class OrderPlanner {
  private final WaitModel waits;
  private final DutyCycles duties;
  private final List<AskedStep> asked;

  /** A planner with its own ideas of heat and of machines. */
  public OrderPlanner(WaitModel waits, DutyCycles duties) {
    this(waits, duties, List.of());
  }

  /** The same with steps beside those of the weldment itself. */
  public OrderPlanner(WaitModel waits, DutyCycles duties, List<AskedStep> asked) {
    this.waits = waits;
    this.duties = duties;
    this.asked = List.copyOf(asked);
  }

  /**
   * Puts the work in order, with the waits of {@link HeatLedger} and the machines' own plates.
   *
   * @param weldment what is built
   * @param joints plans of its joints
   * @param contacts how its parts meet; those of the joint plans where one is missing
   * @param seed for orders that are searched; the rules need none and give the same for every seed
   * @return a {@link WorkOrder}, or the {@link OrderCycle} that forbids one
   */
  public static OrderResult plan(
      Weldment weldment, List<JointPlan> joints, List<Contact> contacts, long seed) {
    return new OrderPlanner(HeatLedger.of(weldment, joints), DutyCycles.of(weldment))
        .plan(weldment, joints, contacts);
  }

  /**
   * Puts the work in order.
   *
   * @param weldment what is built
   * @param joints plans of its joints
   * @param contacts how its parts meet; those of the joint plans where one is missing
   * @return a {@link WorkOrder}, or the {@link OrderCycle} that forbids one
   */
  public OrderResult plan(Weldment weldment, List<JointPlan> joints, List<Contact> contacts) {
    List<Step> steps = Steps.of(weldment, joints, contacts, asked);
    RuledGraph ruled = RuledGraph.of(weldment, steps);
    OrderGraph graph = ruled.graph();
    if (ruled.cycle().isPresent()) {
      return ruled.cycle().get();
    }
    RunPicker picker = new RunPicker(new RunFacts(weldment, joints));
    ruled.departures().forEach(picker::tell);
    Timeline timeline = gone(weldment, graph, picker);
    List<String> reasons = new ArrayList<>(picker.reasons());
    reasons.addAll(handling(timeline));
    List<AppliedRule> rules =
        AppliedRules.of(weldment, steps, precedence(graph, timeline), picker.criteria());
    return order(timeline, graph, steps, reasons, rules);
  }

  /**
   * Goes through the runs once more in the order of a work order, with this planner's waits.
   *
   * @param before the order to keep; its reasons and rules are kept as well
   */
  public WorkOrder again(
      Weldment weldment, List<JointPlan> joints, List<Contact> contacts, WorkOrder before) {
    List<Step> steps = Steps.of(weldment, joints, contacts, asked);
    OrderGraph graph = RuledGraph.of(weldment, steps).graph();
    List<String> runs = before.runs().stream().map(RunPlan::name).toList();
    RunPicker picker = new RunPicker(new RunFacts(weldment, joints), runs);
    Timeline timeline = gone(weldment, graph, picker);
    return order(timeline, graph, steps, before.orderReasons(), before.rules());
  }

  private Timeline gone(Weldment weldment, OrderGraph graph, RunPicker picker) {
    Timeline timeline = new Timeline(weldment, waits, duties, graph);
    new Sequencer(graph, picker, timeline).run();
    return timeline;
  }

  private static WorkOrder order(
      Timeline timeline,
      OrderGraph graph,
      List<Step> steps,
      List<String> reasons,
      List<AppliedRule> rules) {
    return new WorkOrder(
        timeline.log().done(),
        precedence(graph, timeline),
        timeline.runs(),
        reasons,
        rules,
        AccessLost.of(steps, timeline.log().done()));
  }

  private static List<Precedence> precedence(OrderGraph graph, Timeline timeline) {
    List<Precedence> precedence = new ArrayList<>(graph.precedence());
    precedence.addAll(timeline.log().added());
    return precedence;
  }

  private static List<String> handling(Timeline timeline) {
    List<String> sentences = new ArrayList<>();
    if (timeline.handling().turns() > 0) {
      sentences.add(
          String.format(
              Locale.ROOT,
              "The weldment is turned %d x: runs are kept together by how it lies (R31) before"
                  + " middle-to-ends (R23) and balance (R25) decide, because each turn takes %s.",
              timeline.handling().turns(),
              WaitWords.time(BenchTimes.value("turn over"))));
    }
    if (timeline.handling().moves() > 0) {
      sentences.add(
          String.format(
              Locale.ROOT,
              "The weldment is moved %d x: runs are kept together by place (R31), because each move"
                  + " takes %s.",
              timeline.handling().moves(),
              WaitWords.time(BenchTimes.value("move"))));
    }
    return sentences;
  }
}
