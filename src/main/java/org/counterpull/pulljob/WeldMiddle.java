package org.counterpull.pulljob;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.contact.WeldLine;
import org.counterpull.pulljob.PulledRun.Kind;

/** Where a weld's section has its middle, seen from its root. */
final class WeldMiddle {
  /** Centroid of a triangle from its corner, over its leg: sqrt(2) / 3. */
  private static final double FILLET = Math.sqrt(2) / 3;

  /** Centroid of the groove beside a round, over its width: between 1/2 (gap) and 3/4 (no gap). */
  private static final double FLARE = 0.7;

  private WeldMiddle() {}

  static Vector3D arm(WeldLine line, Kind kind, List<Wall> walls, double areaMm2) {
    return switch (kind) {
      case FILLET -> line.opening().scalarMultiply(FILLET * Math.sqrt(2 * areaMm2));
      case CORNER ->
          line.shape() == WeldLine.Shape.FILLET
              ? line.opening().scalarMultiply(FILLET * Math.sqrt(2 * areaMm2))
              : Vector3D.ZERO;
      case BUTT ->
          line.opening().scalarMultiply(-Math.min(line.firstWallMm(), line.secondWallMm()) / 2);
      case FLARE -> walls.get(0).along().scalarMultiply(FLARE * widthMm(line, areaMm2));
      case BEAD -> Vector3D.ZERO;
    };
  }

  /** Width of a flare of that area: gap times width plus width cubed over six radii. */
  private static double widthMm(WeldLine line, double areaMm2) {
    double radius = line.flareRadiusMm().orElse(Math.sqrt(areaMm2));
    double width = 0;
    double step = radius / 200;
    while (width < radius && width * line.gapMm() + Math.pow(width, 3) / (6 * radius) < areaMm2) {
      width += step;
    }
    return width;
  }
}
