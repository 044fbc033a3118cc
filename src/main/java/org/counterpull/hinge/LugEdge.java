package org.counterpull.hinge;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.weldment.Part;

/**
 * Metal round the hole of a lug, the least of all lugs of a row.
 *
 * @param beyondMm from the hole's edge to the edge away from the weld
 * @param besideMm from the hole's edge to the nearer edge across
 */
record LugEdge(double beyondMm, double besideMm) {

  static LugEdge of(Row row, List<JointPlan> joints) {
    LugEdge least = new LugEdge(Double.MAX_VALUE, Double.MAX_VALUE);
    for (Hole hole : row.holes()) {
      LugEdge own = of(row, hole, seam(hole, joints));
      least =
          new LugEdge(
              Math.min(least.beyondMm, own.beyondMm), Math.min(least.besideMm, own.besideMm));
    }
    return least;
  }

  /** Middle of the seams that hold the lug, or the middle of the lug where nothing does. */
  private static Vector3D seam(Hole hole, List<JointPlan> joints) {
    List<Vector3D> middles =
        joints.stream()
            .filter(j -> j.joint().first().equals(hole.part().name()))
            .flatMap(j -> j.runs().stream())
            .map(LugEdge::middle)
            .toList();
    if (middles.isEmpty()) {
      return hole.part().frame().outOf(new Vector3D(hole.part().lengthMm() / 2, 0, 0));
    }
    Vector3D sum = middles.stream().reduce(Vector3D.ZERO, Vector3D::add);
    return sum.scalarMultiply(1.0 / middles.size());
  }

  private static Vector3D middle(RunPlan run) {
    return run.line().path().at(run.line().path().lengthMm() / 2);
  }

  private static LugEdge of(Row row, Hole hole, Vector3D seam) {
    Part part = hole.part();
    Vector3D at = part.frame().into(hole.at());
    Vector3D away = part.frame().directionInto(hole.at().subtract(seam));
    double[] low = {0, -part.stock().acrossMm() / 2, -part.stock().upMm() / 2};
    double[] high = {part.lengthMm(), part.stock().acrossMm() / 2, part.stock().upMm() / 2};
    double[] axis = part.frame().directionInto(row.along()).toArray();
    int out = -1;
    int across = -1;
    for (int k = 0; k < 3; k++) {
      if (Math.abs(axis[k]) < 0.5) {
        across = out;
        out = k;
        if (across >= 0 && Math.abs(away.toArray()[across]) > Math.abs(away.toArray()[out])) {
          int swap = out;
          out = across;
          across = swap;
        }
      }
    }
    double to =
        away.toArray()[out] > 0 ? high[out] - at.toArray()[out] : at.toArray()[out] - low[out];
    double side = Math.min(high[across] - at.toArray()[across], at.toArray()[across] - low[across]);
    return new LugEdge(to - row.boreMm() / 2, side - row.boreMm() / 2);
  }
}
