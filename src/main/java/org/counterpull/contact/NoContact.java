package org.counterpull.contact;

import java.util.Locale;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A joint whose parts are not fitted to each other.
 *
 * @param joint name of the joint
 * @param first name of the part that is to be moved
 * @param second name of the part that it should touch
 * @param gapMm distance between them; 0 when they touch at a point or an edge only, or when
 *     something round lies inside something hollow
 * @param direction in which the first part has to move, unit vector in weldment axes
 */
public record NoContact(
    String joint, String first, String second, double gapMm, Vector3D direction) {

  /** What is wrong and what to move, in a sentence. */
  public String words() {
    if (gapMm < 0.05) {
      return String.format(
          Locale.ROOT,
          "%s: no faces of %s and %s lie on each other; they meet at a point or an edge only",
          joint,
          first,
          second);
    }
    return String.format(
        Locale.ROOT,
        "%s: %s and %s are %.1f mm apart; move %s by %s",
        joint,
        first,
        second,
        gapMm,
        first,
        MoveWords.of(gapMm, direction));
  }
}
