package org.counterpull.contact;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.solid.Cylinder;
import org.counterpull.solid.FlatFace;
import org.counterpull.space.Frame;

/** Two round parts side by side: a flare V on each side of the line on which they touch. */
final class RoundPairTouch {
  private RoundPairTouch() {}

  static Optional<Touch> of(Cylinder first, Cylinder second, double limitMm, FitUp fitUp) {
    if (Math.abs(first.axis().dotProduct(second.axis())) < PlaneTouch.PARALLEL) {
      return Optional.empty();
    }
    Vector3D across = first.origin().subtract(second.onAxis(first.origin()));
    double root = across.getNorm() - first.radiusMm() - second.radiusMm();
    if (root < -fitUp.overlapMm() || root >= limitMm) {
      return Optional.empty();
    }
    Vector3D out = across.normalize();
    Vector3D base = second.origin().add(out.scalarMultiply(second.radiusMm() + root / 2));
    Frame axes = Frame.of(base, second.axis(), out);
    double one = first.along(base) * -1;
    double sense = Math.signum(first.axis().dotProduct(second.axis()));
    double a = sense * (one + first.fromMm(out.negate()));
    double b = sense * (one + first.toMm(out.negate()));
    double from = Math.max(Math.min(a, b), second.fromMm(out));
    double to = Math.min(Math.max(a, b), second.toMm(out));
    if (to - from < 1e-3) {
      return Optional.empty();
    }
    Flare flare = new Flare(first.radiusMm(), second.radiusMm(), root);
    List<RawLine> lines = new ArrayList<>();
    for (int hand : new int[] {-1, 1}) {
      lines.add(line(axes, from, to, flare, hand, first, second));
    }
    double area = 2 * flare.besideMm(limitMm) * (to - from);
    FlatFace.Kind broad = FlatFace.Kind.BROAD;
    return Optional.of(new Touch(area, root, broad, broad, lines));
  }

  private static RawLine line(
      Frame axes, double from, double to, Flare flare, int hand, Cylinder first, Cylinder second) {
    LinePath.Straight path =
        new LinePath.Straight(
            axes.outOf(new Vector3D(from, 0, 0)), axes.outOf(new Vector3D(to, 0, 0)));
    double mouth = flare.mouthMm();
    double above = flare.turnRad(mouth);
    double below = flare.otherTurnRad(mouth);
    Vector3D ofFirst =
        axes.directionOutOf(new Vector3D(0, hand * Math.sin(above), -Math.cos(above)));
    Vector3D ofSecond =
        axes.directionOutOf(new Vector3D(0, hand * Math.sin(below), Math.cos(below)));
    double height =
        (Flare.drop(first.radiusMm(), mouth) - Flare.drop(second.radiusMm(), mouth)) / 2;
    Vector3D tip = axes.outOf(new Vector3D(from, hand * mouth, height));
    Corner corner =
        new Corner(tip, path.tangent(0), ofFirst, ofSecond, axes.y().scalarMultiply(hand));
    RawLine like =
        new RawLine(
            path,
            s -> corner,
            Math.toDegrees(above + below),
            WeldLine.Shape.FLARE_V,
            axes.y().scalarMultiply(hand),
            RawLine.Rim.NONE,
            first.wallMm(),
            second.wallMm(),
            Optional.of(Math.min(first.radiusMm(), second.radiusMm())),
            Math.max(0, flare.rootMm()),
            false);
    return RawLine.straight(path, corner, like);
  }
}
