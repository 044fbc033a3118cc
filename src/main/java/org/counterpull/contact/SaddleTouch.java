package org.counterpull.contact;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.counterpull.solid.Cylinder;
import org.counterpull.solid.FlatFace;
import org.counterpull.solid.PlanePolygon;
import org.counterpull.space.Frame;

/**
 * A face that is coped or ground to fit a round part.
 *
 * <p>The face's outline, moved along the part onto the cylinder, is the footprint; it is in contact
 * over all of it. The cylinder is unrolled and the footprint's area taken there; curved outlines
 * are followed by chords, which makes the area of a round footprint 0.01 % small. What misses the
 * cylinder is laid on its flank.
 */
final class SaddleTouch {
  private static final int STRAIGHT_STEPS = 32;
  private static final int ROUND_STEPS = 256;

  private final Cylinder barrel;
  private final FlatFace face;
  private final Vector3D along;
  private final boolean shapedIsFirst;
  private final Frame axes;

  /**
   * @param along the direction in which the shaped part runs onto the barrel
   */
  private SaddleTouch(Cylinder barrel, FlatFace face, Vector3D along, boolean shapedIsFirst) {
    this.barrel = barrel;
    this.face = face;
    this.along = along;
    this.shapedIsFirst = shapedIsFirst;
    axes = Frame.of(barrel.origin(), barrel.axis(), along.negate());
  }

  static Optional<Touch> of(
      Cylinder barrel, FlatFace face, Vector3D along, boolean shapedIsFirst, double limitMm) {
    if (Math.abs(along.dotProduct(barrel.axis())) > 0.95) {
      return Optional.empty();
    }
    return new SaddleTouch(barrel, face, along, shapedIsFirst).touch(limitMm);
  }

  private Optional<Touch> touch(double limitMm) {
    List<List<Vector3D>> edges = face.edges().stream().map(SaddleTouch::samples).toList();
    double gap = leastGap(edges);
    if (!(gap >= -barrel.radiusMm() && gap <= limitMm)) {
      return Optional.empty();
    }
    double twice = 0;
    List<RawLine> lines = new ArrayList<>();
    for (int i = 0; i < edges.size(); i++) {
      List<Vector3D> on = edges.get(i).stream().map(this::onBarrel).toList();
      for (int k = 1; k < on.size(); k++) {
        twice += PlanePolygon.cross(unrolled(on.get(k - 1)), unrolled(on.get(k)));
      }
      line(face.edges().get(i), on, Math.max(0, gap)).ifPresent(lines::add);
    }
    double area = Math.abs(twice / 2);
    FlatFace.Kind broad = FlatFace.Kind.BROAD;
    return area < 1e-3
        ? Optional.empty()
        : Optional.of(
            new Touch(
                area,
                Math.max(0, gap),
                shapedIsFirst ? face.kind() : broad,
                shapedIsFirst ? broad : face.kind(),
                lines));
  }

  private static List<Vector3D> samples(FlatFace.Edge edge) {
    List<Vector3D> points = new ArrayList<>();
    if (edge instanceof FlatFace.StraightEdge straight) {
      int steps = straight.chord() ? 1 : STRAIGHT_STEPS;
      for (int i = 0; i <= steps; i++) {
        double share = (double) i / steps;
        points.add(new Vector3D(1 - share, straight.from(), share, straight.to()));
      }
    } else if (edge instanceof FlatFace.RoundEdge round) {
      Vector3D u = round.axis().orthogonal();
      Vector3D v = round.axis().crossProduct(u);
      for (int i = 0; i <= ROUND_STEPS; i++) {
        double angle = 2 * Math.PI * i / ROUND_STEPS * (round.hole() ? -1 : 1);
        double r = round.radiusMm();
        points.add(new Vector3D(1, round.centre(), r * Math.cos(angle), u, r * Math.sin(angle), v));
      }
    }
    return points;
  }

