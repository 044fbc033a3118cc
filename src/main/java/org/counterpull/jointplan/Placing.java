package org.counterpull.jointplan;

import org.counterpull.contact.Lay;
import org.counterpull.contact.WeldLine;
import org.counterpull.position.WeldingPosition;

/**
 * How the weldment lies when a run is welded, and the position that this gives.
 *
 * @param lay how the weldment lies
 * @param position ISO 6947
 */
record Placing(Lay lay, WeldingPosition position) {

  /** How much trouble is taken to bring runs into an easy position. */
  enum Effort {
    /** Overhead runs are welded with the weldment turned over; vertical ones as they are. */
    TURN_OVER,
    /** Vertical runs are brought flat as well, by standing the weldment on an edge. */
    STAND_ON_EDGE
  }

  /** The placing of a line. */
  static Placing of(WeldLine line, boolean canBeTurned, Effort effort) {
    for (Lay lay : Lay.values()) {
      boolean allowed =
          switch (lay) {
            case AS_DRAWN -> true;
            case TURNED_OVER -> canBeTurned;
            case ON_ITS_FRONT, ON_ITS_BACK, ON_ITS_LEFT, ON_ITS_RIGHT ->
                canBeTurned && effort == Effort.STAND_ON_EDGE;
          };
      if (allowed && easy(line.position(lay), effort)) {
        return new Placing(lay, line.position(lay));
      }
    }
    return new Placing(Lay.AS_DRAWN, line.position());
  }

  private static boolean easy(WeldingPosition position, Effort effort) {
    return switch (position) {
      case PA, PB, PC -> true;
      case PF, PG -> effort == Effort.TURN_OVER;
      case PD, PE -> false;
    };
  }
}
