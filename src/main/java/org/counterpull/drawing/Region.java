package org.counterpull.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * A closed figure on the section of a joint, mm.
 *
 * @param corners in order; either way round
 */
record Region(List<Point> corners) {
  private static final int HALVINGS = 60;

  Region {
    corners = List.copyOf(corners);
  }

  static Region of(double... xy) {
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      corners.add(new Point(xy[i], xy[i + 1]));
    }
    return new Region(corners);
  }

  /** Area, not negative. */
  double areaMm2() {
    return Math.abs(signedArea());
  }

  private double signedArea() {
    double sum = 0;
    for (int i = 0; i < corners.size(); i++) {
      sum += corners.get(i).cross(corners.get((i + 1) % corners.size()));
    }
    return sum / 2;
  }

  /** Centre of the area. */
  Point centroid() {
    double area = signedArea();
    if (Math.abs(area) < 1e-9) {
      return corners.get(0);
    }
    Point sum = new Point(0, 0);
    for (int i = 0; i < corners.size(); i++) {
      Point a = corners.get(i);
      Point b = corners.get((i + 1) % corners.size());
      sum = sum.plus(a.plus(b).times(a.cross(b)));
    }
    return sum.times(1 / (6 * area));
  }

  /** The part on the near side of a line: where {@code direction . p <= level}. */
  Region below(Point direction, double level) {
    List<Point> kept = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      Point a = corners.get(i);
      Point b = corners.get((i + 1) % corners.size());
      double da = direction.dot(a) - level;
      double db = direction.dot(b) - level;
      if (da <= 0) {
        kept.add(a);
      }
      if (da < 0 && db > 0 || da > 0 && db < 0) {
        kept.add(a.plus(b.minus(a).times(da / (da - db))));
      }
    }
    return new Region(kept);
  }

  Region above(Point direction, double level) {
    return below(direction.times(-1), -level);
  }

  /** The level below which an area lies, found by halving; the top when there isn't so much. */
  double levelOf(Point direction, double areaMm2) {
    double low = corners.stream().mapToDouble(direction::dot).min().orElse(0);
    double high = corners.stream().mapToDouble(direction::dot).max().orElse(0);
    if (areaMm2 >= areaMm2()) {
      return high;
    }
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (below(direction, middle).areaMm2() < areaMm2) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }
}
