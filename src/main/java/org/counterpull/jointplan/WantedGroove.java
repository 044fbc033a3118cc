package org.counterpull.jointplan;

import java.util.Optional;
import org.counterpull.groove.Groove;
import org.counterpull.groove.Preparation;
import org.counterpull.weldment.Joint.WeldKind;

/**
 * The groove that a file asks for, in usual dimensions: from memory, ISO 9692-1:2013 (gaps and root
 * faces after tacking).
 */
final class WantedGroove {
  private static final double GAP_MM = 2;
  private static final double ROOT_FACE_MM = 1.5;
  private static final double INCLUDED_DEG = 60;
  private static final double BEVEL_DEG = 45;
  private static final double U_FROM_MM = 12;
  private static final double J_FROM_MM = 16;

  private WantedGroove() {}

  /**
   * The groove.
   *
   * @param kind what the file asks for
   * @param thicknessMm of the prepared part
   * @return empty when the file leaves the choice, or asks for a U or J in a part that is too thin
   *     for one
   */
  static Optional<Groove> of(WeldKind kind, double thicknessMm) {
    double face = Math.min(ROOT_FACE_MM, thicknessMm / 3);
    return switch (kind) {
      case AUTO, FILLET, FLARE_BEVEL, FLARE_V -> Optional.empty();
      case SQUARE -> Optional.of(Groove.square(thicknessMm, Math.min(3, thicknessMm / 3)));
      case V -> straight(Preparation.V, thicknessMm, face, INCLUDED_DEG);
      case DOUBLE_V -> straight(Preparation.DOUBLE_V, thicknessMm, face, INCLUDED_DEG);
      case BEVEL -> straight(Preparation.BEVEL, thicknessMm, face, BEVEL_DEG);
      case DOUBLE_BEVEL -> straight(Preparation.DOUBLE_BEVEL, thicknessMm, face, BEVEL_DEG);
      case U ->
          thicknessMm > U_FROM_MM
              ? Optional.of(new Groove(Preparation.U, thicknessMm, GAP_MM, 2, 10, 6))
              : Optional.empty();
      case J ->
          thicknessMm > J_FROM_MM
              ? Optional.of(new Groove(Preparation.J, thicknessMm, GAP_MM, 2, 15, 8))
              : Optional.empty();
    };
  }

  /** True for the kinds that need a cut edge; a round beside an edge is welded like a fillet. */
  static boolean isGroove(WeldKind kind) {
    return switch (kind) {
      case AUTO, FILLET, FLARE_BEVEL, FLARE_V -> false;
      case SQUARE, V, DOUBLE_V, BEVEL, DOUBLE_BEVEL, U, J -> true;
    };
  }

  private static Optional<Groove> straight(
      Preparation preparation, double thicknessMm, double rootFaceMm, double angleDeg) {
    return Optional.of(Groove.straight(preparation, thicknessMm, GAP_MM, rootFaceMm, angleDeg));
  }
}
