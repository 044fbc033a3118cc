package org.counterpull.solid;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** How far metal goes on from a point in one direction. */
public final class Depth {
  private static final double STEP_MM = 0.5;
  private static final double FINE_MM = 0.02;

  private Depth() {}

  /**
   * Metal without a break from a point on, mm; 0 where it begins outside.
   *
   * @param solid the piece
   * @param from where to begin
   * @param direction unit vector
   * @param farthestMm where to stop looking, mm
   */
  public static double mm(Solid solid, Vector3D from, Vector3D direction, double farthestMm) {
    double reach = 0;
    while (reach < farthestMm && solid.contains(from.add(reach + STEP_MM, direction), FINE_MM)) {
      reach += STEP_MM;
    }
    for (double step = STEP_MM / 2; step > FINE_MM; step /= 2) {
      reach += solid.contains(from.add(reach + step, direction), FINE_MM) ? step : 0;
    }
    return reach;
  }
}