  /** Least way along the part from the face to the cylinder, over points of the whole face. */
  private double leastGap(List<List<Vector3D>> edges) {
    List<Vector3D> all = edges.stream().flatMap(List::stream).toList();
    Vector3D middle = Vector3D.ZERO;
    for (Vector3D point : all) {
      middle = middle.add(1.0 / all.size(), point);
    }
    double least = Double.POSITIVE_INFINITY;
    for (Vector3D point : all) {
      for (double share : new double[] {0, 0.25, 0.5, 0.75, 1}) {
        Vector3D at = new Vector3D(share, point, 1 - share, middle);
        least = Math.min(least, way(at));
      }
    }
    return least;
  }

  /** Way along the part from a point to the near side of the cylinder; infinite past its ends. */
  private double way(Vector3D point) {
    double z = axes.into(point).getZ();
    double y = axes.into(point).getY();
    double r = barrel.radiusMm();
    if (Math.abs(y) > r) {
      return Double.POSITIVE_INFINITY;
    }
    double way = (z - Math.sqrt(r * r - y * y)) / -along.dotProduct(axes.z());
    double x = barrel.along(point.add(way, along));
    Vector3D side = axes.z();
    return x < barrel.fromMm(side) || x > barrel.toMm(side) ? Double.POSITIVE_INFINITY : way;
  }

  private Vector3D onBarrel(Vector3D point) {
    double r = barrel.radiusMm();
    double y = Math.max(-r, Math.min(r, axes.into(point).getY()));
    double z = Math.sqrt(r * r - y * y);
    double way = (axes.into(point).getZ() - z) / -along.dotProduct(axes.z());
    Vector3D hit = axes.into(point.add(way, along));
    double x = Math.max(barrel.fromMm(axes.z()), Math.min(barrel.toMm(axes.z()), hit.getX()));
    return axes.outOf(new Vector3D(x, y, z));
  }

  private Vector2D unrolled(Vector3D onBarrel) {
    Vector3D local = axes.into(onBarrel);
    return new Vector2D(local.getX(), barrel.radiusMm() * Math.atan2(local.getY(), local.getZ()));
  }

  private Optional<RawLine> line(FlatFace.Edge edge, List<Vector3D> on, double gap) {
    List<Vector3D> points = new ArrayList<>();
    for (Vector3D point : on) {
      if (points.isEmpty() || point.distance(points.get(points.size() - 1)) > 1e-6) {
        points.add(point);
      }
    }
    if (points.size() < 2) {
      return Optional.empty();
    }
    LinePath path = path(points);
    boolean ring = edge instanceof FlatFace.RoundEdge;
    boolean chord = edge instanceof FlatFace.StraightEdge straight && straight.chord();
    Corner middle = corner(path, edge, path.lengthMm() / 2);
    double free = 180 - Math.toDegrees(Vector3D.angle(middle.first(), middle.second()));
    RawLine.Rim outside = ring || chord ? RawLine.Rim.OUTSIDE : RawLine.Rim.NONE;
    return Optional.of(
        new RawLine(
            path,
            s -> corner(path, edge, s),
            free,
            WeldLine.Shape.FILLET,
            edge.neighbourNormal(middle.tip()),
            edge.hole() ? RawLine.Rim.INSIDE : outside,
            shapedIsFirst ? edge.wallMm() : barrel.wallMm(),
            shapedIsFirst ? barrel.wallMm() : edge.wallMm(),
            Optional.empty(),
            gap,
            chord));
  }

  private static LinePath path(List<Vector3D> points) {
    LinePath.Straight straight =
        new LinePath.Straight(points.get(0), points.get(points.size() - 1));
    double length = straight.lengthMm();
    for (Vector3D point : points) {
      Vector3D arm = point.subtract(straight.start());
      if (length < 1e-3 || arm.crossProduct(straight.tangent(0)).getNorm() > 1e-6) {
        return new LinePath.Curve(points);
      }
    }
    return straight;
  }

  private Corner corner(LinePath path, FlatFace.Edge edge, double distance) {
    Vector3D at = path.at(distance);
    Vector3D flank = edge.neighbourNormal(at);
    Vector3D round = barrel.normalAt(at);
    return shapedIsFirst
        ? new Corner(at, path.tangent(distance), flank, round)
        : new Corner(at, path.tangent(distance), round, flank);
  }
}
