package org.counterpull.contact;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.space.Frame;

/**
 * The corner that a weld fills, at a point of its line.
 *
 * @param tip where the arc is: on the line, for a flare where the groove is 2 mm open
 * @param tangent unit vector along the line
 * @param first outward normal of the first part's face that bounds the corner
 * @param second outward normal of the second part's
 */
record Corner(Vector3D tip, Vector3D tangent, Vector3D first, Vector3D second) {

  /** Unit vector along the bisector of the free space. */
  Vector3D opening() {
    return first.add(second).normalize();
  }

  Corner outOf(Frame axes) {
    return new Corner(
        axes.outOf(tip),
        axes.directionOutOf(tangent),
        axes.directionOutOf(first),
        axes.directionOutOf(second));
  }
}
