package org.counterpull.strength;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * Force per length at a point of a weld.
 *
 * @param weld the weld
 * @param station the point
 * @param nPerMm force per length, N/mm
 */
public record StationForce(LineWeld weld, LineWeld.Station station, Vector3D nPerMm) {

  /** Its size, N/mm. */
  public double sizeNPerMm() {
    return nPerMm.getNorm();
  }

  /** Angle between force and weld, 0 to 90 degrees; 0 without a force. */
  public double angleDegrees() {
    double size = sizeNPerMm();
    return size == 0
        ? 0
        : Math.toDegrees(
            Math.acos(Math.min(1, Math.abs(nPerMm.dotProduct(station.along())) / size)));
  }
}
