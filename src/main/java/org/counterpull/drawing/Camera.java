package org.counterpull.drawing;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * Where the weldment is looked at from; far away, so that parallel lines stay parallel.
 *
 * @param words for example "from the front right, above"
 * @param towards unit vector from the weldment to the eye
 * @param right of the sheet
 * @param up of the sheet
 */
record Camera(String words, Vector3D towards, Vector3D right, Vector3D up) {
  private static final double TURNED_DEG = 33;
  private static final double RAISED_DEG = 32;

  /** The eight corners, the usual one first. */
  static final List<Camera> CORNERS =
      List.of(
          of("from the front right, above", TURNED_DEG, RAISED_DEG),
          of("from the front left, above", -TURNED_DEG, RAISED_DEG),
          of("from the front right, below", TURNED_DEG, -RAISED_DEG),
          of("from the front left, below", -TURNED_DEG, -RAISED_DEG),
          of("from the back right, above", 180 - TURNED_DEG, RAISED_DEG),
          of("from the back left, above", TURNED_DEG - 180, RAISED_DEG),
          of("from the back right, below", 180 - TURNED_DEG, -RAISED_DEG),
          of("from the back left, below", TURNED_DEG - 180, -RAISED_DEG));

  /** The front is -y, the right is +x. */
  private static Camera of(String words, double turnedDeg, double raisedDeg) {
    double turned = Math.toRadians(turnedDeg);
    double raised = Math.toRadians(raisedDeg);
    Vector3D towards =
        new Vector3D(
            Math.sin(turned) * Math.cos(raised),
            -Math.cos(turned) * Math.cos(raised),
            Math.sin(raised));
    Vector3D right = new Vector3D(Math.cos(turned), Math.sin(turned), 0);
    return new Camera(words, towards, right, towards.crossProduct(right));
  }

  /** The point on the sheet, y down, in mm of the weldment. */
  Point flat(Vector3D p) {
    return new Point(p.dotProduct(right), -p.dotProduct(up));
  }

  /** Nearness to the eye. */
  double nearness(Vector3D p) {
    return p.dotProduct(towards);
  }

  boolean sees(Vector3D normal) {
    return normal.dotProduct(towards) > 1e-6;
  }
}
