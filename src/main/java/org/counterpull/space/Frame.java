package org.counterpull.space;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * Right-handed axes of a part in the weldment.
 *
 * <p>x runs along the part from its left end to its right end, y from its front to its back, z from
 * its bottom to its top. The origin is the section's reference point at the left end: the middle of
 * the box around the section.
 *
 * @param origin in weldment axes, mm
 * @param x unit vector along the part
 * @param y unit vector towards the back
 * @param z unit vector towards the top
 */
public record Frame(Vector3D origin, Vector3D x, Vector3D y, Vector3D z) {
  private static final double TOLERANCE = 1e-9;

  /** The weldment's own axes: x to the right, y to the back, z up. */
  public static final Frame WELDMENT =
      new Frame(Vector3D.ZERO, Vector3D.PLUS_I, Vector3D.PLUS_J, Vector3D.PLUS_K);

  public Frame {
    if (Math.abs(x.getNorm() - 1) > TOLERANCE
        || Math.abs(y.getNorm() - 1) > TOLERANCE
        || x.crossProduct(y).subtract(z).getNorm() > TOLERANCE) {
      throw new IllegalArgumentException(
          "axes are not right-handed unit vectors: " + x + ", " + y + ", " + z);
    }
  }

  /**
   * Axes from a direction along the part and a rough direction up; the part of {@code up} along the
   * part is taken off.
   *
   * @throws IllegalArgumentException when {@code up} is along the part
   */
  public static Frame of(Vector3D origin, Vector3D along, Vector3D up) {
    Vector3D x = along.normalize();
    Vector3D square = up.subtract(x.scalarMultiply(up.dotProduct(x)));
    if (square.getNorm() < 1e-6 * up.getNorm()) {
      throw new IllegalArgumentException("up " + up + " runs along the part " + along);
    }
    Vector3D z = square.normalize();
    return new Frame(origin, x, z.crossProduct(x), z);
  }

  /** A point given in these axes, in the axes that this frame itself is given in. */
  public Vector3D outOf(Vector3D local) {
    return origin.add(directionOutOf(local));
  }

  /** A direction given in these axes, in the axes that this frame itself is given in. */
  public Vector3D directionOutOf(Vector3D local) {
    return new Vector3D(local.getX(), x, local.getY(), y, local.getZ(), z);
  }

  /** A point of the outer axes, in these axes. */
  public Vector3D into(Vector3D point) {
    return directionInto(point.subtract(origin));
  }

  /** A direction of the outer axes, in these axes. */
  public Vector3D directionInto(Vector3D direction) {
    return new Vector3D(direction.dotProduct(x), direction.dotProduct(y), direction.dotProduct(z));
  }

  /** The direction of a face's outward normal, in the outer axes. */
  public Vector3D normal(Face face) {
    return directionOutOf(face.normal());
  }
}
