package org.counterpull.drawing;

/**
 * A point or arrow on the sheet; x to the right, y down, in units of the drawing.
 *
 * @param x to the right
 * @param y down
 */
record Point(double x, double y) {
  Point plus(Point other) {
    return new Point(x + other.x, y + other.y);
  }

  Point minus(Point other) {
    return new Point(x - other.x, y - other.y);
  }

  Point times(double factor) {
    return new Point(x * factor, y * factor);
  }

  double dot(Point other) {
    return x * other.x + y * other.y;
  }

  double cross(Point other) {
    return x * other.y - y * other.x;
  }

  double length() {
    return Math.hypot(x, y);
  }

  double distance(Point other) {
    return minus(other).length();
  }

  /** Of length 1; to the right for a point at the origin. */
  Point unit() {
    double length = length();
    return length < 1e-12 ? new Point(1, 0) : times(1 / length);
  }

  /** Turned by a right angle. */
  Point turned() {
    return new Point(-y, x);
  }

  static Point polar(double radius, double angleRad) {
    return new Point(radius * Math.cos(angleRad), radius * Math.sin(angleRad));
  }
}
