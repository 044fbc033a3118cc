package org.counterpull.swing;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.solid.Solid;
import org.counterpull.space.Frame;
import org.counterpull.weldment.Part;

/**
 * Turning about a hinge axis.
 *
 * @param at a point of the axis, mm
 * @param axis unit vector
 * @param u unit vector square to the axis, as level as can be
 * @param v unit vector square to both, right-handed
 */
public record Turning(Vector3D at, Vector3D axis, Vector3D u, Vector3D v) {
  private static final double LEVEL = 0.9;

  /** About the axis of a part, right-handed about its x. */
  public static Turning about(Part part) {
    Vector3D axis = part.frame().x().normalize();
    Vector3D middle = part.frame().outOf(new Vector3D(part.lengthMm() / 2, 0, 0));
    Vector3D up = Math.abs(axis.getZ()) > LEVEL ? Vector3D.PLUS_J : Vector3D.PLUS_K;
    Vector3D u = up.crossProduct(axis).normalize();
    return new Turning(middle, axis, u, axis.crossProduct(u).normalize());
  }

  /** A direction after turning. */
  public Vector3D direction(Vector3D before, double deg) {
    double c = Math.cos(Math.toRadians(deg));
    double s = Math.sin(Math.toRadians(deg));
    double along = before.dotProduct(axis);
    return new Vector3D(c, before, s, axis.crossProduct(before), (1 - c) * along, axis);
  }

  /** A point after turning. */
  public Vector3D point(Vector3D before, double deg) {
    return at.add(direction(before.subtract(at), deg));
  }

  /** A solid after turning. */
  public Solid solid(Solid before, double deg) {
    Vector3D x = direction(Vector3D.PLUS_I, -deg);
    Vector3D y = direction(Vector3D.PLUS_J, -deg);
    Vector3D z = direction(Vector3D.PLUS_K, -deg);
    return before.in(new Frame(at.subtract(direction(at, -deg)), x, y, z));
  }

  /** Place along the first direction square to the axis, from the axis, mm. */
  public double uOf(Vector3D point) {
    return point.subtract(at).dotProduct(u);
  }

  /** Place along the second direction. */
  public double vOf(Vector3D point) {
    return point.subtract(at).dotProduct(v);
  }

  /** Distance from the axis, mm. */
  public double radius(Vector3D point) {
    return Math.hypot(uOf(point), vOf(point));
  }
}
