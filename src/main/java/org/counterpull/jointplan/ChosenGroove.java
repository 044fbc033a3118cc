package org.counterpull.jointplan;

import java.util.List;
import org.counterpull.groove.Groove;
import org.counterpull.groove.GrooveSide;
import org.counterpull.groove.Preparation;
import org.counterpull.jointplan.EdgePreparation.Kind;

/**
 * A groove that was chosen.
 *
 * @param kind its form
 * @param groove its section
 * @param bothSides both faces are welded
 * @param backed a strip lies behind the root
 * @param gouged the root of the second side is taken down to sound metal
 * @param reason why this one
 * @param source where its values stand
 * @param notes what else must be known, in sentences
 */
record ChosenGroove(
    Kind kind,
    Groove groove,
    boolean bothSides,
    boolean backed,
    boolean gouged,
    String reason,
    String source,
    List<String> notes) {

  ChosenGroove {
    notes = List.copyOf(notes);
  }

  /** Nobody asked for both sides, and one pass melts through. */
  ChosenGroove fromOneSide() {
    return new ChosenGroove(
        kind,
        groove,
        false,
        backed,
        false,
        reason + "; one pass from one side melts through, the other side is left",
        source,
        notes);
  }

  boolean isDouble() {
    return groove.preparation().isDouble();
  }

  private boolean isSquare() {
    return groove.preparation() == Preparation.SQUARE;
  }

  /** Nothing behind the root holds the first bead. */
  boolean openRoot() {
    return !isSquare() && !backed && groove.gapMm() > 0;
  }

  /** The thickness that square edges are melted through; 0 for cut edges. */
  double squareMm() {
    return isSquare() ? groove.thicknessMm() : 0;
  }

  /** A second side that has no groove of its own gets a sealing run. */
  boolean sealed() {
    return bothSides && !isDouble() && !isSquare();
  }

  /** A line of that role gets a run. */
  boolean welds(LineRole role) {
    return switch (role) {
      case FIRST, END -> true;
      case SECOND -> bothSides;
    };
  }

  /** The room that the first side's beads fill. */
  GrooveSide firstSide() {
    return isSquare() && bothSides ? halfOfSquare() : groove.firstSide();
  }

  /** The room that the second side's beads fill, where it has one. */
  GrooveSide secondSide() {
    return isSquare() ? halfOfSquare() : groove.secondSide();
  }

  private GrooveSide halfOfSquare() {
    return new GrooveSide(groove.gapMm(), groove.thicknessMm() / 2, 0, 0, 0, 0);
  }
}
