package org.counterpull.jointplan;

import java.util.Locale;

/**
 * What is done to the edges.
 *
 * @param kind form of the preparation
 * @param firstDepthMm groove depth on the first side; 0 for none
 * @param secondDepthMm groove depth on the second side; 0 for none
 * @param angleDeg included angle for V forms, angle of one edge for bevel, U and J forms; 0 for
 *     none
 * @param rootFaceMm left unbevelled in the middle or at the root
 * @param rootGapMm opening at the root after tacking
 * @param rootRadiusMm of U and J forms; 0 for none
 * @param bevelledPart name of the part that is bevelled; empty where both or none are
 * @param backing what lies behind the root; empty for nothing
 * @param gouged true where the root of the second side is taken down to sound metal
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
    double rootRadiusMm,
    String bevelledPart,
    String backing,
    boolean gouged,
    String how,
    String reason,
    String source) {

  /** A preparation without root radius, backing or gouging. */
  public EdgePreparation(
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
    this(
        kind,
        firstDepthMm,
        secondDepthMm,
        angleDeg,
        rootFaceMm,
        rootGapMm,
        0,
        bevelledPart,
        "",
        false,
        how,
        reason,
        source);
  }

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
    FLARE_V,
    /** A V with a broad root face. */
    Y,
    DOUBLE_U,
    DOUBLE_J,
    /** Steep flanks and a wide gap on a backing strip. */
    STEEP_V,
    STEEP_BEVEL,
    /** Holes in the first part, filled. */
    PLUG,
    SLOT;

    /** The words used on plans. */
    public String words() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** Its angle is the one between both edges. */
    public boolean angleIsIncluded() {
      return switch (this) {
        case V, DOUBLE_V, Y, STEEP_V -> true;
        case FILLET, SQUARE, BEVEL, DOUBLE_BEVEL, U, J -> false;
        case FLARE_BEVEL, FLARE_V, DOUBLE_U, DOUBLE_J, STEEP_BEVEL, PLUG, SLOT -> false;
      };
    }
  }
}
