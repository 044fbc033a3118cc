package org.counterpull.jointplan;

import org.counterpull.arc.WeldingProcess;
import org.counterpull.contact.WeldPosition;
import org.counterpull.feeding.TransferMode;

/**
 * What one bead of a process may be: workshop values, below the ceilings of AWS D1.1:2020 Table
 * 5.1.
 *
 * @param legMm largest leg of a fillet laid in one pass
 * @param areaMm2 largest bead cross-section
 * @param layerMm highest layer
 * @param rootMm height of a root bead
 * @param widthMm widest bead without weaving far
 * @param source where the values stand
 */
record BeadLimits(
    double legMm, double areaMm2, double layerMm, double rootMm, double widthMm, String source) {

  private static final String DERIVED =
      "derived from published starting settings; common practice, no source";

  /**
   * Limits by process and position.
   *
   * @param process welding process
   * @param transfer transfer mode of a solid wire; not read for the others
   * @param electrodeMm wire or electrode diameter
   * @param position ISO 6947
   */
  static BeadLimits of(
      WeldingProcess process, TransferMode transfer, double electrodeMm, WeldPosition position) {
    BeadLimits flat =
        switch (process) {
          case MAG, MIG ->
              transfer == TransferMode.SPRAY
                  ? new BeadLimits(8, 35, 5, 4, 12, DERIVED)
                  : electrodeMm < 0.95
                      ? new BeadLimits(5, 15, 3, 3, 8, DERIVED)
                      : new BeadLimits(6, 20, 4, 3.5, 9, DERIVED);
          case FCAW -> new BeadLimits(9, 40, 6, 4, 14, DERIVED);
          case FCAW_S -> new BeadLimits(5, 16, 3, 3, 9, DERIVED);
          case MMA ->
              electrodeMm < 2.8
                  ? new BeadLimits(4, 10, 2, 2.5, 7.5, DERIVED)
                  : electrodeMm < 3.6
                      ? new BeadLimits(6, 16, 3, 3, 9.6, DERIVED)
                      : new BeadLimits(8, 24, 4, 4, 12, DERIVED);
          case TIG -> new BeadLimits(4, 10, 2.5, 2.5, 8, DERIVED);
        };
    return switch (position) {
      case PA, PB, PC -> flat;
      case PF -> flat.scaled(1.3);
      case PD, PE ->
          new BeadLimits(
              Math.min(flat.legMm, 8),
              flat.areaMm2 * 0.85,
              flat.layerMm,
              flat.rootMm,
              flat.widthMm,
              flat.source);
      case PG ->
          new BeadLimits(
              Math.min(flat.legMm, 3),
              flat.areaMm2 * 0.7,
              flat.layerMm,
              flat.rootMm,
              flat.widthMm,
              flat.source);
    };
  }

  private BeadLimits scaled(double factor) {
    return new BeadLimits(legMm, areaMm2 * factor, layerMm, rootMm, widthMm, source);
  }
}
