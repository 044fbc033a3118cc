package org.counterpull.contact;

import java.util.Optional;
import java.util.function.DoubleFunction;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A line in the axes of the second part, before it has a name.
 *
 * @param corners the corner at a distance from the start, mm
 * @param towards the direction that names its side
 * @param rim where it runs around something round or inside something hollow
 * @param chord true for a piece of a curve that is still to be joined to its neighbours
 */
record RawLine(
    LinePath path,
    DoubleFunction<Corner> corners,
    double dihedralDeg,
    WeldLine.Shape shape,
    Vector3D towards,
    Rim rim,
    double firstWallMm,
    double secondWallMm,
    Optional<Double> flareRadiusMm,
    double gapMm,
    boolean chord) {

  /** Whether a line runs around something. */
  enum Rim {
    NONE,
    OUTSIDE,
    INSIDE
  }

  /** A straight line whose corner is the same all along. */
  static RawLine straight(LinePath.Straight path, Corner corner, RawLine like) {
    Vector3D offset = corner.tip().subtract(path.start());
    Vector3D tangent = path.tangent(0);
    return like.along(path, s -> corner.at(path.at(s).add(offset), tangent));
  }

  /** The same line on another path. */
  RawLine along(LinePath other, DoubleFunction<Corner> there) {
    return new RawLine(
        other,
        there,
        dihedralDeg,
        shape,
        towards,
        rim,
        firstWallMm,
        secondWallMm,
        flareRadiusMm,
        gapMm,
        chord);
  }

  Corner middle() {
    return corners.apply(path.lengthMm() / 2);
  }
}
