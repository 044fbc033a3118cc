package org.counterpull.order;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.contact.LinePath;
import org.counterpull.contact.WeldLine;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.weldment.Weldment;
import org.counterpull.weldment.WrittenOrder;

/** What the choice of the next run asks about each run, worked out once. */
final class RunFacts {
  private static final int RINGS = 4;
  private static final double ROUNDING = 1e-6;

  /**
   * One run.
   *
   * @param armMm from the stiff middle to the middle of the run
   * @param ring 0 nearest to the middle, to 3
   * @param butt true for butts, which shrink most
   */
  record Fact(Vector3D armMm, int ring, boolean butt) {}

  private final Map<String, Fact> facts = new HashMap<>();
  private final Set<String> written = new TreeSet<>();
  private final double momentScale;

  RunFacts(Weldment weldment, List<JointPlan> joints) {
    Vector3D middle = Middle.of(weldment);
    List<RunPlan> runs = joints.stream().flatMap(plan -> plan.runs().stream()).toList();
    double farthestMm =
        runs.stream().mapToDouble(run -> armMm(run, middle).getNorm()).max().orElse(1);
    double heatJ = 0;
    for (RunPlan run : runs) {
      Vector3D arm = armMm(run, middle);
      int ring = (int) Math.floor(RINGS * arm.getNorm() / Math.max(1, farthestMm) + ROUNDING);
      boolean butt = run.line().shape() == WeldLine.Shape.BUTT;
      facts.put(run.name(), new Fact(arm, Math.min(RINGS - 1, ring), butt));
      heatJ += run.netHeatJ();
    }
    momentScale = Math.max(1, heatJ * farthestMm * ROUNDING);
    weldment.order().stream()
        .flatMap(order -> order.steps().stream())
        .map(WrittenOrder.Step::run)
        .forEach(written::add);
  }

  private static Vector3D armMm(RunPlan run, Vector3D middle) {
    LinePath path = run.line().path();
    boolean round = path.start().distance(path.end()) < ROUNDING && path instanceof LinePath.Arc;
    Vector3D at = round ? ((LinePath.Arc) path).centre() : path.at(path.lengthMm() / 2);
    return at.subtract(middle);
  }

  Fact of(RunPlan run) {
    return facts.get(run.name());
  }

  boolean written(RunPlan run) {
    return written.contains(run.name());
  }

  /** Size of a moment of heat, rounded so that equal ones compare equal. */
  long size(Vector3D momentJMm) {
    return Math.round(momentJMm.getNorm() / momentScale);
  }
}
