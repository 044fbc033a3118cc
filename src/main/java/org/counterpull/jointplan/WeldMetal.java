package org.counterpull.jointplan;

import java.util.List;
import org.counterpull.contact.WeldLine;
import org.counterpull.fillet.FilletArea;
import org.counterpull.groove.Groove;
import org.counterpull.groove.GrooveArea;
import org.counterpull.groove.WeldSections;
import org.counterpull.machine.WorkingPoint;
import org.counterpull.position.WeldingPosition;

/**
 * The beads of one run: what has to be filled on its side of the joint, laid out within what the
 * machine lays.
 */
final class WeldMetal {
  /** Fillets are laid a tenth over on the leg. */
  private static final double OVER_NOMINAL = 1.21;

  private static final double CAP_MM = 1;

  private WeldMetal() {}

  /** Beads of a fillet run. */
  static List<Bead> fillet(
      double legMm, WeldLine line, WorkingPoint point, WeldingPosition position) {
    double faces = Math.max(60, Math.min(120, line.dihedralDeg()));
    double metal = OVER_NOMINAL * FilletArea.of(legMm, faces, 0).value() + line.gapMm() * legMm;
    BeadLimits limits = BeadLimits.of(point, position);
    return BeadLayout.fillet(metal, limits.forFillet(legMm, metal));
  }

  /** Beads of a run in a flare groove. */
  static List<Bead> flare(
      double throatMm, WeldLine line, WorkingPoint point, WeldingPosition position) {
    double oneSide =
        FlareFill.mm2(line.flareRadiusMm().orElseThrow(), line.gapMm(), throatMm, gas(point));
    double metal = line.shape() == WeldLine.Shape.FLARE_V ? 2 * oneSide : oneSide;
    return BeadLayout.fillet(Math.max(metal, 2), BeadLimits.of(point, position));
  }

  private static boolean gas(WorkingPoint point) {
    return switch (point.process()) {
      case MAG, MIG, FCAW, TIG -> true;
      case MMA, FCAW_S -> false;
    };
  }

  /**
   * Beads of a run in a groove.
   *
   * @param groove the whole groove
   * @param second true for the side that is welded second: its own groove of a double preparation,
   *     or the sealing run of a single one
   */
  static List<Bead> groove(
      Groove groove, boolean second, WorkingPoint point, WeldingPosition position) {
    BeadLimits limits = BeadLimits.of(point, position);
    boolean twoSided = groove.preparation().isDouble();
    if (second && !twoSided) {
      double sealing = Math.min(limits.areaMm2(), WeldSections.capMm2(6, 2) + 6);
      return List.of(new Bead(1, 1, PassPlan.Kind.SEALING, sealing));
    }
    int sides = twoSided ? 2 : 1;
    double faceMm = groove.faceWidthMm();
    double depthMm = twoSided ? groove.thicknessMm() / 2 : groove.thicknessMm();
    double rootFaceMm = Math.min(depthMm, twoSided ? groove.rootFaceMm() / 2 : groove.rootFaceMm());
    double cap = WeldSections.capMm2(Math.max(faceMm, 4), CAP_MM);
    return BeadLayout.groove(space(groove, sides, depthMm, rootFaceMm), cap, limits);
  }

  /** Straight walls that enclose the groove's true area on one side. */
  private static GrooveSpace space(Groove groove, int sides, double depthMm, double rootFaceMm) {
    double area = GrooveArea.mm2(groove) / sides;
    double above = depthMm - rootFaceMm;
    double opening =
        above > 1e-9 ? 2 * Math.max(0, area - groove.gapMm() * depthMm) / (above * above) : 0;
    return new GrooveSpace(groove.gapMm(), rootFaceMm, opening, depthMm);
  }
}
