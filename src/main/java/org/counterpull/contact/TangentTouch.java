package org.counterpull.contact;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.counterpull.solid.Cylinder;
import org.counterpull.solid.FlatFace;
import org.counterpull.space.Frame;

/**
 * A round part that lies along a plane face.
 *
 * <p>The strip beside the tangent line in which the two are no further apart than the limit counts
 * as contact, as it does between plane faces. Where the face reaches beyond the strip there is a
 * flare groove, its line on the tangent line. Where the face ends within the strip its edge is a
 * line of its own: along the round part always, across it only when the face is the end of a part
 * that stands on the round one (a lug on a barrel, not a knuckle on a flat). The round part's own
 * ends are no lines: what turns there must stay clean.
 */
final class TangentTouch {
  private final Cylinder round;
  private final FlatFace face;
  private final boolean roundIsFirst;
  private final Frame plane;
  private final Flare flare;

  private TangentTouch(Cylinder round, FlatFace face, boolean roundIsFirst) {
    this.round = round;
    this.face = face;
    this.roundIsFirst = roundIsFirst;
    double height = round.origin().subtract(face.point()).dotProduct(face.normal());
    Vector3D foot = round.origin().subtract(face.normal().scalarMultiply(height));
    plane = Frame.of(foot, round.axis(), face.normal());
    flare = new Flare(round.radiusMm(), Double.POSITIVE_INFINITY, height - round.radiusMm());
  }

  static Optional<Touch> of(
      Cylinder round, FlatFace face, boolean roundIsFirst, double limitMm, FitUp fitUp) {
    if (Math.abs(round.axis().dotProduct(face.normal())) > Math.sin(Math.toRadians(0.1))) {
      return Optional.empty();
    }
    TangentTouch touch = new TangentTouch(round, face, roundIsFirst);
    double root = touch.flare.rootMm();
    return root < -fitUp.overlapMm() || root >= limitMm ? Optional.empty() : touch.touch(limitMm);
  }

  private Optional<Touch> touch(double limitMm) {
    double half = flare.besideMm(limitMm);
    Vector3D down = face.normal().negate();
    double from = round.fromMm(down);
    double to = round.toMm(down);
    List<PlaneEdge> strip = new ArrayList<>();
    double[][] corners = {{from, -half}, {to, -half}, {to, half}, {from, half}};
    for (int i = 0; i < corners.length; i++) {
      double[] a = corners[i];
      double[] b = corners[(i + 1) % corners.length];
      strip.add(new PlaneEdge.Segment(new Vector2D(a), new Vector2D(b), i));
    }
    Patch patch = Patch.of(new PlaneRegion(strip), PlaneRegion.of(face, plane));
    if (patch.areaMm2() < 1e-3) {
      return Optional.empty();
    }
    List<RawLine> lines = new ArrayList<>();
    for (Patch.Piece piece : patch.pieces()) {
      (piece.ofFirst() ? groove(piece) : rim(piece)).ifPresent(lines::add);
    }
    FlatFace.Kind broad = FlatFace.Kind.BROAD;
    return Optional.of(
        new Touch(
            patch.areaMm2(),
            flare.rootMm(),
            roundIsFirst ? broad : face.kind(),
            roundIsFirst ? face.kind() : broad,
            lines));
  }

  private Optional<RawLine> groove(Patch.Piece piece) {
    if (piece.edge().tag() % 2 == 1) {
      return Optional.empty();
    }
    double hand = piece.edge().tag() == 0 ? -1 : 1;
    double height = flare.rootMm() / 2;
    double a = piece.edge().at(piece.from()).getX();
    double b = piece.edge().at(piece.to()).getX();
    LinePath.Straight path =
        new LinePath.Straight(
            plane.outOf(new Vector3D(a, 0, height)), plane.outOf(new Vector3D(b, 0, height)));
    double mouth = flare.mouthMm();
    double turn = flare.turnRad(mouth);
    Vector3D tip = plane.outOf(new Vector3D(a, hand * mouth, flare.openingMm(mouth) / 2));
    Vector3D away = plane.directionOutOf(new Vector3D(0, hand * Math.sin(turn), -Math.cos(turn)));
    Corner shape = corner(tip, path.tangent(0), away, face.normal());
    Vector3D opening = plane.y().scalarMultiply(hand).add(face.normal()).normalize();
    Corner corner = new Corner(tip, shape.tangent(), shape.first(), shape.second(), opening);
    RawLine like =
        new RawLine(
            path,
            s -> corner,
            Math.toDegrees(turn),
            WeldLine.Shape.FLARE_BEVEL,
            plane.y().scalarMultiply(hand),
            RawLine.Rim.NONE,
            roundIsFirst ? round.wallMm() : face.wallMm(),
            roundIsFirst ? face.wallMm() : round.wallMm(),
            Optional.of(round.radiusMm()),
            Math.max(0, flare.rootMm()),
            false);
    return Optional.of(RawLine.straight(path, corner, like));
  }

  private Corner corner(Vector3D tip, Vector3D tangent, Vector3D ofRound, Vector3D ofFlat) {
    return roundIsFirst
        ? new Corner(tip, tangent, ofRound, ofFlat)
        : new Corner(tip, tangent, ofFlat, ofRound);
  }

  private Optional<RawLine> rim(Patch.Piece piece) {
    boolean straight = piece.edge() instanceof PlaneEdge.Segment;
    boolean along = straight && Math.abs(piece.outward().getY()) > 0.996;
    if (!along && face.kind() != FlatFace.Kind.END) {
      return Optional.empty();
    }
    FlatFace.Edge edge = face.edges().get(piece.edge().tag());
    LinePath path = PlaneTouch.onPlane(piece, plane, 0);
    DoubleFunction<Corner> corners =
        s -> {
          Vector3D at = path.at(s);
          return corner(at, path.tangent(s), facing(at), edge.neighbourNormal(at));
        };
    Corner middle = corners.apply(path.lengthMm() / 2);
    double free = 180 - Math.toDegrees(Vector3D.angle(middle.first(), middle.second()));
    if (free < Touch.CLOSED_DEG) {
      return Optional.empty();
    }
    boolean ring = !straight || ((FlatFace.StraightEdge) edge).chord();
    RawLine.Rim outside = ring ? RawLine.Rim.OUTSIDE : RawLine.Rim.NONE;
    return Optional.of(
        new RawLine(
            path,
            corners,
            free,
            WeldLine.Shape.FILLET,
            edge.neighbourNormal(middle.tip()),
            edge.hole() ? RawLine.Rim.INSIDE : outside,
            roundIsFirst ? round.wallMm() : edge.wallMm(),
            roundIsFirst ? edge.wallMm() : round.wallMm(),
            Optional.empty(),
            meanOpening(piece),
            ring && straight));
  }

  /** The round surface's normal straight across the gap from a point of the face. */
  private Vector3D facing(Vector3D at) {
    double beside = plane.into(at).getY();
    double turn = flare.turnRad(Math.abs(beside)) * Math.signum(beside);
    return plane.directionOutOf(new Vector3D(0, Math.sin(turn), -Math.cos(turn)));
  }

  private double meanOpening(Patch.Piece piece) {
    int steps = 16;
    double sum = 0;
    for (int i = 0; i < steps; i++) {
      double place = piece.from() + (piece.to() - piece.from()) * (i + 0.5) / steps;
      sum += flare.openingMm(Math.abs(piece.edge().at(place).getY()));
    }
    return Math.max(0, sum / steps);
  }
}
