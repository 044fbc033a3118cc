package org.counterpull.contact;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** The path of a weld line in weldment axes, mm. */
public sealed interface LinePath {
  /** Where it starts; the planner may weld it from either end. */
  Vector3D start();

  /** Where it ends. */
  Vector3D end();

  /** Its length, mm. */
  double lengthMm();

  /** The point at a distance from the start, mm, 0 to {@link #lengthMm()}. */
  Vector3D at(double distanceMm);

  /** The unit tangent there, in the direction from start to end. */
  Vector3D tangent(double distanceMm);

  /** The same line from its end to its start. */
  LinePath reversed();

  /** A straight line. */
  record Straight(Vector3D start, Vector3D end) implements LinePath {
    @Override
    public LinePath reversed() {
      return new Straight(end, start);
    }

    @Override
    public double lengthMm() {
      return end.distance(start);
    }

    @Override
    public Vector3D at(double distanceMm) {
      double share = distanceMm / lengthMm();
      return new Vector3D(1 - share, start, share, end);
    }

    @Override
    public Vector3D tangent(double distanceMm) {
      return end.subtract(start).normalize();
    }
  }

  /**
   * An arc of a circle, possibly the whole circle.
   *
   * @param centre of the circle
   * @param axis unit vector; the arc turns right-handed about it
   * @param startArm from the centre to the start, its length is the radius
   * @param sweepRad above 0, at most a full turn
   */
  record Arc(Vector3D centre, Vector3D axis, Vector3D startArm, double sweepRad)
      implements LinePath {
    @Override
    public Vector3D start() {
      return centre.add(startArm);
    }

    @Override
    public Vector3D end() {
      return at(lengthMm());
    }

    /** Radius, mm. */
    public double radiusMm() {
      return startArm.getNorm();
    }

    @Override
    public LinePath reversed() {
      return new Arc(centre, axis.negate(), end().subtract(centre), sweepRad);
    }

    @Override
    public double lengthMm() {
      return radiusMm() * sweepRad;
    }

    @Override
    public Vector3D at(double distanceMm) {
      double angle = distanceMm / radiusMm();
      Vector3D side = axis.crossProduct(startArm);
      return new Vector3D(1, centre, Math.cos(angle), startArm, Math.sin(angle), side);
    }

    @Override
    public Vector3D tangent(double distanceMm) {
      double angle = distanceMm / radiusMm();
      Vector3D side = axis.crossProduct(startArm);
      return new Vector3D(-Math.sin(angle), startArm, Math.cos(angle), side).normalize();
    }
  }

  /**
   * A curve through points, straight from each to the next.
   *
   * @param points at least two, no two neighbours alike
   */
  record Curve(List<Vector3D> points) implements LinePath {
    public Curve {
      points = List.copyOf(points);
      if (points.size() < 2) {
        throw new IllegalArgumentException("a curve needs two points, not " + points.size());
      }
    }

    @Override
    public Vector3D start() {
      return points.get(0);
    }

    @Override
    public Vector3D end() {
      return points.get(points.size() - 1);
    }

    @Override
    public LinePath reversed() {
      List<Vector3D> back = new ArrayList<>(points);
      Collections.reverse(back);
      return new Curve(back);
    }

    @Override
    public double lengthMm() {
      double length = 0;
      for (int i = 1; i < points.size(); i++) {
        length += points.get(i).distance(points.get(i - 1));
      }
      return length;
    }

    @Override
    public Vector3D at(double distanceMm) {
      Place place = place(distanceMm);
      Vector3D from = points.get(place.piece);
      return new Vector3D(1 - place.share, from, place.share, points.get(place.piece + 1));
    }

    @Override
    public Vector3D tangent(double distanceMm) {
      int piece = place(distanceMm).piece;
      return points.get(piece + 1).subtract(points.get(piece)).normalize();
    }

    /** The piece, counted from 0, that holds the point at a distance from the start. */
    public int pieceAt(double distanceMm) {
      return place(distanceMm).piece;
    }

    private Place place(double distanceMm) {
      double left = distanceMm;
      for (int i = 0; i < points.size() - 2; i++) {
        double piece = points.get(i).distance(points.get(i + 1));
        if (left <= piece) {
          return new Place(i, left / piece);
        }
        left -= piece;
      }
      int last = points.size() - 2;
      return new Place(last, left / points.get(last).distance(points.get(last + 1)));
    }

    private record Place(int piece, double share) {}
  }
}
