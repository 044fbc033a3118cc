package org.counterpull.contact;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** The path of a weld line in weldment axes, mm. */
public sealed interface LinePath {
  /** Where it starts; the planner may weld it from either end. */
  Vector3D start();

  /** Where it ends. */
  Vector3D end();

  /** Its length, mm. */
  double lengthMm();

  /** The point at a distance from the start, mm, 0 to {@link #lengthMm()}. */
  Vector3D at(double distanceMm);

  /** The unit tangent there, in the direction from start to end. */
  Vector3D tangent(double distanceMm);

  /** A straight line. */
  record Straight(Vector3D start, Vector3D end) implements LinePath {
    @Override
    public double lengthMm() {
      return end.distance(start);
    }

    @Override
    public Vector3D at(double distanceMm) {
      double share = distanceMm / lengthMm();
      return new Vector3D(1 - share, start, share, end);
    }

    @Override
    public Vector3D tangent(double distanceMm) {
      return end.subtract(start).normalize();
    }
  }

  /**
   * An arc of a circle, possibly the whole circle.
   *
   * @param centre of the circle
   * @param axis unit vector; the arc turns right-handed about it
   * @param startArm from the centre to the start, its length is the radius
   * @param sweepRad above 0, at most a full turn
   */
  record Arc(Vector3D centre, Vector3D axis, Vector3D startArm, double sweepRad)
      implements LinePath {
    @Override
    public Vector3D start() {
      return centre.add(startArm);
    }

    @Override
    public Vector3D end() {
      return at(lengthMm());
    }

    /** Radius, mm. */
    public double radiusMm() {
      return startArm.getNorm();
    }

    @Override
    public double lengthMm() {
      return radiusMm() * sweepRad;
    }

    @Override
    public Vector3D at(double distanceMm) {
      double angle = distanceMm / radiusMm();
      Vector3D side = axis.crossProduct(startArm);
      return new Vector3D(1, centre, Math.cos(angle), startArm, Math.sin(angle), side);
    }

    @Override
    public Vector3D tangent(double distanceMm) {
      double angle = distanceMm / radiusMm();
      Vector3D side = axis.crossProduct(startArm);
      return new Vector3D(-Math.sin(angle), startArm, Math.cos(angle), side).normalize();
    }
  }
}
