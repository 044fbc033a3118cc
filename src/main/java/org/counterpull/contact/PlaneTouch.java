package org.counterpull.contact;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.counterpull.solid.FlatFace;
import org.counterpull.space.Frame;

/**
 * A plane face on a plane face.
 *
 * <p>Both are laid into one plane; what they have in common is the contact. Along each piece of its
 * boundary the free angle is a full turn less the material of both parts there: an edge with its
 * angle of material, or the inside of a face with 180 degrees. An edge that ends on the other face
 * leaves an inside corner (a fillet); edges that are flush leave 180 degrees (a butt); edges that
 * meet at an outside corner leave more. Where nothing is free (the root of an angle around a
 * corner) there is no line.
 */
final class PlaneTouch {
  /** Faces up to this much out of parallel lie on each other: cosine of 0.1 degrees. */
  static final double PARALLEL = Math.cos(Math.toRadians(0.1));

  private final FlatFace first;
  private final FlatFace second;
  private final FitUp fitUp;
  private final Frame plane;

  private PlaneTouch(FlatFace first, FlatFace second, FitUp fitUp) {
    this.first = first;
    this.second = second;
    this.fitUp = fitUp;
    Vector3D along = second.normal().orthogonal();
    if (second.edges().get(0) instanceof FlatFace.StraightEdge edge) {
      along = edge.to().subtract(edge.from());
    }
    plane = Frame.of(second.point(), along, second.normal());
  }

  /** The contact, if they touch within the limit. */
  static Optional<Touch> of(FlatFace first, FlatFace second, double limitMm, FitUp fitUp) {
    if (first.normal().dotProduct(second.normal()) > -PARALLEL) {
      return Optional.empty();
    }
    double roughly = first.point().subtract(second.point()).dotProduct(second.normal());
    if (Math.abs(roughly) > limitMm + 50) {
      return Optional.empty();
    }
    return new PlaneTouch(first, second, fitUp).touch(limitMm);
  }

  private Optional<Touch> touch(double limitMm) {
    PlaneRegion one = PlaneRegion.of(first, plane);
    PlaneRegion other = PlaneRegion.of(second, plane);
    Patch patch = Patch.of(one, other);
    if (patch.pieces().isEmpty() || patch.areaMm2() < 1e-3) {
      return Optional.empty();
    }
    double gap = height(patch.middle());
    if (gap < -fitUp.overlapMm() || gap > limitMm) {
      return Optional.empty();
    }
    List<RawLine> lines = new ArrayList<>();
    for (Patch.Piece piece : patch.pieces()) {
      line(piece, piece.ofFirst() ? other : one, gap).ifPresent(lines::add);
    }
    return Optional.of(new Touch(patch.areaMm2(), gap, first.kind(), second.kind(), lines));
  }

  /** Height of the first face above the second at a point of the plane. */
  private double height(Vector2D at) {
    Vector3D point = plane.outOf(new Vector3D(at.getX(), at.getY(), 0));
    return first.point().subtract(point).dotProduct(first.normal())
        / plane.z().dotProduct(first.normal());
  }

  private FlatFace.Edge source(PlaneEdge edge, boolean ofFirst) {
    return (ofFirst ? first : second).edges().get(edge.tag());
  }

  private Optional<RawLine> line(Patch.Piece piece, PlaneRegion other, double gap) {
    FlatFace.Edge edge = source(piece.edge(), piece.ofFirst());
    Optional<FlatFace.Edge> flush = flush(piece, other).map(e -> source(e, !piece.ofFirst()));
    double otherMaterial = flush.map(FlatFace.Edge::materialDeg).orElse(180.0);
    double free = 360 - edge.materialDeg() - otherMaterial;
    if (free < Touch.CLOSED_DEG) {
      return Optional.empty();
    }
    FlatFace otherFace = piece.ofFirst() ? second : first;
    double wall = edge.wallMm();
    double otherWall = flush.map(FlatFace.Edge::wallMm).orElse(otherFace.wallMm());
    LinePath path = path(piece, gap / 2);
    DoubleFunction<Corner> corners =
        s -> {
          Vector3D at = path.at(s);
          Vector3D here = edge.neighbourNormal(at);
          Vector3D there = flush.map(e -> e.neighbourNormal(at)).orElse(otherFace.normal());
          return piece.ofFirst()
              ? new Corner(at, path.tangent(s), here, there)
              : new Corner(at, path.tangent(s), there, here);
        };
    Vector3D middle = path.at(path.lengthMm() / 2);
    Vector3D towards = edge.neighbourNormal(middle);
    if (flush.isPresent()) {
      towards = towards.add(flush.get().neighbourNormal(middle));
    }
    return Optional.of(
        new RawLine(
            path,
            corners,
            free,
            flush.isEmpty() && free < 180 ? WeldLine.Shape.FILLET : Touch.shape(free),
            towards,
            rim(edge, flush),
            piece.ofFirst() ? wall : otherWall,
            piece.ofFirst() ? otherWall : wall,
            Optional.empty(),
            Math.max(0, gap),
            edge instanceof FlatFace.StraightEdge straight && straight.chord()));
  }

  /** The other region's edge that is flush with a piece. */
  private Optional<PlaneEdge> flush(Patch.Piece piece, PlaneRegion other) {
    if (piece.along().isPresent()) {
      return piece.along();
    }
    Vector2D from = piece.middle();
    Vector2D out = piece.outward();
    return other
        .exit(from, out)
        .filter(exit -> exit.distanceMm() <= fitUp.flushMm())
        .filter(exit -> Math.abs(exit.outward(from, out).dotProduct(out)) > 0.97)
        .map(PlaneRegion.Exit::edge);
  }

  private static RawLine.Rim rim(FlatFace.Edge edge, Optional<FlatFace.Edge> flush) {
    if (edge.hole() || flush.map(FlatFace.Edge::hole).orElse(false)) {
      return RawLine.Rim.INSIDE;
    }
    return round(edge) || flush.map(PlaneTouch::round).orElse(false)
        ? RawLine.Rim.OUTSIDE
        : RawLine.Rim.NONE;
  }

  private static boolean round(FlatFace.Edge edge) {
    return edge instanceof FlatFace.RoundEdge
        || edge instanceof FlatFace.StraightEdge straight && straight.chord();
  }

  private LinePath path(Patch.Piece piece, double height) {
    return onPlane(piece, plane, height);
  }

  /** A piece of a boundary, lifted off its plane. */
  static LinePath onPlane(Patch.Piece piece, Frame plane, double height) {
    if (piece.edge() instanceof PlaneEdge.Circle circle) {
      Vector3D centre = lifted(circle.centre(), plane, height);
      Vector3D start = lifted(circle.at(piece.from()), plane, height);
      Vector3D axis = circle.anticlockwise() ? plane.z() : plane.z().negate();
      return new LinePath.Arc(centre, axis, start.subtract(centre), piece.to() - piece.from());
    }
    return new LinePath.Straight(
        lifted(piece.edge().at(piece.from()), plane, height),
        lifted(piece.edge().at(piece.to()), plane, height));
  }

  private static Vector3D lifted(Vector2D point, Frame plane, double height) {
    return plane.outOf(new Vector3D(point.getX(), point.getY(), height));
  }
}
