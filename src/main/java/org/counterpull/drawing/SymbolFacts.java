package org.counterpull.drawing;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.counterpull.contact.JointForm;
import org.counterpull.contact.LinePath;
import org.counterpull.jointplan.EdgePreparation;
import org.counterpull.jointplan.EdgePreparation.Kind;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.quantity.Printed;
import org.counterpull.weldment.Joint.Holes;
import org.counterpull.weldment.Side;

/**
 * What a weld symbol says about a joint, whichever standard draws it.
 *
 * @param kind elementary symbol
 * @param arrowSide depth of preparation on the arrow side, mm; 0 for fillets
 * @param otherSide the same on the other side
 * @param bothSides welded alike on both sides
 * @param backing run on the other side that seals a groove made from the arrow side
 * @param allAround the weld goes round the joint
 * @param preparedPart the part that a broken arrow points to; empty where none is prepared alone
 */
record SymbolFacts(
    Kind kind,
    double arrowSide,
    double otherSide,
    boolean bothSides,
    boolean backing,
    boolean allAround,
    Optional<String> preparedPart,
    JointPlan joint) {
  private static final int SIDES_OF_A_BAR = 4;

  static SymbolFacts of(JointPlan joint) {
    EdgePreparation edges = joint.preparation();
    Set<Side> sides = EnumSet.noneOf(Side.class);
    joint.runs().forEach(run -> sides.add(run.line().side()));
    boolean around = goesRound(joint.runs(), sides, edges.kind());
    boolean groove = edges.firstDepthMm() > 0 || edges.kind() == Kind.SQUARE;
    boolean two = sides.size() > 1 && !around;
    boolean both =
        two
            && switch (edges.kind()) {
              case FILLET,
                  SQUARE,
                  DOUBLE_V,
                  DOUBLE_BEVEL,
                  DOUBLE_U,
                  DOUBLE_J,
                  FLARE_BEVEL,
                  FLARE_V ->
                  true;
              case V, BEVEL, U, J, Y, STEEP_V, STEEP_BEVEL, PLUG, SLOT -> edges.secondDepthMm() > 0;
            };
    return new SymbolFacts(
        edges.kind(),
        edges.firstDepthMm(),
        edges.secondDepthMm(),
        both,
        groove && two && !both,
        around,
        edges.bevelledPart().isEmpty() ? Optional.empty() : Optional.of(edges.bevelledPart()),
        joint);
  }

  /** Closed round a round part, or on all four sides of a bar that stands on another part. */
  private static boolean goesRound(List<RunPlan> runs, Set<Side> sides, Kind kind) {
    boolean closed =
        !runs.isEmpty()
            && kind != Kind.PLUG
            && runs.stream()
                .allMatch(
                    r ->
                        r.line().path() instanceof LinePath.Arc arc
                            && arc.sweepRad() > 2 * Math.PI - 0.01);
    return closed || kind == Kind.FILLET && sides.size() == SIDES_OF_A_BAR;
  }

  /** Leg for fillets as ISO writes it, depth for partial grooves; empty for full penetration. */
  String isoSize(double depthMm) {
    return switch (kind) {
      case FILLET -> "z" + number(joint.size().leg().map(l -> l.value()).orElse(0.0));
      case FLARE_BEVEL, FLARE_V -> "s" + number(joint.size().throat().value());
      case PLUG -> "d" + holeWidth();
      case SLOT -> "c" + holeWidth();
      case SQUARE,
          V,
          Y,
          DOUBLE_V,
          BEVEL,
          DOUBLE_BEVEL,
          U,
          DOUBLE_U,
          J,
          DOUBLE_J,
          STEEP_V,
          STEEP_BEVEL ->
          isFull() ? "" : "s" + number(depthMm);
    };
  }

  /** Leg for fillets, depth of preparation with the throat in brackets for grooves. */
  String awsSize(double depthMm) {
    String throat = "(" + number(joint.size().throat().value()) + ")";
    return switch (kind) {
      case FILLET -> number(joint.size().leg().map(l -> l.value()).orElse(0.0));
      case FLARE_BEVEL, FLARE_V -> throat;
      case PLUG, SLOT -> holeWidth();
      case SQUARE -> isFull() ? "" : throat;
      case V, Y, DOUBLE_V, BEVEL, DOUBLE_BEVEL, U, DOUBLE_U, J, DOUBLE_J, STEEP_V, STEEP_BEVEL ->
          isFull() && bothSides ? number(depthMm) : isFull() ? "" : number(depthMm) + throat;
    };
  }

  private String holeWidth() {
    return joint.joint().holes().map(h -> number(h.widthMm())).orElse("");
  }

  /** Holes in a row as the two standards write them. */
  private String row(Holes holes, boolean iso) {
    String length = holes.lengthMm() > holes.widthMm() ? number(holes.lengthMm()) : "";
    String pitch = number(holes.pitchMm());
    if (iso) {
      String clear = number(holes.pitchMm() - holes.lengthMm());
      return holes.count()
          + " \u00d7 "
          + (length.isEmpty() ? "" : length + " ")
          + "("
          + clear
          + ")";
    }
    return (length.isEmpty() ? "" : length + "-") + pitch + " (" + holes.count() + ")";
  }

  private boolean isFull() {
    double thin =
        joint.runs().stream()
            .mapToDouble(r -> Math.min(r.line().firstWallMm(), r.line().secondWallMm()))
            .min()
            .orElse(0);
    return joint.size().throat().value() >= thin - 1e-9;
  }

  /** Stitches as the two standards write them; empty for a continuous weld. */
  String length(boolean iso) {
    if (joint.joint().holes().isPresent()) {
      return row(joint.joint().holes().get(), iso);
    }
    if (joint.joint().intermittent().isEmpty() || joint.runs().isEmpty()) {
      return "";
    }
    double each = joint.joint().intermittent().get().lengthMm();
    double clear = joint.joint().intermittent().get().clearMm();
    long count = Math.max(1, Math.round(joint.runs().get(0).weldedMm() / each));
    return iso
        ? count + " \u00d7 " + number(each) + " (" + number(clear) + ")"
        : number(each) + "-" + number(each + clear);
  }

  /** Included angle, with its sign; empty for none. */
  String angle() {
    double degrees = joint.preparation().angleDeg();
    return degrees > 0 && kind != Kind.FILLET ? number(degrees) + "\u00b0" : "";
  }

  /** Root gap; empty for fillets and flares. */
  String gap() {
    return switch (kind) {
      case FILLET, FLARE_BEVEL, FLARE_V, PLUG, SLOT -> "";
      case SQUARE,
          V,
          Y,
          DOUBLE_V,
          BEVEL,
          DOUBLE_BEVEL,
          U,
          DOUBLE_U,
          J,
          DOUBLE_J,
          STEEP_V,
          STEEP_BEVEL ->
          number(joint.preparation().rootGapMm());
    };
  }

  /** A backing strip lies behind the root. */
  boolean onBacking() {
    return !joint.preparation().backing().isEmpty();
  }

  boolean complete() {
    return kind != Kind.FILLET && isFull() && joint.contact().form() != JointForm.LAP;
  }

  static String number(double value) {
    return Printed.number(Math.round(10 * value) / 10.0, 4);
  }
}
