package org.counterpull.heat.block;

/** A point or a direction in space, mm. */
public record Vec3(double x, double y, double z) {
  public static final Vec3 ZERO = new Vec3(0, 0, 0);
  public static final Vec3 X = new Vec3(1, 0, 0);
  public static final Vec3 Y = new Vec3(0, 1, 0);
  public static final Vec3 Z = new Vec3(0, 0, 1);

  public Vec3 {
    if (!Double.isFinite(x + y + z)) {
      throw new IllegalArgumentException("not a point: " + x + ", " + y + ", " + z + " mm");
    }
  }

  public Vec3 plus(Vec3 other) {
    return new Vec3(x + other.x, y + other.y, z + other.z);
  }

  public Vec3 minus(Vec3 other) {
    return new Vec3(x - other.x, y - other.y, z - other.z);
  }

  public Vec3 times(double factor) {
    return new Vec3(x * factor, y * factor, z * factor);
  }

  public double dot(Vec3 other) {
    return x * other.x + y * other.y + z * other.z;
  }

  public Vec3 cross(Vec3 other) {
    return new Vec3(
        y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
  }

  public double norm() {
    return Math.sqrt(dot(this));
  }

  /** The same direction with length 1. */
  public Vec3 unit() {
    double length = norm();
    if (length == 0) {
      throw new IllegalArgumentException("a direction needs a length above 0 mm");
    }
    return times(1 / length);
  }

  /** The part of this that is square to a unit direction, with length 1. */
  public Vec3 squareTo(Vec3 unit) {
    return minus(unit.times(dot(unit))).unit();
  }
}
