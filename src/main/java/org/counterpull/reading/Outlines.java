package org.counterpull.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/** Reads the outline of a plate and checks that it can be cut: closed, simple, not degenerate. */
final class Outlines {
  private static final int MOST_CORNERS = 500;
  private static final double SAME_POINT_MM = 0.01;
  private static final double LEAST_AREA_MM2 = 1;
  private static final double OFF_CORNER_MM = 0.5;

  private Outlines() {}

  /** Corners in order, without the repeated last one; x and y start at 0. */
  static Optional<List<Vector2D>> read(Value value) {
    Optional<List<Vector2D>> corners =
        value.isList() ? value.all(Outlines::corner) : notAList(value);
    return corners.flatMap(c -> checked(value, opened(c)));
  }

  private static Optional<List<Vector2D>> notAList(Value value) {
    return value.text().isPresent()
        ? value.problem("an outline is a list of corners [x, y]", value.example())
        : Optional.empty();
  }

  private static Optional<Vector2D> corner(Value value) {
    List<Value> items = value.items();
    if (!value.isList() || items.size() != 2) {
      return value.problem("a corner is [x, y]", "[80, 0]");
    }
    return value.all(Value::length).map(c -> new Vector2D(c.get(0), c.get(1)));
  }

  private static List<Vector2D> opened(List<Vector2D> corners) {
    int last = corners.size() - 1;
    boolean closed = last > 0 && corners.get(0).distance(corners.get(last)) < SAME_POINT_MM;
    return closed ? corners.subList(0, last) : corners;
  }

  private static Optional<List<Vector2D>> checked(Value value, List<Vector2D> corners) {
    int n = corners.size();
    if (n < 3 || n > MOST_CORNERS) {
      return value.problem(
          "an outline of " + n + " corners can't be cut", "3 to " + MOST_CORNERS + " corners");
    }
    for (int i = 0; i < n; i++) {
      if (corners.get(i).distance(corners.get((i + 1) % n)) < SAME_POINT_MM) {
        return value.problem(
            "corners " + (i + 1) + " and " + (i + 2 > n ? 1 : i + 2) + " are the same point",
            "each corner once");
      }
    }
    Optional<int[]> crossing = crossing(corners);
    if (crossing.isPresent()) {
      return value.problem(
          String.format(
              "the outline crosses itself: the sides behind corners %d and %d meet",
              crossing.get()[0] + 1, crossing.get()[1] + 1),
          "the corners in the order in which a torch would cut them");
    }
    if (Math.abs(area(corners)) < LEAST_AREA_MM2) {
      return value.problem("the outline has no area", value.example());
    }
    return startsAtCorner(value, corners);
  }

  private static Optional<List<Vector2D>> startsAtCorner(Value value, List<Vector2D> corners) {
    double lowX = corners.stream().mapToDouble(Vector2D::getX).min().orElseThrow();
    double lowY = corners.stream().mapToDouble(Vector2D::getY).min().orElseThrow();
    if (Math.abs(lowX) > OFF_CORNER_MM || Math.abs(lowY) > OFF_CORNER_MM) {
      return value.problem(
          "the corners are measured from the left front corner of the box around the outline, but"
              + " the least x is "
              + Value.shortest(lowX)
              + " mm and the least y "
              + Value.shortest(lowY)
              + " mm",
          "subtract these from every x and y, and place the part with start or onto");
    }
    Vector2D low = new Vector2D(lowX, lowY);
    return Optional.of(corners.stream().map(c -> c.subtract(low)).toList());
  }

  /** Corners with y from the middle of the width, as a part carries them. */
  static List<Vector2D> aboutMiddle(List<Vector2D> corners) {
    Vector2D shift = new Vector2D(0, -extent(corners).getY() / 2);
    List<Vector2D> shifted = new ArrayList<>();
    corners.forEach(c -> shifted.add(c.add(shift)));
    return shifted;
  }

  static Vector2D extent(List<Vector2D> corners) {
    return new Vector2D(
        corners.stream().mapToDouble(Vector2D::getX).max().orElseThrow(),
        corners.stream().mapToDouble(Vector2D::getY).max().orElseThrow());
  }

  private static double area(List<Vector2D> corners) {
    double twice = 0;
    for (int i = 0; i < corners.size(); i++) {
      Vector2D a = corners.get(i);
      Vector2D b = corners.get((i + 1) % corners.size());
      twice += a.getX() * b.getY() - b.getX() * a.getY();
    }
    return twice / 2;
  }

  /** Two sides that aren't neighbours and touch, or neighbours that fold back on each other. */
  private static Optional<int[]> crossing(List<Vector2D> c) {
    int n = c.size();
    for (int i = 0; i < n; i++) {
      for (int j = i + 1; j < n; j++) {
        Vector2D a = c.get(i);
        Vector2D b = c.get(i + 1 == n ? 0 : i + 1);
        Vector2D p = c.get(j);
        Vector2D q = c.get(j + 1 == n ? 0 : j + 1);
        boolean meet;
        if (j == i + 1) {
          meet = foldedBack(a, b, q);
        } else if (i == 0 && j == n - 1) {
          meet = foldedBack(p, a, b);
        } else {
          meet = touch(a, b, p, q);
        }
        if (meet) {
          return Optional.of(new int[] {i, j});
        }
      }
    }
    return Optional.empty();
  }

  private static boolean foldedBack(Vector2D a, Vector2D corner, Vector2D b) {
    Vector2D in = corner.subtract(a);
    Vector2D out = b.subtract(corner);
    double sine = cross(in, out) / (in.getNorm() * out.getNorm());
    return Math.abs(sine) < 1e-9 && in.dotProduct(out) < 0;
  }

  private static boolean touch(Vector2D a, Vector2D b, Vector2D p, Vector2D q) {
    double d1 = side(a, b, p);
    double d2 = side(a, b, q);
    double d3 = side(p, q, a);
    double d4 = side(p, q, b);
    if (d1 * d2 < 0 && d3 * d4 < 0) {
      return true;
    }
    return on(a, b, p, d1) || on(a, b, q, d2) || on(p, q, a, d3) || on(p, q, b, d4);
  }

  private static boolean on(Vector2D a, Vector2D b, Vector2D p, double side) {
    return side == 0 && p.subtract(a).dotProduct(p.subtract(b)) <= 0;
  }

  private static double side(Vector2D a, Vector2D b, Vector2D p) {
    return cross(b.subtract(a), p.subtract(a));
  }

  private static double cross(Vector2D a, Vector2D b) {
    return a.getX() * b.getY() - a.getY() * b.getX();
  }
}
