package org.counterpull.solid;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * Splits a simple polygon, with at most a hole per bridge, into convex polygons.
 *
 * <p>Holes are joined to the outside by a bridge, ears are clipped, and neighbours are joined again
 * as long as the result stays convex (Hertel and Mehlhorn 1983), so that no slivers are left where
 * larger pieces would do.
 */
final class ConvexSplit {
  private static final double NOTHING = 1e-9;

  private ConvexSplit() {}

  /** Convex pieces of the region inside the first loop and outside of the others. */
  static List<List<Vector2D>> of(List<List<Vector2D>> loops) {
    List<Vector2D> outline = loops.get(0);
    for (List<Vector2D> hole : loops.subList(1, loops.size())) {
      outline = bridged(outline, hole);
    }
    List<List<Vector2D>> pieces = ears(new ArrayList<>(outline));
    while (joinOnce(pieces)) {
      continue;
    }
    return pieces.stream().map(List::copyOf).toList();
  }

  /** The two nearest corners make the bridge; for the holes of tubes nothing lies between them. */
  private static List<Vector2D> bridged(List<Vector2D> outline, List<Vector2D> hole) {
    int bestOut = 0;
    int bestIn = 0;
    double least = Double.MAX_VALUE;
    for (int i = 0; i < outline.size(); i++) {
      for (int j = 0; j < hole.size(); j++) {
        double distance = outline.get(i).distance(hole.get(j));
        if (distance < least - NOTHING) {
          least = distance;
          bestOut = i;
          bestIn = j;
        }
      }
    }
    List<Vector2D> joined = new ArrayList<>(outline.subList(0, bestOut + 1));
    for (int j = 0; j <= hole.size(); j++) {
      joined.add(hole.get((bestIn + j) % hole.size()));
    }
    joined.addAll(outline.subList(bestOut, outline.size()));
    return joined;
  }

  private static List<List<Vector2D>> ears(List<Vector2D> left) {
    List<List<Vector2D>> triangles = new ArrayList<>();
    while (left.size() > 3) {
      int ear = findEar(left);
      int size = left.size();
      List<Vector2D> triangle =
          List.of(left.get((ear + size - 1) % size), left.get(ear), left.get((ear + 1) % size));
      if (PlanePolygon.area(triangle) > NOTHING) {
        triangles.add(triangle);
      }
      left.remove(ear);
    }
    if (PlanePolygon.area(left) > NOTHING) {
      triangles.add(left);
    }
    return triangles;
  }

  private static int findEar(List<Vector2D> left) {
    int flattest = 0;
    double least = Double.MAX_VALUE;
    for (int i = 0; i < left.size(); i++) {
      Vector2D before = left.get((i + left.size() - 1) % left.size());
      Vector2D after = left.get((i + 1) % left.size());
      double area = PlanePolygon.area(List.of(before, left.get(i), after));
      if (Math.abs(area) < least) {
        least = Math.abs(area);
        flattest = i;
      }
      if (area > NOTHING && noneInside(left, before, left.get(i), after)) {
        return i;
      }
    }
    return flattest;
  }

  private static boolean noneInside(
      List<Vector2D> points, Vector2D before, Vector2D tip, Vector2D after) {
    for (Vector2D p : points) {
      if (p.equals(before) || p.equals(tip) || p.equals(after)) {
        continue;
      }
      if (left(before, tip, p) && left(tip, after, p) && left(after, before, p)) {
        return false;
      }
    }
    return true;
  }

  private static boolean left(Vector2D from, Vector2D to, Vector2D point) {
    return turn(from, to, point) >= -NOTHING;
  }

  private static double turn(Vector2D from, Vector2D to, Vector2D point) {
    return PlanePolygon.cross(to.subtract(from), point.subtract(from));
  }

  private static boolean joinOnce(List<List<Vector2D>> pieces) {
    for (int i = 0; i < pieces.size(); i++) {
      for (int j = i + 1; j < pieces.size(); j++) {
        List<Vector2D> joined = join(pieces.get(i), pieces.get(j));
        if (!joined.isEmpty()) {
          pieces.set(i, joined);
          pieces.remove(j);
          return true;
        }
      }
    }
    return false;
  }

  /** The union across a shared side if it is convex, otherwise empty. */
  private static List<Vector2D> join(List<Vector2D> a, List<Vector2D> b) {
    for (int i = 0; i < a.size(); i++) {
      int shared = b.indexOf(a.get(i));
      if (shared < 0
          || !b.get((shared + b.size() - 1) % b.size()).equals(PlanePolygon.next(a, i))) {
        continue;
      }
      List<Vector2D> joined = new ArrayList<>();
      for (int k = 1; k <= a.size(); k++) {
        joined.add(a.get((i + k) % a.size()));
      }
      for (int k = 1; k < b.size() - 1; k++) {
        joined.add(b.get((shared + k) % b.size()));
      }
      return convex(joined) ? joined : List.of();
    }
    return List.of();
  }

  private static boolean convex(List<Vector2D> corners) {
    for (int i = 0; i < corners.size(); i++) {
      Vector2D after = PlanePolygon.next(corners, i);
      if (turn(corners.get(i), after, corners.get((i + 2) % corners.size())) < -NOTHING) {
        return false;
      }
    }
    return true;
  }
}
