package org.counterpull.jointplan;

import org.counterpull.contact.WeldLine;
import org.counterpull.position.WeldingPosition;

/**
 * How a run lies when it is welded.
 *
 * @param turnedOver with the weldment turned over
 * @param position ISO 6947
 */
record Placing(boolean turnedOver, WeldingPosition position) {

  /** Overhead runs are welded with the weldment turned over where it can be. */
  static Placing of(WeldLine line, boolean canBeTurned) {
    boolean overhead =
        line.position() == WeldingPosition.PD || line.position() == WeldingPosition.PE;
    return overhead && canBeTurned
        ? new Placing(true, line.turnedPosition())
        : new Placing(false, line.position());
  }
}
