package org.counterpull.jointplan;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.contact.LinePath;
import org.counterpull.contact.WeldLine;

/** Lines on the two faces of one wall. */
final class BothFaces {
  private BothFaces() {}

  /** Both sides of the wall at a line are welded: it carries what both bring. */
  static int faces(WeldLine line, List<WeldLine> lines) {
    return lines.stream().anyMatch(other -> other != line && isBehind(line, other)) ? 2 : 1;
  }

  /** The other line runs along the other face of the first part's wall. */
  static boolean isBehind(WeldLine line, WeldLine other) {
    LinePath path = line.path();
    double middle = path.lengthMm() / 2;
    Vector3D along = path.tangent(middle);
    Vector3D between = other.path().at(other.path().lengthMm() / 2).subtract(path.at(middle));
    double beside = between.crossProduct(along).getNorm();
    boolean parallel =
        Math.abs(along.dotProduct(other.path().tangent(other.path().lengthMm() / 2))) > 0.99;
    return parallel
        && beside < 1.5 * line.firstWallMm() + 2
        && Math.abs(between.dotProduct(along)) < middle;
  }
}
