package org.counterpull.solid;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.space.Frame;

/** The outside surface of a round part. */
public final class Cylinder {
  private final Frame sweep;
  private final Section.Round section;
  private final Cut low;
  private final Cut high;

  Cylinder(Frame sweep, Section.Round section, Cut low, Cut high) {
    this.sweep = sweep;
    this.section = section;
    this.low = low;
    this.high = high;
  }

  /** A point of the axis. */
  public Vector3D origin() {
    return sweep.origin();
  }

  /** Unit vector along the axis. */
  public Vector3D axis() {
    return sweep.z();
  }

  /** Outside radius, mm. */
  public double radiusMm() {
    return section.radiusMm();
  }

  /** Wall of a tube, diameter of a bar. */
  public double wallMm() {
    return section.wallMm();
  }

  /** Where the surface begins along the axis, from the origin, on the side of a direction. */
  public double fromMm(Vector3D side) {
    return low.at(u(side), v(side));
  }

  /** Where the surface ends along the axis, from the origin, on the side of a direction. */
  public double toMm(Vector3D side) {
    return high.at(u(side), v(side));
  }

  /** The point of the axis nearest to a point. */
  public Vector3D onAxis(Vector3D point) {
    return origin().add(axis().scalarMultiply(along(point)));
  }

  /** Distance along the axis from the origin to the foot of a point. */
  public double along(Vector3D point) {
    return point.subtract(origin()).dotProduct(axis());
  }

  /** Outward unit normal of the surface next to a point. */
  public Vector3D normalAt(Vector3D point) {
    return point.subtract(onAxis(point)).normalize();
  }

  private double u(Vector3D side) {
    return side.dotProduct(sweep.x()) * section.radiusMm();
  }

  private double v(Vector3D side) {
    return side.dotProduct(sweep.y()) * section.radiusMm();
  }
}
