package org.counterpull.order;

import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.contact.LinePath;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.space.Face;
import org.counterpull.space.Frame;
import org.counterpull.weldment.Weldment;
import org.counterpull.weldment.WrittenOrder;

/** The end at which a run starts: the written one, else the one nearer to the middle. */
public final class RunStart {
  private RunStart() {}

  /**
   * The direction in which the start lies, in the axes of the joint's second part; empty for a line
   * that closes on itself.
   */
  public static Optional<Face> of(
      Weldment weldment, String secondPart, RunPlan run, Vector3D middle) {
    LinePath path = run.line().path();
    Vector3D along = path.start().subtract(path.end());
    if (along.getNorm() < 1e-6) {
      return Optional.empty();
    }
    Optional<Face> written = written(weldment, run.name());
    if (written.isPresent()) {
      return written;
    }
    double startMm = path.start().distance(middle);
    double endMm = path.end().distance(middle);
    // A line square to the way out has both ends equally near; rounding must not choose.
    Vector3D towardsStart = endMm < startMm - 1e-6 ? along.negate() : along;
    Frame frame = weldment.part(secondPart).frame();
    return Optional.of(nearestFace(frame.directionInto(towardsStart.normalize())));
  }

  private static Optional<Face> written(Weldment weldment, String run) {
    return weldment.order().stream()
        .flatMap(order -> order.steps().stream())
        .filter(step -> step.run().equals(run))
        .map(WrittenOrder.Step::from)
        .flatMap(Optional::stream)
        .findFirst();
  }

  private static Face nearestFace(Vector3D direction) {
    Face nearest = Face.LEFT;
    for (Face face : Face.values()) {
      double gain = face.normal().subtract(nearest.normal()).dotProduct(direction);
      if (gain > 1e-9) {
        nearest = face;
      }
    }
    return nearest;
  }
}
