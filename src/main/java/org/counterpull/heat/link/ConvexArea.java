package org.counterpull.heat.link;

import java.util.ArrayList;
import java.util.List;

/** Area that two convex polygons of a plane have in common. */
final class ConvexArea {
  private ConvexArea() {}

  /** Area of a polygon {x, y}, positive whichever way around it is given. */
  static double of(List<double[]> polygon) {
    return Math.abs(signed(polygon));
  }

  /** Common area; both polygons convex. */
  static double common(List<double[]> subject, List<double[]> clip) {
    double sense = Math.signum(signed(clip));
    List<double[]> rest = subject;
    for (int n = 0; n < clip.size() && !rest.isEmpty(); n++) {
      rest = cut(rest, clip.get(n), clip.get((n + 1) % clip.size()), sense);
    }
    return of(rest);
  }

  private static List<double[]> cut(List<double[]> ring, double[] p, double[] q, double sense) {
    List<double[]> kept = new ArrayList<>(ring.size() + 1);
    for (int n = 0; n < ring.size(); n++) {
      double[] a = ring.get(n);
      double[] b = ring.get((n + 1) % ring.size());
      double da = sense * inside(p, q, a);
      double db = sense * inside(p, q, b);
      if (da >= 0) {
        kept.add(a);
      }
      if (da < 0 != db < 0) {
        double t = da / (da - db);
        kept.add(new double[] {a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])});
      }
    }
    return kept;
  }

  private static double inside(double[] p, double[] q, double[] at) {
    return (q[0] - p[0]) * (at[1] - p[1]) - (q[1] - p[1]) * (at[0] - p[0]);
  }

  private static double signed(List<double[]> ring) {
    double twice = 0;
    for (int n = 0; n < ring.size(); n++) {
      double[] a = ring.get(n);
      double[] b = ring.get((n + 1) % ring.size());
      twice += a[0] * b[1] - b[0] * a[1];
    }
    return twice / 2;
  }
}
