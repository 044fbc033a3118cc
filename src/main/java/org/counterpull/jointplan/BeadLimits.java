package org.counterpull.jointplan;

import org.counterpull.feeding.TransferMode;
import org.counterpull.machine.ProcessLimits;
import org.counterpull.machine.WorkingPoint;
import org.counterpull.position.WeldingPosition;

/**
 * What one bead may be on a machine in a position: workshop values, below the ceilings of AWS
 * D1.1:2020 Table 5.1. Layer heights and widths are derived from published starting settings;
 * common practice, no source.
 *
 * @param legMm largest leg of a fillet laid in one pass
 * @param areaMm2 largest bead cross-section
 * @param layerMm highest layer
 * @param rootMm height of a root bead
 * @param widthMm widest bead without weaving far
 */
record BeadLimits(double legMm, double areaMm2, double layerMm, double rootMm, double widthMm) {

  /**
   * Limits of a machine as it is set, in a position.
   *
   * @param point how the machine is set
   * @param position ISO 6947
   */
  static BeadLimits of(WorkingPoint point, WeldingPosition position) {
    double leg =
        Math.min(point.largestLegMm(), ProcessLimits.largestSinglePassLegMm(point, position));
    double area = point.largestBeadMm2();
    return switch (point.process()) {
      case MAG, MIG ->
          point.transfer() == TransferMode.SPRAY
              ? new BeadLimits(leg, area, 5, 4, 12)
              : point.diameterMm() < 0.95
                  ? new BeadLimits(leg, area, 3, 3, 8)
                  : new BeadLimits(leg, area, 4, 3.5, 9);
      case FCAW -> new BeadLimits(leg, area, 6, 4, 14);
      case FCAW_S -> new BeadLimits(leg, area, 3, 3, 9);
      case MMA -> ofElectrode(leg, area, point.diameterMm());
      case TIG -> new BeadLimits(leg, area, 2.5, 2.5, 8);
    };
  }

  /** A weave of three core diameters at most. */
  private static BeadLimits ofElectrode(double legMm, double areaMm2, double coreMm) {
    double layerMm = coreMm < 2.8 ? 2 : coreMm < 3.6 ? 3 : 4;
    return new BeadLimits(legMm, areaMm2, layerMm, layerMm, 3 * coreMm);
  }

  /** The same with room for one bead that exceeds the area a little, where the leg allows it. */
  BeadLimits forFillet(double wantedLegMm, double metalMm2) {
    return wantedLegMm <= legMm
        ? new BeadLimits(legMm, Math.max(areaMm2, metalMm2), layerMm, rootMm, widthMm)
        : this;
  }
}
