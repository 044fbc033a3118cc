package org.counterpull.pulljob;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** Directions square to a run. */
final class Axes {
  private Axes() {}

  /** The part of a direction that is square to another, as a unit vector. */
  static Vector3D square(Vector3D direction, Vector3D to) {
    return direction.subtract(to.scalarMultiply(direction.dotProduct(to))).normalize();
  }

  /** A unit vector square to {@code axis}, turned about it right-handed. */
  static Vector3D turned(Vector3D unit, Vector3D axis, double angleRad) {
    return new Vector3D(Math.cos(angleRad), unit, Math.sin(angleRad), axis.crossProduct(unit));
  }
}
