package org.counterpull.drawing;

import java.util.ArrayList;
import java.util.List;

/** The outline of a cut edge: a straight flank, and a root radius where the form has one. */
final class CutEdge {
  private static final int ARC_CORNERS = 8;

  private CutEdge() {}

  /**
   * Corners from the face down to the root: x is how far the edge leans back from the root, y how
   * deep the corner lies below the face.
   *
   * @param depth of the groove, mm
   * @param lean of the flank from the normal of the face, rad
   * @param radius of the root, mm; 0 for none
   */
  static List<Point> corners(double depth, double lean, double radius) {
    double arcMm = radius * (1 - Math.sin(lean));
    double flank = radius * Math.cos(lean) + (depth - arcMm) * Math.tan(lean);
    List<Point> points = new ArrayList<>(List.of(new Point(flank, 0)));
    for (int i = 0; radius > 0 && i < ARC_CORNERS; i++) {
      double turned = (Math.PI / 2 - lean) * (ARC_CORNERS - i) / ARC_CORNERS;
      points.add(new Point(radius * Math.sin(turned), depth - radius * (1 - Math.cos(turned))));
    }
    points.add(new Point(0, depth));
    return points;
  }
}
