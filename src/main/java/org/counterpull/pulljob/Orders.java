package org.counterpull.pulljob;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.contact.LinePath;
import org.counterpull.order.Middle;
import org.counterpull.order.RunPrecedence;
import org.counterpull.pull.search.OrderProblem;
import org.counterpull.pull.search.Step;
import org.counterpull.space.Face;
import org.counterpull.weldment.Weldment;
import org.counterpull.weldment.WrittenOrder;

/** Orders that people weld in, as far as the rules of the job allow them. */
final class Orders {
  private static final double CLOSED_MM = 1e-6;
  private static final double SAME_PLACE_MM = 1;

  private final Weldment weldment;
  private final List<PulledRun> runs;
  private final OrderProblem problem;
  private final List<Boolean> startsAtEnd = new ArrayList<>();

  /**
   * Orders of a job.
   *
   * @param pieces how many pieces each run has: a run of one piece has no direction of its own
   * @param free whether runs may be turned round at all
   */
  Orders(
      Weldment weldment,
      List<PulledRun> runs,
      List<RunPrecedence> precedence,
      List<List<Piece>> pieces,
      boolean free) {
    this.weldment = weldment;
    this.runs = runs;
    List<Boolean> eitherWay = new ArrayList<>();
    for (int r = 0; r < runs.size(); r++) {
      startsAtEnd.add(startsAtEnd(runs.get(r)));
      boolean open = !closed(runs.get(r).path());
      eitherWay.add(free && open && pieces.get(r).size() > 1);
    }
    List<OrderProblem.Before> before = new ArrayList<>();
    for (RunPrecedence pair : precedence) {
      int earlier = number(pair.earlier());
      int later = number(pair.later());
      if (earlier >= 0 && later >= 0) {
        before.add(new OrderProblem.Before(earlier, later));
      }
    }
    problem = new OrderProblem(eitherWay, before);
  }

  OrderProblem problem() {
    return problem;
  }

  private int number(String run) {
    for (int r = 0; r < runs.size(); r++) {
      if (runs.get(r).name().equals(run)) {
        return r;
      }
    }
    return -1;
  }

  private static boolean closed(LinePath path) {
    return path.start().distance(path.end()) < CLOSED_MM;
  }

  /** From the end nearer to the stiff middle outwards, unless the file says from where. */
  private boolean startsAtEnd(PulledRun run) {
    LinePath path = run.path();
    if (closed(path)) {
      return false;
    }
    Optional<Face> written =
        weldment.order().stream()
            .flatMap(order -> order.steps().stream())
            .filter(step -> step.run().equals(run.name()))
            .flatMap(step -> step.from().stream())
            .findFirst();
    if (written.isPresent() && run.joint().isPresent()) {
      String second = weldment.joint(run.joint().get()).second();
      Vector3D way = weldment.part(second).frame().normal(written.get());
      return path.end().subtract(path.start()).dotProduct(way) > 0;
    }
    Vector3D middle = Middle.of(weldment);
    return path.end().distance(middle) < path.start().distance(middle) - CLOSED_MM;
  }

  /** A run with its direction by the rules. */
  private Step step(int run) {
    return new Step(run, problem.eitherWay(run) && startsAtEnd.get(run));
  }

  private List<Step> steps(List<Integer> order) {
    return problem.repaired(order.stream().map(this::step).toList());
  }

  /** Names first, then whatever they leave out. */
  List<Step> named(List<String> names) {
    List<Integer> order = new ArrayList<>();
    for (String name : names) {
      int run = number(name);
      if (run >= 0 && !order.contains(run)) {
        order.add(run);
      }
    }
    for (int r = 0; r < runs.size(); r++) {
      if (!order.contains(r)) {
        order.add(r);
      }
    }
    return steps(order);
  }

  /** The file's order; empty where it has none. */
  Optional<List<Step>> written() {
    return weldment
        .order()
        .map(order -> named(order.steps().stream().map(WrittenOrder.Step::run).toList()));
  }

  List<Step> leftToRight() {
    List<Integer> order = numbers();
    order.sort(
        Comparator.<Integer>comparingDouble(r -> rounded(runs.get(r).middle().getX()))
            .thenComparingDouble(r -> rounded(runs.get(r).middle().getY()))
            .thenComparingDouble(r -> rounded(runs.get(r).middle().getZ()))
            .thenComparing(r -> r));
    return steps(order);
  }

  private static double rounded(double mm) {
    return Math.rint(mm / SAME_PLACE_MM);
  }

  /** The first run of every joint, then the second of every joint, and so on. */
  List<Step> oneSideFirst() {
    Map<String, Integer> met = new LinkedHashMap<>();
    List<Integer> turn = new ArrayList<>();
    for (PulledRun run : runs) {
      String joint = run.joint().orElse(run.name());
      turn.add(met.merge(joint, 1, Integer::sum));
    }
    List<Integer> order = numbers();
    order.sort(Comparator.<Integer>comparingInt(turn::get).thenComparing(r -> r));
    return steps(order);
  }

  private List<Integer> numbers() {
    List<Integer> numbers = new ArrayList<>();
    for (int r = 0; r < runs.size(); r++) {
      numbers.add(r);
    }
    return numbers;
  }
}
