package org.counterpull.contact;

import java.util.List;
import org.counterpull.solid.FlatFace;

/**
 * One pair of surfaces that are fitted to each other.
 *
 * @param areaMm2 where they are no further apart than the limit
 * @param gapMm least distance between them
 * @param first what the surface is on the first part
 * @param second what it is on the second
 */
record Touch(
    double areaMm2, double gapMm, FlatFace.Kind first, FlatFace.Kind second, List<RawLine> lines) {
  /** Corners with less free angle than this are closed: nothing can be laid there. */
  static final double CLOSED_DEG = 15;

  Touch {
    lines = List.copyOf(lines);
  }

  /** What kind of weld a free angle asks for. */
  static WeldLine.Shape shape(double dihedralDeg) {
    if (dihedralDeg < 150) {
      return WeldLine.Shape.FILLET;
    }
    return dihedralDeg <= 210 ? WeldLine.Shape.BUTT : WeldLine.Shape.OUTSIDE_CORNER;
  }
}
