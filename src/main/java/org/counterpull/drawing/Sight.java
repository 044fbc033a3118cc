package org.counterpull.drawing;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** What can be seen of points and edges from one side, past all parts. */
final class Sight {
  private static final int CELLS = 48;

  /** A face must lie this much nearer to the eye to hide something. */
  private static final double SLACK_MM = 0.6;

  private final Camera camera;
  private final List<List<Screen>> grid = new ArrayList<>();
  private double left = Double.POSITIVE_INFINITY;
  private double top = Double.POSITIVE_INFINITY;
  private double cell;

  Sight(Camera camera, List<PartShape> shapes) {
    this.camera = camera;
    List<Screen> screens = new ArrayList<>();
    for (PartShape shape : shapes) {
      for (PartShape.Facet facet : shape.facets()) {
        if (camera.sees(facet.normal())) {
          screens.add(Screen.of(facet, camera));
        }
      }
    }
    double right = Double.NEGATIVE_INFINITY;
    double bottom = Double.NEGATIVE_INFINITY;
    for (Screen screen : screens) {
      left = Math.min(left, screen.box[0]);
      top = Math.min(top, screen.box[1]);
      right = Math.max(right, screen.box[2]);
      bottom = Math.max(bottom, screen.box[3]);
    }
    cell = Math.max(1e-6, Math.max(right - left, bottom - top) / (CELLS - 1));
    for (int i = 0; i < CELLS * CELLS; i++) {
      grid.add(new ArrayList<>());
    }
    screens.forEach(this::enter);
  }

  private void enter(Screen screen) {
    for (int row = index(screen.box[1] - top); row <= index(screen.box[3] - top); row++) {
      for (int col = index(screen.box[0] - left); col <= index(screen.box[2] - left); col++) {
        grid.get(row * CELLS + col).add(screen);
      }
    }
  }

  private int index(double distance) {
    return Math.max(0, Math.min(CELLS - 1, (int) Math.floor(distance / cell)));
  }

  /** True when nothing lies between the point and the eye. */
  boolean seen(Vector3D p) {
    Point flat = camera.flat(p);
    double nearness = camera.nearness(p) + SLACK_MM;
    for (Screen screen : grid.get(index(flat.y() - top) * CELLS + index(flat.x() - left))) {
      if (screen.hides(flat, nearness)) {
        return false;
      }
    }
    return true;
  }

  /** True when the edge belongs on the drawing: not turned away, not inside a round surface. */
  boolean drawn(PartShape.Edge edge) {
    boolean first = camera.sees(edge.first());
    boolean second = camera.sees(edge.second());
    return edge.smooth() ? first != second : first || second;
  }

  /** A face that is turned towards the eye, on the sheet. */
  private static final class Screen {
    private final List<List<Point>> loops;
    private final double[] box;
    private final Point slope;
    private final double nearnessAtZero;

    private Screen(List<List<Point>> loops, double[] box, Point slope, double nearnessAtZero) {
      this.loops = loops;
      this.box = box;
      this.slope = slope;
      this.nearnessAtZero = nearnessAtZero;
    }

    static Screen of(PartShape.Facet facet, Camera camera) {
      List<List<Point>> loops =
          facet.loops().stream().map(l -> l.stream().map(camera::flat).toList()).toList();
      double[] box = {
        loops.get(0).stream().mapToDouble(Point::x).min().orElseThrow(),
        loops.get(0).stream().mapToDouble(Point::y).min().orElseThrow(),
        loops.get(0).stream().mapToDouble(Point::x).max().orElseThrow(),
        loops.get(0).stream().mapToDouble(Point::y).max().orElseThrow()
      };
      double facing = facet.normal().dotProduct(camera.towards());
      Point slope =
          new Point(
              -facet.normal().dotProduct(camera.right()) / facing,
              facet.normal().dotProduct(camera.up()) / facing);
      Vector3D corner = facet.loops().get(0).get(0);
      double atZero = camera.nearness(corner) - slope.dot(camera.flat(corner));
      return new Screen(loops, box, slope, atZero);
    }

    boolean hides(Point p, double nearness) {
      if (p.x() < box[0] || p.x() > box[2] || p.y() < box[1] || p.y() > box[3]) {
        return false;
      }
      if (nearnessAtZero + slope.dot(p) <= nearness) {
        return false;
      }
      boolean inside = false;
      for (List<Point> loop : loops) {
        inside ^= contains(loop, p);
      }
      return inside;
    }

    private static boolean contains(List<Point> loop, Point p) {
      boolean inside = false;
      Point a = loop.get(loop.size() - 1);
      for (Point b : loop) {
        if (a.y() > p.y() != b.y() > p.y()
            && p.x() < a.x() + (b.x() - a.x()) * (p.y() - a.y()) / (b.y() - a.y())) {
          inside = !inside;
        }
        a = b;
      }
      return inside;
    }
  }
}
