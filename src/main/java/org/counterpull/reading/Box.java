package org.counterpull.reading;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** The box around a part in part axes: length x, y across, z up; all in mm. */
record Box(double lengthMm, double acrossMm, double upMm) {

  /** Half the extent of the box along a direction given in part axes. */
  double halfAlong(Vector3D direction) {
    return (Math.abs(direction.getX()) * lengthMm
            + Math.abs(direction.getY()) * acrossMm
            + Math.abs(direction.getZ()) * upMm)
        / 2;
  }

  /** From the left front bottom corner to the part's origin, the middle of the left end. */
  Vector3D cornerToOrigin() {
    return new Vector3D(0, acrossMm / 2, upMm / 2);
  }
}
