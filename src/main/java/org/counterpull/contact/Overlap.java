package org.counterpull.contact;

import java.util.Locale;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * Two parts in the same place.
 *
 * @param first name of a part
 * @param second name of the other
 * @param depthMm the least move that parts the pieces that are deepest in each other
 * @param direction in which the first part would have to move, unit vector in weldment axes
 */
public record Overlap(String first, String second, double depthMm, Vector3D direction) {

  /** What is wrong and what to move, in a sentence. */
  public String words() {
    return String.format(
        Locale.ROOT,
        "%s and %s are in each other by %.1f mm; move %s by %s, or shorten one of them",
        first,
        second,
        depthMm,
        first,
        MoveWords.of(depthMm, direction));
  }
}
