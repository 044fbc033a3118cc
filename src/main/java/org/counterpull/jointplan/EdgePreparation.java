package org.counterpull.jointplan;

import java.util.Locale;

/**
 * What is done to the edges.
 *
 * @param kind form of the preparation
 * @param firstDepthMm groove depth on the first side; 0 for none
 * @param secondDepthMm groove depth on the second side; 0 for none
 * @param angleDeg included angle for V forms, angle of the one bevelled edge for bevel forms; 0 for
 *     none
 * @param rootFaceMm left unbevelled in the middle or at the root
 * @param rootGapMm opening at the root after tacking
 * @param bevelledPart name of the part that is bevelled; empty where both or none are
 * @param how how it is made and to what, in one sentence for the bench
 * @param reason why this one
 * @param source where its values stand
 */
public record EdgePreparation(
    Kind kind,
    double firstDepthMm,
    double secondDepthMm,
    double angleDeg,
    double rootFaceMm,
    double rootGapMm,
    String bevelledPart,
    String how,
    String reason,
    String source) {

  /** Forms of preparation. */
  public enum Kind {
    FILLET,
    SQUARE,
    V,
    DOUBLE_V,
    BEVEL,
    DOUBLE_BEVEL,
    U,
    J,
    FLARE_BEVEL,
    FLARE_V;

    /** The words used on plans. */
    public String words() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }
}
