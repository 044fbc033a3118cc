package org.counterpull.solid;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/** What is swept: a region in the plane u, v. */
public sealed interface Section {

  /** Area, mm2. */
  double areaMm2();

  /** Centre of the area. */
  Vector2D centroid();

  /** True inside and on the boundary, within a slack. */
  boolean contains(Vector2D point, double slackMm);

  /** Convex polygons, anticlockwise, that fill the region; round ones are inscribed. */
  List<List<Vector2D>> convexPieces();

  /** Points whose convex hull holds the region. */
  List<Vector2D> hull();

  /**
   * Straight sides.
   *
   * @param loops the outer loop anticlockwise, holes clockwise
   */
  record Polygonal(List<Loop> loops) implements Section {
    public Polygonal {
      loops = List.copyOf(loops);
    }

    @Override
    public double areaMm2() {
      return loops.stream().mapToDouble(loop -> PlanePolygon.area(loop.corners())).sum();
    }

    @Override
    public Vector2D centroid() {
      Vector2D moment = Vector2D.ZERO;
      for (Loop loop : loops) {
        moment = moment.add(PlanePolygon.moment(loop.corners()));
      }
      return moment.scalarMultiply(1 / areaMm2());
    }

    @Override
    public boolean contains(Vector2D point, double slackMm) {
      boolean inside = false;
      for (Loop loop : loops) {
        if (PlanePolygon.boundaryDistance(loop.corners(), point) <= slackMm) {
          return true;
        }
        inside ^= PlanePolygon.contains(loop.corners(), point);
      }
      return inside;
    }

    @Override
    public List<List<Vector2D>> convexPieces() {
      return ConvexSplit.of(loops.stream().map(Loop::corners).toList());
    }

    @Override
    public List<Vector2D> hull() {
      return loops.get(0).corners();
    }
  }

  /**
   * A closed loop of sides.
   *
   * @param corners in order
   * @param wallsMm thickness of the wall that the side from corner i to i + 1 belongs to
   * @param hole true for the inside of a tube
   */
  record Loop(List<Vector2D> corners, List<Double> wallsMm, boolean hole) {
    public Loop {
      corners = List.copyOf(corners);
      wallsMm = List.copyOf(wallsMm);
      if (corners.size() < 3 || corners.size() != wallsMm.size()) {
        throw new IllegalArgumentException(
            corners.size() + " corners with " + wallsMm.size() + " walls make no loop");
      }
    }
  }

  /**
   * A disc or a ring about the axis.
   *
   * @param radiusMm outside
   * @param boreMm radius of the inside, 0 for a bar
   */
  record Round(double radiusMm, double boreMm) implements Section {
    /** A chord lies at most this far from its arc in the convex pieces. */
    private static final double SAGITTA_MM = 0.1;

    private static final int MOST_SIDES = 64;

    /** The wall, or the diameter of a bar. */
    public double wallMm() {
      return boreMm > 0 ? radiusMm - boreMm : 2 * radiusMm;
    }

    @Override
    public double areaMm2() {
      return Math.PI * (radiusMm * radiusMm - boreMm * boreMm);
    }

    @Override
    public Vector2D centroid() {
      return Vector2D.ZERO;
    }

    @Override
    public boolean contains(Vector2D point, double slackMm) {
      double at = point.getNorm();
      return at <= radiusMm + slackMm && at >= boreMm - slackMm;
    }

    @Override
    public List<List<Vector2D>> convexPieces() {
      int sides = sides();
      List<Vector2D> outer = hull();
      if (boreMm == 0) {
        return List.of(outer);
      }
      double ratio = boreMm / radiusMm;
      return java.util.stream.IntStream.range(0, sides)
          .mapToObj(
              i -> {
                Vector2D from = outer.get(i);
                Vector2D to = outer.get((i + 1) % sides);
                return List.of(from, to, to.scalarMultiply(ratio), from.scalarMultiply(ratio));
              })
          .toList();
    }

    @Override
    public List<Vector2D> hull() {
      int sides = sides();
      return java.util.stream.IntStream.range(0, sides)
          .mapToObj(i -> onCircle(radiusMm, 2 * Math.PI * i / sides))
          .toList();
    }

    private int sides() {
      double half = Math.acos(Math.max(0, 1 - SAGITTA_MM / radiusMm));
      int sides = (int) Math.ceil(Math.PI / half);
      return Math.max(16, Math.min(MOST_SIDES, 4 * ((sides + 3) / 4)));
    }

    private static Vector2D onCircle(double radiusMm, double angle) {
      return new Vector2D(radiusMm * Math.cos(angle), radiusMm * Math.sin(angle));
    }
  }
}
