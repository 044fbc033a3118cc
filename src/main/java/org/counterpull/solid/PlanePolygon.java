package org.counterpull.solid;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/** Closed polygons in the plane; anticlockwise ones have a positive area. */
public final class PlanePolygon {
  private PlanePolygon() {}

  /** Signed area, mm2. */
  public static double area(List<Vector2D> corners) {
    Vector2D base = corners.get(0);
    double twice = 0;
    for (int i = 0; i < corners.size(); i++) {
      Vector2D from = corners.get(i).subtract(base);
      twice += cross(from, next(corners, i).subtract(base));
    }
    return twice / 2;
  }

  /** First moments of area about the origin: area times centroid. */
  static Vector2D moment(List<Vector2D> corners) {
    double u = 0;
    double v = 0;
    for (int i = 0; i < corners.size(); i++) {
      Vector2D from = corners.get(i);
      Vector2D to = next(corners, i);
      double twice = cross(from, to);
      u += twice * (from.getX() + to.getX());
      v += twice * (from.getY() + to.getY());
    }
    return new Vector2D(u / 6, v / 6);
  }

  /** True strictly inside, by the crossings of a ray along x. */
  static boolean contains(List<Vector2D> corners, Vector2D point) {
    boolean inside = false;
    for (int i = 0; i < corners.size(); i++) {
      Vector2D from = corners.get(i);
      Vector2D to = next(corners, i);
      if (from.getY() > point.getY() != to.getY() > point.getY()) {
        double share = (point.getY() - from.getY()) / (to.getY() - from.getY());
        inside ^= point.getX() < from.getX() + share * (to.getX() - from.getX());
      }
    }
    return inside;
  }

  /** Distance from a point to the nearest side. */
  static double boundaryDistance(List<Vector2D> corners, Vector2D point) {
    return point.distance(nearestOnBoundary(corners, point));
  }

  /** The point of the boundary that is nearest. */
  static Vector2D nearestOnBoundary(List<Vector2D> corners, Vector2D point) {
    Vector2D best = corners.get(0);
    double least = Double.MAX_VALUE;
    for (int i = 0; i < corners.size(); i++) {
      Vector2D at = nearestOnSegment(corners.get(i), next(corners, i), point);
      double distance = at.distance(point);
      if (distance < least) {
        least = distance;
        best = at;
      }
    }
    return best;
  }

  private static Vector2D nearestOnSegment(Vector2D from, Vector2D to, Vector2D point) {
    Vector2D along = to.subtract(from);
    double share = point.subtract(from).dotProduct(along) / along.getNormSq();
    return new Vector2D(1, from, Math.max(0, Math.min(1, share)), along);
  }

  static Vector2D next(List<Vector2D> corners, int i) {
    return corners.get((i + 1) % corners.size());
  }

  /** z of the cross product. */
  public static double cross(Vector2D a, Vector2D b) {
    return a.getX() * b.getY() - a.getY() * b.getX();
  }
}
