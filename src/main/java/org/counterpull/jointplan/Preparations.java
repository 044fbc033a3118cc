package org.counterpull.jointplan;

import java.util.Optional;
import org.counterpull.groove.Groove;
import org.counterpull.jointplan.EdgePreparation.Kind;
import org.counterpull.machine.MachineVerdict;
import org.counterpull.machine.Verdict;
import org.counterpull.quantity.Printed;
import org.counterpull.weldment.Joint;

/** Chooses what is done to the edges of a joint, and says it in words for the bench. */
final class Preparations {
  private static final String ISO = "from memory: ISO 9692-1:2013";
  private static final String PRACTICE = "common practice, no source";

  /** A groove from both sides is gouged to sound metal unless its root was seen fused. */
  private static final String GOUGE =
      "; grind the second side's root to sound metal before its first bead";

  private Preparations() {}

  /** The groove to weld in; empty for a plain fillet or flare. */
  static Optional<Groove> groove(Joint joint, JointNeeds needs, MachineVerdict verdict) {
    if (needs.flare()) {
      return Optional.empty();
    }
    if (needs.groove()) {
      return WantedGroove.of(joint.weld(), needs.thinnerMm())
          .or(() -> verdict.preparation().groove())
          .or(() -> WantedGroove.of(Joint.WeldKind.DOUBLE_BEVEL, needs.thinnerMm()));
    }
    boolean helps =
        verdict.verdict() == Verdict.WITH_PREPARATION || verdict.verdict() == Verdict.TEST_FIRST;
    return helps ? verdict.preparation().groove() : Optional.empty();
  }

  /** What is done to the edges. */
  static EdgePreparation of(Joint joint, JointNeeds needs, Optional<Groove> groove, String reason) {
    if (needs.flare()) {
      boolean v = joint.weld() == Joint.WeldKind.FLARE_V;
      return plain(
          v ? Kind.FLARE_V : Kind.FLARE_BEVEL,
          joint.gapMm(),
          "none to cut: the round makes the groove; clean both walls bright, hold the gap of "
              + Printed.quantity(joint.gapMm(), "mm")
              + " with a shim",
          reason,
          "from memory: AWS D1.1, flare grooves");
    }
    if (groove.isEmpty()) {
      return plain(
          Kind.FILLET,
          joint.gapMm(),
          "square-cut edge, gap at most 2 mm, clean bright 25 mm each side",
          reason,
          PRACTICE);
    }
    return cut(joint, groove.get(), reason);
  }

  private static EdgePreparation plain(
      Kind kind, double gapMm, String how, String reason, String source) {
    return new EdgePreparation(kind, 0, 0, 0, 0, gapMm, "", how, reason, source);
  }

  private static EdgePreparation cut(Joint joint, Groove groove, String reason) {
    Kind kind = kind(groove);
    boolean twoSided = groove.preparation().isDouble();
    boolean oneEdge = kind == Kind.BEVEL || kind == Kind.DOUBLE_BEVEL || kind == Kind.J;
    return new EdgePreparation(
        kind,
        groove.depthMm(),
        twoSided ? groove.depthMm() : 0,
        kind == Kind.SQUARE ? 0 : groove.angleDegrees(),
        kind == Kind.SQUARE ? 0 : groove.rootFaceMm(),
        groove.gapMm(),
        oneEdge ? joint.first() : "",
        how(joint, groove, kind, oneEdge),
        reason,
        ISO);
  }

  private static String how(Joint joint, Groove groove, Kind kind, boolean oneEdge) {
    String gap = ", root gap " + Printed.quantity(groove.gapMm(), "mm");
    if (kind == Kind.SQUARE) {
      return "square edges" + gap;
    }
    double edgeDeg =
        groove.preparation().angleIsIncluded() ? groove.angleDegrees() / 2 : groove.angleDegrees();
    boolean twoSided = groove.preparation().isDouble();
    return (oneEdge ? "bevel " + joint.first() : "bevel both edges")
        + " "
        + Printed.quantity(groove.depthMm(), "mm")
        + " deep at "
        + Printed.quantity(edgeDeg, "deg")
        + (twoSided ? " from both faces" : "")
        + ", leave a root face of "
        + Printed.quantity(groove.rootFaceMm(), "mm")
        + gap
        + (twoSided ? GOUGE : "");
  }

  private static Kind kind(Groove groove) {
    return switch (groove.preparation()) {
      case SQUARE -> Kind.SQUARE;
      case V -> Kind.V;
      case DOUBLE_V -> Kind.DOUBLE_V;
      case BEVEL -> Kind.BEVEL;
      case DOUBLE_BEVEL -> Kind.DOUBLE_BEVEL;
      case U -> Kind.U;
      case J -> Kind.J;
    };
  }
}
