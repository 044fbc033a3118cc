package org.counterpull.heat.block;

import java.util.ArrayList;
import java.util.List;

/**
 * The outline of a plate in its own x-y plane: one outer polygon and any holes, straight edges, in
 * any sense of rotation.
 */
public final class Outline {
  private final List<double[][]> rings = new ArrayList<>();

  /** An outline without holes; points as {x, y} in mm. */
  public Outline(double[][] outer) {
    rings.add(turned(outer, true));
  }

  private Outline(Outline from, double[][] hole) {
    rings.addAll(from.rings);
    rings.add(turned(hole, false));
  }

  /** The same outline with a hole. */
  public Outline withHole(double[][] hole) {
    return new Outline(this, hole);
  }

  /** Area of metal in a rectangle, mm2. */
  double areaIn(double x0, double x1, double y0, double y1) {
    double area = 0;
    for (double[][] ring : rings) {
      double[][] part = ring;
      part = cut(part, 0, x0, 1);
      part = cut(part, 0, x1, -1);
      part = cut(part, 1, y0, 1);
      part = cut(part, 1, y1, -1);
      area += signedArea(part);
    }
    return Math.max(0, area);
  }

  /**
   * Length of metal on a straight cut parallel to an axis.
   *
   * @param axis the axis that is held: 0 cuts at x = place, 1 at y = place
   * @param place where the cut is
   * @param from start of the cut along the other axis
   * @param to its end
   */
  double lengthOn(int axis, double place, double from, double to) {
    double length = 0;
    for (double[][] ring : rings) {
      for (int n = 0; n < ring.length; n++) {
        double[] a = ring[n];
        double[] b = ring[(n + 1) % ring.length];
        boolean up = b[axis] > a[axis];
        double low = up ? a[axis] : b[axis];
        double high = up ? b[axis] : a[axis];
        // Half-open, so that a corner on the cut counts once.
        if (place >= low && place < high) {
          double cross =
              a[1 - axis] + (place - a[axis]) / (b[axis] - a[axis]) * (b[1 - axis] - a[1 - axis]);
          double beyond = to - Math.max(from, Math.min(to, cross));
          // Each crossing opens or closes the stretch after it.
          length += (up == (axis == 1) ? -1 : 1) * beyond;
        }
      }
    }
    return Math.max(0, length);
  }

  /**
   * The pieces of the outline in a rectangle: {middle x, middle y, outward x, outward y, length}.
   */
  List<double[]> edgesIn(double x0, double x1, double y0, double y1) {
    List<double[]> pieces = new ArrayList<>();
    for (double[][] ring : rings) {
      for (int n = 0; n < ring.length; n++) {
        double[] a = ring[n];
        double[] b = ring[(n + 1) % ring.length];
        double dx = b[0] - a[0];
        double dy = b[1] - a[1];
        double length = Math.hypot(dx, dy);
        double[] t = {0, 1};
        boolean meets =
            within(a[0], dx, dy / length, x0, x1, t)
                && within(a[1], dy, -dx / length, y0, y1, t)
                && t[1] > t[0];
        if (meets) {
          double middle = 0.5 * (t[0] + t[1]);
          pieces.add(
              new double[] {
                a[0] + middle * dx,
                a[1] + middle * dy,
                dy / length,
                -dx / length,
                (t[1] - t[0]) * length
              });
        }
      }
    }
    return pieces;
  }

  private static boolean within(
      double start, double run, double outward, double low, double high, double[] t) {
    if (run == 0) {
      // An edge on a cell border belongs to the cell with the metal in it.
      return outward > 0 ? start > low && start <= high : start >= low && start < high;
    }
    double first = (low - start) / run;
    double second = (high - start) / run;
    t[0] = Math.max(t[0], Math.min(first, second));
    t[1] = Math.min(t[1], Math.max(first, second));
    return true;
  }

  private static double[][] turned(double[][] ring, boolean left) {
    if (ring.length < 3) {
      throw new IllegalArgumentException("an outline needs three corners, has " + ring.length);
    }
    double[][] copy = new double[ring.length][];
    boolean reverse = (signedArea(ring) > 0) != left;
    for (int n = 0; n < ring.length; n++) {
      copy[n] = ring[reverse ? ring.length - 1 - n : n].clone();
    }
    return copy;
  }

  private static double[][] cut(double[][] ring, int axis, double place, int keep) {
    List<double[]> kept = new ArrayList<>();
    for (int n = 0; n < ring.length; n++) {
      double[] a = ring[n];
      double[] b = ring[(n + 1) % ring.length];
      double da = keep * (a[axis] - place);
      double db = keep * (b[axis] - place);
      if (da >= 0) {
        kept.add(a);
      }
      if (da < 0 != db < 0) {
        double t = da / (da - db);
        kept.add(new double[] {a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])});
      }
    }
    return kept.toArray(new double[0][]);
  }

  private static double signedArea(double[][] ring) {
    double twice = 0;
    for (int n = 0; n < ring.length; n++) {
      double[] a = ring[n];
      double[] b = ring[(n + 1) % ring.length];
      twice += a[0] * b[1] - b[0] * a[1];
    }
    return twice / 2;
  }
}
