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
 * @param aheadMm how far it goes from the run in the direction of {@code along}, mm
 * @param behindMm how far it goes the other way; 0 for one that ends at the run
 * @param aroundMm way around a closed wall that the run lies lengthwise on; 0 for an open one
 */
record Wall(
    String part,
    double thicknessMm,
    boolean goesOn,
    Vector3D outward,
    Vector3D along,
    double middleMm,
    double aheadMm,
    double behindMm,
    double aroundMm) {

  /** How wide it is across the run, mm: what can take part in the shrinkage. */
  double roomMm() {
    return Math.max(thicknessMm, Math.max(aroundMm, aheadMm + behindMm));
  }

  /** Half-plates that leave the weld. */
  int halfPlates() {
    return goesOn ? 2 : 1;
  }
}
