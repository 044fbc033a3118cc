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
 * @param opening unit vector out of the corner, where the torch comes from
 */
record Corner(Vector3D tip, Vector3D tangent, Vector3D first, Vector3D second, Vector3D opening) {

  /** A corner that opens along the bisector of its free space. */
  Corner(Vector3D tip, Vector3D tangent, Vector3D first, Vector3D second) {
    this(tip, tangent, first, second, first.add(second).normalize());
  }

  /** The same corner at another place of a straight line. */
  Corner at(Vector3D otherTip, Vector3D otherTangent) {
    return new Corner(otherTip, otherTangent, first, second, opening);
  }

  Corner outOf(Frame axes) {
    return new Corner(
        axes.outOf(tip),
        axes.directionOutOf(tangent),
        axes.directionOutOf(first),
        axes.directionOutOf(second),
        axes.directionOutOf(opening));
  }
}
