package org.counterpull.pulljob;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.contact.LinePath;
import org.counterpull.solid.Depth;
import org.counterpull.solid.Solid;
import org.counterpull.weldment.Part;

/** The wall under a bead that joins nothing. */
final class BeadOnPart {
  private static final double STEP_MM = 0.5;
  private static final double FARTHEST_MM = 400;

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
        double depth = face ? Depth.mm(solid, at, out.negate(), FARTHEST_MM) : Double.MAX_VALUE;
        if (depth < least) {
          least = depth;
          outward = out;
        }
      }
    }
    double thickness = least == Double.MAX_VALUE ? part.stock().thinnestMm() : least;
    Vector3D across = along.crossProduct(outward).normalize();
    Vector3D middle = at.add(-thickness / 2, outward);
    double ahead = Depth.mm(solid, middle, across, FARTHEST_MM);
    double behind = Depth.mm(solid, middle, across.negate(), FARTHEST_MM);
    return new Wall(
        part.name(), thickness, true, outward, across, -thickness / 2, ahead, behind, 0);
  }
}
