package org.counterpull.planning;

import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.contact.LinePath;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.order.Middle;
import org.counterpull.order.RunStart;
import org.counterpull.space.Face;
import org.counterpull.weldment.Weldment;

/** Lays each run's line in the direction in which the order of work welds it. */
final class Directed {
  private Directed() {}

  static RunPlan of(Weldment weldment, RunPlan run) {
    String second = weldment.joint(run.line().joint()).second();
    Optional<Face> start = RunStart.of(weldment, second, run, Middle.of(weldment));
    LinePath path = run.line().path();
    Vector3D towardsStart =
        weldment.part(second).frame().directionInto(path.start().subtract(path.end()));
    boolean other = start.isPresent() && start.get().normal().dotProduct(towardsStart) < 0;
    return other ? run.reversed() : run;
  }
}
