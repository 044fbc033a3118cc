package org.counterpull.contact;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.counterpull.solid.PlanePolygon;

/** A side of a plane region; the region lies on its left. Places on it are given from its start. */
sealed interface PlaneEdge {
  /** Points closer than this are one point. */
  double SAME_MM = 1e-6;

  /** Number of the side in its region. */
  int tag();

  /** Length of its parameter: mm for a segment, radians for a circle. */
  double span();

  Vector2D at(double place);

  /** Unit vector square to the edge, out of the region. */
  Vector2D outward(double place);

  /** Distance from a point to the edge. */
  double distance(Vector2D point);

  /** Angle under which a point sees the edge pass, over a full turn. */
  double turnsAround(Vector2D point);

  /** Twice the area swept from the origin between two places. */
  double twiceArea(double from, double to);

  /** Places where the other edge meets this one, ends included. */
  List<Double> meets(PlaneEdge other);

  /** Distances along a ray at which it crosses the edge. */
  List<Double> crossings(Vector2D from, Vector2D direction);

  /** A straight side. */
  record Segment(Vector2D from, Vector2D to, int tag) implements PlaneEdge {
    @Override
    public double span() {
      return from.distance(to);
    }

    private Vector2D along() {
      return to.subtract(from).normalize();
    }

    @Override
    public Vector2D at(double place) {
      return new Vector2D(1 - place / span(), from, place / span(), to);
    }

    @Override
    public Vector2D outward(double place) {
      Vector2D along = along();
      return new Vector2D(along.getY(), -along.getX());
    }

    @Override
    public double distance(Vector2D point) {
      double foot = Math.max(0, Math.min(span(), foot(point)));
      return point.distance(at(foot));
    }

    private double foot(Vector2D point) {
      return point.subtract(from).dotProduct(along());
    }

    @Override
    public double turnsAround(Vector2D point) {
      Vector2D a = from.subtract(point);
      Vector2D b = to.subtract(point);
      return Math.atan2(PlanePolygon.cross(a, b), a.dotProduct(b)) / (2 * Math.PI);
    }

    @Override
    public double twiceArea(double a, double b) {
      return PlanePolygon.cross(at(a), at(b));
    }

    @Override
    public List<Double> meets(PlaneEdge other) {
      List<Double> places = new ArrayList<>();
      if (other instanceof Segment segment) {
        for (Vector2D end : List.of(segment.from, segment.to)) {
          if (distance(end) < SAME_MM) {
            places.add(foot(end));
          }
        }
      }
      for (double place : other.crossings(from, along())) {
        if (place > -SAME_MM && place < span() + SAME_MM) {
          places.add(place);
        }
      }
      return places;
    }

    @Override
    public List<Double> crossings(Vector2D start, Vector2D direction) {
      Vector2D u = to.subtract(from);
      double det = PlanePolygon.cross(direction, u);
      if (Math.abs(det) < 1e-9 * u.getNorm()) {
        return List.of();
      }
      Vector2D way = from.subtract(start);
      double share = PlanePolygon.cross(way, direction) / det;
      double slack = SAME_MM / u.getNorm();
      return share < -slack || share > 1 + slack
          ? List.of()
          : List.of(PlanePolygon.cross(way, u) / det);
    }
  }

  /** A whole circle; anticlockwise around a disc, clockwise around a hole. */
  record Circle(Vector2D centre, double radiusMm, boolean anticlockwise, int tag)
      implements PlaneEdge {
    @Override
    public double span() {
      return 2 * Math.PI;
    }

    double angle(double place) {
      return anticlockwise ? place : -place;
    }

    private double place(Vector2D point) {
      Vector2D arm = point.subtract(centre);
      double angle = Math.atan2(arm.getY(), arm.getX());
      double place = anticlockwise ? angle : -angle;
      return place < 0 ? place + span() : place;
    }

    @Override
    public Vector2D at(double place) {
      double angle = angle(place);
      return new Vector2D(
          centre.getX() + radiusMm * Math.cos(angle), centre.getY() + radiusMm * Math.sin(angle));
    }

    @Override
    public Vector2D outward(double place) {
      Vector2D arm = at(place).subtract(centre).normalize();
      return anticlockwise ? arm : arm.negate();
    }

    @Override
    public double distance(Vector2D point) {
      return Math.abs(point.distance(centre) - radiusMm);
    }

    @Override
    public double turnsAround(Vector2D point) {
      double turns = point.distance(centre) < radiusMm ? 1 : 0;
      return anticlockwise ? turns : -turns;
    }

    @Override
    public double twiceArea(double a, double b) {
      double from = angle(a);
      double to = angle(b);
      return radiusMm * radiusMm * (to - from)
          + radiusMm
              * (centre.getX() * (Math.sin(to) - Math.sin(from))
                  - centre.getY() * (Math.cos(to) - Math.cos(from)));
    }

    @Override
    public List<Double> meets(PlaneEdge other) {
      List<Double> places = new ArrayList<>();
      if (other instanceof Segment segment) {
        Vector2D along = segment.to.subtract(segment.from).normalize();
        for (double s : crossings(segment.from, along)) {
          if (s > -SAME_MM && s < segment.span() + SAME_MM) {
            places.add(place(new Vector2D(1, segment.from, s, along)));
          }
        }
      } else if (other instanceof Circle circle) {
        meets(circle, places);
      }
      return places;
    }

    private void meets(Circle circle, List<Double> places) {
      Vector2D between = circle.centre.subtract(centre);
      double d = between.getNorm();
      if (d < SAME_MM
          || d > radiusMm + circle.radiusMm + SAME_MM
          || d < Math.abs(radiusMm - circle.radiusMm) - SAME_MM) {
        return;
      }
      double a = (d * d + radiusMm * radiusMm - circle.radiusMm * circle.radiusMm) / (2 * d);
      double h = halfChord(radiusMm * radiusMm - a * a);
      Vector2D unit = between.scalarMultiply(1 / d);
      Vector2D side = new Vector2D(-unit.getY(), unit.getX());
      places.add(place(new Vector2D(1, centre, a, unit, h, side)));
      places.add(place(new Vector2D(1, centre, a, unit, -h, side)));
    }

    @Override
    public List<Double> crossings(Vector2D start, Vector2D direction) {
      Vector2D way = start.subtract(centre);
      double b = way.dotProduct(direction);
      double root = b * b - way.getNormSq() + radiusMm * radiusMm;
      double half = halfChord(root);
      return root < -touching() ? List.of() : List.of(-b - half, -b + half);
    }

    /** 0 for a line or circle that only touches, whichever way rounding has it. */
    private double halfChord(double square) {
      return square < touching() ? 0 : Math.sqrt(square);
    }

    private double touching() {
      return 2 * radiusMm * SAME_MM;
    }
  }
}
