package org.counterpull.jointplan;

import java.util.Optional;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.fillet.PartialPenetrationThroat;
import org.counterpull.fillet.PartialPenetrationThroat.Manner;
import org.counterpull.groove.Groove;
import org.counterpull.groove.Preparation;
import org.counterpull.jointplan.EdgePreparation.Kind;

/**
 * Usual dimensions of a groove, from memory: ISO 9692-1:2013; gaps and root faces hold after
 * tacking. Gaps of backed grooves to 16 mm from memory: AWS D1.1, B-U2a and B-U4a.
 */
final class GrooveDimensions {
  private static final double GAP_MM = 2;
  private static final double ROOT_FACE_MM = 1.5;
  private static final double U_DEG = 10;
  private static final double U_RADIUS_MM = 6;
  private static final double J_DEG = 15;
  private static final double J_RADIUS_MM = 8;
  private static final double BACKED_ABOVE_MM = 16;

  /** Angle at which the throat of a partial penetration V counts in full. */
  private static final double PARTIAL_V_DEG = 60;

  private static final double PARTIAL_BEVEL_DEG = 45;

  private final GrooveQuestion q;
  private final double t;

  private GrooveDimensions(GrooveQuestion q) {
    this.q = q;
    this.t = q.thicknessMm();
  }

  static Groove of(Kind kind, GrooveQuestion q) {
    GrooveDimensions dimensions = new GrooveDimensions(q);
    return q.partial() ? dimensions.partial(kind) : dimensions.full(kind);
  }

  private Groove full(Kind kind) {
    double face = halves(Math.min(Math.min(ROOT_FACE_MM, q.fusedFaceMm()), t / 3));
    return switch (kind) {
      case SQUARE -> square();
      case V, FLARE_V, FILLET, PLUG, SLOT -> straight(Preparation.V, GAP_MM, face, q.includedDeg());
      case BEVEL, FLARE_BEVEL -> straight(Preparation.BEVEL, GAP_MM, face, q.bevelDeg());
      case DOUBLE_V -> straight(Preparation.DOUBLE_V, GAP_MM, face, q.includedDeg());
      case DOUBLE_BEVEL -> evenSides(face);
      case Y -> straight(Preparation.V, GAP_MM, Math.min(4, Math.max(2, t / 4)), q.includedDeg());
      case U -> new Groove(Preparation.U, t, GAP_MM, 2, U_DEG, U_RADIUS_MM);
      case J -> new Groove(Preparation.J, t, GAP_MM, 2, J_DEG, J_RADIUS_MM);
      case DOUBLE_U -> new Groove(Preparation.DOUBLE_U, t, GAP_MM, 3, U_DEG, U_RADIUS_MM);
      case DOUBLE_J -> new Groove(Preparation.DOUBLE_J, t, GAP_MM, 2, J_DEG, J_RADIUS_MM);
      case STEEP_V ->
          t > BACKED_ABOVE_MM
              ? straight(Preparation.V, 8, 0, 30)
              : straight(Preparation.V, Math.min(6, Math.max(2, t / 2)), 0, 45);
      case STEEP_BEVEL ->
          t > BACKED_ABOVE_MM
              ? straight(
                  Preparation.BEVEL, q.point().process() == WeldingProcess.MMA ? 8 : 10, 0, 30)
              : straight(Preparation.BEVEL, Math.min(6, Math.max(2, t / 2)), 0, 45);
    };
  }

  /** Both depths are given to the bench in half millimetres; the root face takes what is left. */
  private Groove evenSides(double faceMm) {
    double depthMm = -halves(-(t - faceMm) / 2);
    double leftMm = Math.max(0, t - 2 * depthMm);
    return straight(Preparation.DOUBLE_BEVEL, GAP_MM, leftMm, q.bevelDeg());
  }

  /** Down to the next half millimetre. */
  private static double halves(double mm) {
    return Math.floor(2 * mm + 1e-9) / 2;
  }

  private Groove square() {
    return q.square()
        .orElseGet(() -> Groove.square(t, q.bothSides() ? Math.min(3, t / 2) : Math.min(3, t / 3)));
  }

  private Groove straight(Preparation form, double gapMm, double faceMm, double angleDeg) {
    return Groove.straight(form, t, gapMm, faceMm, angleDeg);
  }

  /** Tight edges, and no deeper than the throat asks for. */
  private Groove partial(Kind kind) {
    double throat = Math.min(q.throatMm().getAsDouble(), t);
    Manner manner = q.manner();
    double bevelDepth =
        throat + (PartialPenetrationThroat.bevel45(10, manner).value() < 10 ? 3 : 0);
    return switch (kind) {
      case SQUARE -> Groove.square(throat, 1);
      case V, Y, STEEP_V, FLARE_V, FILLET, PLUG, SLOT ->
          tight(Preparation.V, throat, PARTIAL_V_DEG, 0);
      case BEVEL, STEEP_BEVEL, FLARE_BEVEL ->
          tight(Preparation.BEVEL, bevelDepth, PARTIAL_BEVEL_DEG, 0);
      case DOUBLE_V -> tight(Preparation.DOUBLE_V, throat, PARTIAL_V_DEG, 0);
      case DOUBLE_BEVEL -> tight(Preparation.DOUBLE_BEVEL, bevelDepth, PARTIAL_BEVEL_DEG, 0);
      case U -> rounded(Preparation.U, throat).orElseGet(() -> partial(Kind.V));
      case DOUBLE_U ->
          rounded(Preparation.DOUBLE_U, throat).orElseGet(() -> partial(Kind.DOUBLE_V));
      case J -> rounded(Preparation.J, throat).orElseGet(() -> partial(Kind.BEVEL));
      case DOUBLE_J ->
          rounded(Preparation.DOUBLE_J, throat).orElseGet(() -> partial(Kind.DOUBLE_BEVEL));
    };
  }

  private Groove tight(Preparation form, double depthMm, double angleDeg, double radiusMm) {
    double depths = form.isDouble() ? 2 * depthMm : depthMm;
    return new Groove(form, t, 0, Math.max(0, t - depths), angleDeg, radiusMm);
  }

  private Optional<Groove> rounded(Preparation form, double depthMm) {
    boolean j = form.preparedEdges() == 1;
    double deg = j ? J_DEG : U_DEG;
    double radius = j ? J_RADIUS_MM : U_RADIUS_MM;
    return depthMm > radius * (1 - Math.sin(Math.toRadians(deg)))
        ? Optional.of(tight(form, depthMm, deg, radius))
        : Optional.empty();
  }
}
