package org.counterpull.drawing;

import java.util.List;

/**
 * The section of a joint in mm: x to the right, y down.
 *
 * @param walls the parts, cut
 * @param bays where the weld metal lies
 * @param dimensions measures beside it
 */
record SectionSketch(List<Wall> walls, List<Bay> bays, List<Dimension> dimensions) {
  SectionSketch {
    walls = List.copyOf(walls);
    bays = List.copyOf(bays);
    dimensions = List.copyOf(dimensions);
  }

  /**
   * A cut part.
   *
   * @param outline its figure
   * @param bore what is left out of it; empty for nothing
   * @param name of the part
   * @param nameAt the point that the name is written at
   * @param nameSide on which side of that point
   */
  record Wall(Region outline, List<Point> bore, String name, Point nameAt, NameSide nameSide) {
    static Wall solid(String name, Point nameAt, NameSide nameSide, double... xy) {
      return new Wall(Region.of(xy), List.of(), name, nameAt, nameSide);
    }
  }

  /** Where a name stands beside its point. */
  enum NameSide {
    ABOVE,
    BELOW,
    RIGHT
  }

  /**
   * A measure between two points.
   *
   * @param from one point
   * @param to the other
   * @param aside direction in which the dimension line is set off, unit vector
   * @param far how many text heights it is set off
   * @param text as written
   */
  record Dimension(Point from, Point to, Point aside, double far, String text) {}
}
