package org.counterpull.jointplan;

import org.counterpull.feeding.ShieldingGas;
import org.counterpull.feeding.TransferMode;
import org.counterpull.machine.Machine;
import org.counterpull.machine.WorkingPoint;
import org.counterpull.power.LoadVoltage;

/**
 * How a machine is set for the root of an open groove: far below its best, or the root falls
 * through. Common practice, no source: 130 A for each millimetre of solid wire, 160 A with cored
 * and 110 A with self-shielded wire, 32 A for each millimetre of an electrode, 110 A with TIG.
 */
final class RootPoint {
  private static final double WIRE_A_PER_MM = 130;
  private static final double CORED_A = 160;
  private static final double SELF_SHIELDED_A = 110;
  private static final double STICK_A_PER_MM = 32;
  private static final double TIG_A = 110;

  private RootPoint() {}

  static WorkingPoint of(WorkingPoint point, ShieldingGas gas) {
    double usual =
        switch (point.process()) {
          case MAG, MIG -> WIRE_A_PER_MM * point.diameterMm();
          case FCAW -> CORED_A;
          case FCAW_S -> SELF_SHIELDED_A;
          case MMA -> STICK_A_PER_MM * point.diameterMm();
          case TIG -> TIG_A;
        };
    return limited(point, usual, gas);
  }

  /** The same machine at no more than a current. */
  static WorkingPoint limited(WorkingPoint point, double mostA, ShieldingGas gas) {
    if (point.currentA() <= mostA) {
      return point;
    }
    TransferMode transfer =
        switch (point.process()) {
          case MAG, MIG -> TransferMode.of(point.diameterMm(), gas, mostA);
          case FCAW, FCAW_S, MMA, TIG -> point.transfer();
        };
    return new WorkingPoint(
        point.process(),
        point.diameterMm(),
        mostA,
        LoadVoltage.volts(Machine.loadLine(point.process()), mostA),
        point.slowestMmPerS(),
        point.dutyPercent(),
        transfer);
  }
}
