package org.counterpull.solid;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** A box along the axes. */
public record Box(Vector3D low, Vector3D high) {

  /** The least box around points; at least one. */
  public static Box around(List<Vector3D> points) {
    double[] low = {Double.MAX_VALUE, Double.MAX_VALUE, Double.MAX_VALUE};
    double[] high = {-Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
    for (Vector3D point : points) {
      double[] at = point.toArray();
      for (int i = 0; i < at.length; i++) {
        low[i] = Math.min(low[i], at[i]);
        high[i] = Math.max(high[i], at[i]);
      }
    }
    return new Box(new Vector3D(low), new Vector3D(high));
  }

  /** The same box, larger by a margin on every side. */
  public Box grown(double marginMm) {
    Vector3D margin = new Vector3D(marginMm, marginMm, marginMm);
    return new Box(low.subtract(margin), high.add(margin));
  }

  /** True when the two share at least a point. */
  public boolean meets(Box other) {
    return low.getX() <= other.high.getX()
        && other.low.getX() <= high.getX()
        && low.getY() <= other.high.getY()
        && other.low.getY() <= high.getY()
        && low.getZ() <= other.high.getZ()
        && other.low.getZ() <= high.getZ();
  }

  /** Distance from a point to the box, 0 inside. */
  public double distance(Vector3D point) {
    double x = outside(point.getX(), low.getX(), high.getX());
    double y = outside(point.getY(), low.getY(), high.getY());
    double z = outside(point.getZ(), low.getZ(), high.getZ());
    return Math.sqrt(x * x + y * y + z * z);
  }

  private static double outside(double at, double from, double to) {
    return Math.max(0, Math.max(from - at, at - to));
  }
}
