package org.counterpull.jointplan;

import java.util.List;
import org.counterpull.groove.Groove;
import org.counterpull.jointplan.EdgePreparation.Kind;
import org.counterpull.quantity.Printed;
import org.counterpull.weldment.EdgeTool;
import org.counterpull.weldment.Joint;

/** Says what is done to the edges of a joint, in words for the bench. */
final class Preparations {
  private static final String PRACTICE = "common practice, no source";

  /** A groove from both sides is gouged to sound metal unless its root was seen fused. */
  private static final String GOUGE =
      "; grind the second side's root to sound metal before its first bead";

  private static final String BACKING =
      "a strip of the same metal, 30 mm wide and 6 mm thick, tight against both parts";

  private Preparations() {}

  /** Edges of a joint without a cut groove. */
  static EdgePreparation plain(Joint joint, JointNeeds needs, String reason) {
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
    if (needs.holes().isPresent()) {
      return plain(
          joint.weld() == Joint.WeldKind.SLOT ? Kind.SLOT : Kind.PLUG,
          0,
          PlugSize.how(joint.first(), needs.holes().get(), needs.thinnerMm()),
          reason,
          "from memory: AWS D1.1, plug and slot welds, not checked against the code");
    }
    return plain(
        Kind.FILLET,
        joint.gapMm(),
        "square-cut edge, gap at most 2 mm, clean bright 25 mm each side",
        reason,
        PRACTICE);
  }

  private static EdgePreparation plain(
      Kind kind, double gapMm, String how, String reason, String source) {
    return new EdgePreparation(kind, 0, 0, 0, 0, gapMm, "", how, reason, source);
  }

  /**
   * Edges of a groove.
   *
   * @param bevelled the part whose edge is cut where only one is
   * @param why what comes before the groove's own reason; may be empty
   * @param tools what edges are cut with
   * @param flame true where the metal can be flame-cut
   */
  static EdgePreparation cut(
      ChosenGroove chosen, String bevelled, String why, List<EdgeTool> tools, boolean flame) {
    Groove groove = chosen.groove();
    boolean square = chosen.kind() == Kind.SQUARE;
    boolean oneEdge = groove.preparation().preparedEdges() == 1;
    return new EdgePreparation(
        chosen.kind(),
        groove.depthMm(),
        groove.secondDepthMm(),
        square ? 0 : groove.angleDegrees(),
        square ? 0 : groove.rootFaceMm(),
        groove.gapMm(),
        groove.preparation().hasRadius() ? groove.radiusMm() : 0,
        oneEdge ? bevelled : "",
        chosen.backed() ? BACKING : "",
        chosen.gouged(),
        how(chosen, oneEdge ? bevelled : "both edges", new EdgeCutting(tools, flame)),
        why.isEmpty() ? chosen.reason() : why + "; " + chosen.reason(),
        chosen.source());
  }

  /** Ends of solid round bars. */
  static EdgePreparation cones(ChosenGroove chosen) {
    Groove groove = chosen.groove();
    return new EdgePreparation(
        chosen.kind(),
        groove.depthMm(),
        0,
        groove.angleDegrees(),
        0,
        0,
        "",
        "turn or grind both ends to cones of 45 deg, "
            + Printed.quantity(groove.depthMm(), "mm")
            + " long, points touching and in line",
        chosen.reason(),
        chosen.source());
  }

  private static String how(ChosenGroove chosen, String edges, EdgeCutting cutting) {
    Groove groove = chosen.groove();
    String gap = ", root gap " + Printed.quantity(groove.gapMm(), "mm");
    String gouge = chosen.gouged() ? GOUGE : "";
    if (chosen.kind() == Kind.SQUARE) {
      return "square edges" + gap;
    }
    double edgeDeg =
        groove.preparation().angleIsIncluded() ? groove.angleDegrees() / 2 : groove.angleDegrees();
    return cutting.of(groove, edges)
        + depths(groove)
        + " at "
        + Printed.quantity(edgeDeg, "deg")
        + (groove.preparation().hasRadius()
            ? " with a root radius of " + Printed.quantity(groove.radiusMm(), "mm")
            : "")
        + (groove.rootFaceMm() > 0
            ? ", leave a root face of " + Printed.quantity(groove.rootFaceMm(), "mm")
            : ", down to a sharp edge")
        + (groove.gapMm() > 0 ? gap : ", edges tight")
        + (chosen.backed() ? "; behind the gap " + BACKING : "")
        + gouge;
  }

  private static String depths(Groove groove) {
    String first = " " + Printed.quantity(groove.depthMm(), "mm") + " deep";
    if (!groove.preparation().isDouble()) {
      return first;
    }
    return Math.abs(groove.depthMm() - groove.secondDepthMm()) < 0.05
        ? first + " from both faces"
        : first
            + " from the side that is welded first and "
            + Printed.quantity(groove.secondDepthMm(), "mm")
            + " from the other,";
  }
}
