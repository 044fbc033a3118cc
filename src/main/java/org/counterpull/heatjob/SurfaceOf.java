package org.counterpull.heatjob;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.stock.RoundBar;
import org.counterpull.stock.RoundTube;
import org.counterpull.weldment.Part;

/** Which way is out of a part at a point of its surface. */
final class SurfaceOf {
  private SurfaceOf() {}

  /** Outward unit vector in part axes, of the face that is nearest to a point in part axes. */
  static Vector3D outward(Part part, Vector3D point) {
    if (part.stock() instanceof RoundTube || part.stock() instanceof RoundBar) {
      Vector3D out = new Vector3D(0, point.getY(), point.getZ());
      return out.getNorm() > 0 ? out.normalize() : Vector3D.PLUS_K;
    }
    Vector3D best = Vector3D.PLUS_K;
    double least = Double.MAX_VALUE;
    for (Wall wall : Wall.of(part.stock())) {
      double[] away = {
        wall.highZMm() - point.getZ(),
        point.getZ() - wall.lowZMm(),
        wall.highYMm() - point.getY(),
        point.getY() - wall.lowYMm()
      };
      Vector3D[] out = {Vector3D.PLUS_K, Vector3D.MINUS_K, Vector3D.PLUS_J, Vector3D.MINUS_J};
      for (int i = 0; i < 4; i++) {
        if (Math.abs(away[i]) < least - 1e-9) {
          least = Math.abs(away[i]);
          best = out[i];
        }
      }
    }
    return best;
  }
}
