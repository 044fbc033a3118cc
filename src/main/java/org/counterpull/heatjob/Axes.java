package org.counterpull.heatjob;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.heat.block.Frame;
import org.counterpull.heat.block.Vec3;
import org.counterpull.weldment.Part;

/** Points and part axes as the heat engine writes them. */
final class Axes {
  private Axes() {}

  static Vec3 point(Vector3D point) {
    return new Vec3(point.getX(), point.getY(), point.getZ());
  }

  /** Axes of a part. */
  static Frame of(Part part) {
    return new Frame(
        point(part.frame().origin()),
        point(part.frame().x()),
        point(part.frame().y()),
        point(part.frame().z()));
  }

  /** Axes of a round part's grid: z along the part, angles from the part's y towards its z. */
  static Frame ofRound(Part part) {
    return new Frame(
        point(part.frame().origin()),
        point(part.frame().y()),
        point(part.frame().z()),
        point(part.frame().x()));
  }
}
