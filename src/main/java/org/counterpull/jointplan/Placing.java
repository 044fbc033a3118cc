package org.counterpull.jointplan;

import org.counterpull.contact.WeldLine;
import org.counterpull.contact.WeldPosition;
import org.counterpull.position.WeldingPosition;

/**
 * How a run lies when it is welded.
 *
 * @param turnedOver with the weldment turned over
 * @param position ISO 6947
 */
record Placing(boolean turnedOver, WeldPosition position) {

  /** Overhead runs are welded with the weldment turned over where it can be. */
  static Placing of(WeldLine line, boolean canBeTurned) {
    boolean overhead = line.position() == WeldPosition.PD || line.position() == WeldPosition.PE;
    return overhead && canBeTurned
        ? new Placing(true, line.turnedPosition())
        : new Placing(false, line.position());
  }

  /** The same position in the words that procedures share. */
  WeldingPosition welding() {
    return WeldingPosition.valueOf(position.name());
  }
}
