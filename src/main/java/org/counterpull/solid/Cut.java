package org.counterpull.solid;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * The plane of an end: {@code w = atAxis + perU u + perV v}, where u, v lie in the section and w
 * runs along the sweep.
 *
 * @param atAxisMm w where u = v = 0
 * @param perU slope along u, 0 for a square end
 * @param perV slope along v, 0 for a square end
 */
record Cut(double atAxisMm, double perU, double perV) {

  static Cut square(double atMm) {
    return new Cut(atMm, 0, 0);
  }

  double at(double u, double v) {
    return atAxisMm + perU * u + perV * v;
  }

  boolean isSquare() {
    return perU == 0 && perV == 0;
  }

  /** Unit normal of the plane, towards larger w. */
  Vector3D normal() {
    return new Vector3D(-perU, -perV, 1).normalize();
  }
}
