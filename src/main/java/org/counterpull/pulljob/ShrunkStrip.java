package org.counterpull.pulljob;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A piece of a wall under a segment that shrinks across it.
 *
 * @param foot middle of the segment on the face of the wall
 * @param run unit vector along the segment
 * @param lengthMm of the segment
 * @param thicknessMm of the wall
 * @param across unit vector in the wall, square to the run
 * @param outward out of the face, towards the weld
 * @param acrossMm shrinkage, positive
 * @param angleRad turn towards the weld
 */
record ShrunkStrip(
    Vector3D foot,
    Vector3D run,
    double lengthMm,
    double thicknessMm,
    Vector3D across,
    Vector3D outward,
    double acrossMm,
    double angleRad) {

  Vector3D middle() {
    return foot.add(-thicknessMm / 2, outward);
  }
}
