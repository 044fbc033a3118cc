package org.counterpull.pulljob;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.contact.WeldLine;
import org.counterpull.solid.Cylinder;
import org.counterpull.solid.Depth;
import org.counterpull.solid.Solid;

/** Feels beside a weld line which wall goes on under the weld and which ends there. */
final class WallsAtLine {
  private static final double INTO_METAL_RAD = Math.toRadians(25);
  private static final double NEAR_MM = 1.5;
  private static final double BEYOND_MM = 2;
  private static final double STEP_MM = 0.5;
  private static final double FARTHEST_MM = 400;
  private static final double EDGE_ON = 1.5;
  private static final double FELT_MM = 2.5;
  private static final double LENGTHWISE = 0.9;
  private static final int ROUND_THE_LINE = 24;

  private final WeldLine line;
  private final Solid first;
  private final Solid second;
  private final Vector3D at;
  private final Vector3D along;
  private final Vector3D opening;

  private WallsAtLine(WeldLine line, Solid first, Solid second) {
    this.line = line;
    this.first = first;
    this.second = second;
    double middle = line.path().lengthMm() / 2;
    this.at = line.path().at(middle);
    this.along = line.path().tangent(middle);
    this.opening = Axes.square(line.opening(), along);
  }

  /** Walls of the first and the second part. */
  static List<Wall> of(WeldLine line, Solid first, Solid second) {
    WallsAtLine here = new WallsAtLine(line, first, second);
    return switch (line.shape()) {
      case FILLET -> here.insideCorner();
      case BUTT, OUTSIDE_CORNER -> List.of(here.ending(first, true), here.ending(second, false));
      case FLARE_BEVEL, FLARE_V -> here.flare();
      case PLUG -> here.insideCorner();
    };
  }

  private double thicknessMm(boolean ofFirst) {
    return ofFirst ? line.firstWallMm() : line.secondWallMm();
  }

  private Wall wall(boolean ofFirst, boolean goesOn, Vector3D outward, Vector3D inPlane) {
    Solid solid = ofFirst ? first : second;
    // Across the gap of a butt the wall begins beside the line; elsewhere the gap lies under it.
    boolean butt = line.shape() == WeldLine.Shape.BUTT;
    double asideMm = butt ? line.gapMm() / 2 + NEAR_MM : 0;
    double underMm = butt ? 0 : line.gapMm();
    Vector3D inside = at.add(asideMm + NEAR_MM, inPlane).add(-underMm - STEP_MM, outward);
    double found =
        Depth.mm(solid, inside, outward.negate(), FARTHEST_MM)
            + Depth.mm(solid, inside, outward, FARTHEST_MM);
    boolean known = found <= 0 || Math.abs(found - thicknessMm(ofFirst)) < FELT_MM;
    double h = known ? thicknessMm(ofFirst) : found;
    Vector3D middle =
        at.add(asideMm, inPlane).add(-underMm - Math.min(h, thicknessMm(ofFirst)) / 2, outward);
    double ahead = Depth.mm(solid, middle, inPlane, FARTHEST_MM) + asideMm;
    double behind = Math.max(0, Depth.mm(solid, middle, inPlane.negate(), FARTHEST_MM) - asideMm);
    double width = Math.max(ahead + behind, STEP_MM);
    if (h > EDGE_ON * width) {
      // The face is the edge of a wall that stands behind it.
      double aside = (ahead - behind) / 2;
      return new Wall(solid.name(), width, false, inPlane, outward.negate(), aside, h, 0, 0);
    }
    double around = lengthwise(solid) ? Math.PI * (2 * round(solid).radiusMm() - h) : 0;
    return new Wall(
        solid.name(),
        h,
        goesOn,
        outward,
        inPlane,
        -h / 2,
        Math.max(ahead, STEP_MM),
        goesOn ? behind : 0,
        around);
  }

  /** A fillet's two faces lie half the dihedral angle to either side of the opening. */
  private List<Wall> insideCorner() {
    double half = Math.toRadians(line.dihedralDeg()) / 2;
    Vector3D one = Axes.turned(opening, along, half);
    Vector3D other = Axes.turned(opening, along, -half);
    Vector3D behindOne = at.add(NEAR_MM, Axes.turned(opening, along, half + INTO_METAL_RAD));
    Vector3D behindOther = at.add(NEAR_MM, Axes.turned(opening, along, -half - INTO_METAL_RAD));
    boolean firstIsOne =
        first.distance(behindOne) + second.distance(behindOther)
            <= first.distance(behindOther) + second.distance(behindOne);
    Vector3D ofFirst = firstIsOne ? one : other;
    Vector3D ofSecond = firstIsOne ? other : one;
    return List.of(face(true, ofFirst), face(false, ofSecond));
  }

