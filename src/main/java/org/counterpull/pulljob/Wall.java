package org.counterpull.pulljob;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * One of the two walls that a run joins, beside the weld.
 *
 * @param part name of the part that it belongs to
 * @param thicknessMm its thickness, mm
 * @param goesOn true when it goes on under the weld to the other side; false when it ends there
 * @param outward unit vector out of its face, towards the weld
 * @param along unit vector in its plane, square to the run, from the weld into it; for a wall that
 *     goes on, on the side of the weld
 * @param middleMm from the root to the wall's middle plane, along {@code outward}, mm
 * @param roomMm how wide it is across the run, mm: what can take part in the shrinkage
 */
record Wall(
    String part,
    double thicknessMm,
    boolean goesOn,
    Vector3D outward,
    Vector3D along,
    double middleMm,
    double roomMm) {

  /** Half-plates that leave the weld. */
  int halfPlates() {
    return goesOn ? 2 : 1;
  }
}
