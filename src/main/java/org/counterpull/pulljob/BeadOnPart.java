package org.counterpull.pulljob;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.contact.LinePath;
import org.counterpull.solid.Solid;
import org.counterpull.weldment.Part;

/** The wall under a bead that joins nothing. */
final class BeadOnPart {
  private static final double STEP_MM = 0.5;
  private static final double FARTHEST_MM = 400;
  private static final double FINE_MM = 0.02;

  private BeadOnPart() {}

  /** The wall whose face the bead lies on: through it the metal is thinnest. */
  static Wall wall(Part part, Solid solid, LinePath path) {
    Vector3D at = path.at(path.lengthMm() / 2);
    Vector3D along = path.tangent(path.lengthMm() / 2);
    Vector3D outward = part.frame().z();
    double least = Double.MAX_VALUE;
    for (Vector3D axis : new Vector3D[] {part.frame().z(), part.frame().y(), part.frame().x()}) {
      for (int sign = 1; sign >= -1; sign -= 2) {
        Vector3D out = axis.scalarMultiply(sign);
        boolean face =
            Math.abs(out.dotProduct(along)) < 0.5
                && solid.contains(at.add(-STEP_MM, out), 0.05)
                && !solid.contains(at.add(STEP_MM, out), 0.05);
        double depth = face ? depth(solid, at, out.negate()) : Double.MAX_VALUE;
        if (depth < least) {
          least = depth;
          outward = out;
        }
      }
    }
    double thickness = least == Double.MAX_VALUE ? part.stock().thinnestMm() : least;
    Vector3D across = along.crossProduct(outward).normalize();
    Vector3D middle = at.add(-thickness / 2, outward);
    double ahead = depth(solid, middle, across);
    double behind = depth(solid, middle, across.negate());
    return new Wall(
        part.name(), thickness, true, outward, across, -thickness / 2, ahead, behind, 0);
  }

  private static double depth(Solid solid, Vector3D from, Vector3D direction) {
    double reach = 0;
    while (reach < FARTHEST_MM && solid.contains(from.add(reach + STEP_MM, direction), FINE_MM)) {
      reach += STEP_MM;
    }
    for (double step = STEP_MM / 2; step > FINE_MM; step /= 2) {
      reach += solid.contains(from.add(reach + step, direction), FINE_MM) ? step : 0;
    }
    return reach;
  }
}
