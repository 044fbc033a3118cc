package org.counterpull.machine;

import org.counterpull.arc.WeldingProcess;
import org.counterpull.feeding.TransferMode;
import org.counterpull.fillet.LegEnergy;
import org.counterpull.position.WeldingPosition;

/**
 * What a hand can do with a process: slowest and fastest travel, current in position, largest
 * single-pass leg. Common practice, no source; the largest legs keep below AWS D1.1's limits for
 * prequalified welds (12 and 10 mm flat and horizontal for wire, 10 and 8 for stick, 8 overhead).
 */
public final class ProcessLimits {
  private ProcessLimits() {}

  /** Slowest sensible travel, mm/s: wire 25, stick 10, TIG 6 cm/min; half of it vertical-up. */
  public static double slowestMmPerS(WeldingProcess process, WeldingPosition position) {
    double flat =
        switch (process) {
          case MAG, MIG, FCAW, FCAW_S -> 25 / 6.0;
          case MMA -> 10 / 6.0;
          case TIG -> 1.0;
        };
    return position == WeldingPosition.PF ? flat / 2 : flat;
  }

  /** Fastest travel that a hand guides, mm/s. */
  public static double fastestMmPerS(WeldingProcess process) {
    return switch (process) {
      case MAG, MIG, FCAW, FCAW_S -> 64 / 6.0;
      case MMA -> 4.0;
      case TIG -> 2.5;
    };
  }

  /** Share of the flat current that a position takes. */
  static double currentShare(WeldingProcess process, WeldingPosition position) {
    boolean wire =
        switch (process) {
          case MAG, MIG, FCAW, FCAW_S -> true;
          case MMA, TIG -> false;
        };
    return switch (position) {
      case PA, PB, PC, PG -> 1;
      case PD, PE -> 0.85;
      case PF -> wire ? 0.65 : 0.9;
    };
  }

  /** Arc energy per squared leg, kJ/mm3. */
  public static double energyPerLeg(WeldingProcess process) {
    return switch (process) {
      case MAG, MIG, FCAW, FCAW_S -> LegEnergy.WIRE_KJ_PER_MM3;
      case MMA -> LegEnergy.STICK_KJ_PER_MM3;
      case TIG -> LegEnergy.TIG_KJ_PER_MM3;
    };
  }

  /** Largest single-pass leg of good practice, mm. */
  public static double largestSinglePassLegMm(WorkingPoint point, WeldingPosition position) {
    double flat =
        switch (point.process()) {
          case MAG, MIG -> point.transfer() == TransferMode.SPRAY ? 8 : shortArc(point);
          case FCAW -> 9;
          case FCAW_S -> 5;
          case MMA -> stick(point.diameterMm());
          case TIG -> 4;
        };
    return position.isOverhead() ? Math.min(8, flat) : flat;
  }

  private static double shortArc(WorkingPoint point) {
    return point.diameterMm() < 0.95 ? 5 : 6;
  }

  private static double stick(double coreMm) {
    if (coreMm < 3) {
      return 4;
    }
    return coreMm < 3.6 ? 6 : 8;
  }
}