  private Wall face(boolean ofFirst, Vector3D inPlane) {
    Solid solid = ofFirst ? first : second;
    double h = thicknessMm(ofFirst);
    // Out of the face: square to it, on the side of the opening.
    Vector3D outward =
        Axes.square(opening, along).subtract(inPlane.scalarMultiply(opening.dotProduct(inPlane)));
    outward = outward.getNorm() < 1e-6 ? along.crossProduct(inPlane) : outward.normalize();
    Vector3D under =
        at.add(outward.scalarMultiply(-0.4 * h))
            .subtract(inPlane.scalarMultiply(thicknessMm(!ofFirst) + BEYOND_MM));
    return wall(ofFirst, lengthwise(solid) || solid.contains(under, 0.1), outward, inPlane);
  }

  private static Cylinder round(Solid solid) {
    return solid.cylinder().orElseThrow();
  }

  /** True along a round part, whose wall goes on round the line and can't be felt straight on. */
  private boolean lengthwise(Solid solid) {
    return solid
        .cylinder()
        .map(round -> Math.abs(round.axis().dotProduct(along)) > LENGTHWISE)
        .orElse(false);
  }

  /** The wall lies where most of its metal round the line is. */
  private Wall ending(Solid solid, boolean ofFirst) {
    double radius = Math.max(NEAR_MM, 0.6 * thicknessMm(ofFirst));
    Vector3D sum = Vector3D.ZERO;
    for (int i = 0; i < ROUND_THE_LINE; i++) {
      Vector3D way = Axes.turned(opening, along, 2 * Math.PI * (i + 0.5) / ROUND_THE_LINE);
      if (solid.contains(at.add(radius, way), 0.05)) {
        sum = sum.add(way);
      }
    }
    if (line.shape() == WeldLine.Shape.BUTT) {
      Vector3D aside = along.crossProduct(opening);
      double side = sum.dotProduct(aside);
      Vector3D inPlane = side >= 0 ? aside : aside.negate();
      return wall(ofFirst, false, opening, inPlane);
    }
    Vector3D inPlane =
        sum.getNorm() < 1e-6 ? opening.negate() : nearestFace(solid, sum.normalize());
    Vector3D outward = opening.subtract(inPlane.scalarMultiply(opening.dotProduct(inPlane)));
    return wall(ofFirst, false, outward.normalize(), inPlane);
  }

  /** The direction round the line in which the solid goes on farthest. */
  private Vector3D nearestFace(Solid solid, Vector3D rough) {
    Vector3D best = rough;
    double most = -1;
    for (int i = -4; i <= 4; i++) {
      Vector3D way = Axes.turned(rough, along, i * Math.toRadians(15));
      double room = Depth.mm(solid, at.add(0.5, rough), way, FARTHEST_MM);
      if (room > most + 0.5) {
        most = room;
        best = way;
      }
    }
    return best;
  }

  /** A round on a flat or on another round: each wall goes on, its face touches the other. */
  private List<Wall> flare() {
    boolean roundIsFirst = first.cylinder().isPresent();
    Cylinder round = round(roundIsFirst ? first : second);
    Vector3D towardsAxis = Axes.square(round.onAxis(at).subtract(at), along);
    Vector3D beside = opening.subtract(towardsAxis.scalarMultiply(opening.dotProduct(towardsAxis)));
    Vector3D side = beside.normalize();
    double h = thicknessMm(!roundIsFirst);
    Solid flat = roundIsFirst ? second : first;
    Vector3D under =
        at.subtract(towardsAxis.scalarMultiply(line.gapMm() / 2 + 0.4 * h))
            .subtract(side.scalarMultiply(round.radiusMm() / 2 + BEYOND_MM));
    Wall ofRound = wall(roundIsFirst, true, towardsAxis.negate(), side);
    Wall ofFlat = wall(!roundIsFirst, flat.contains(under, 0.1), towardsAxis, side);
    return roundIsFirst ? List.of(ofRound, ofFlat) : List.of(ofFlat, ofRound);
  }
}
