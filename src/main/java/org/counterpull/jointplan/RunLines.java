package org.counterpull.jointplan;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.counterpull.contact.Contact;
import org.counterpull.contact.WeldLine;
import org.counterpull.contact.WeldLine.Shape;
import org.counterpull.quantity.Printed;
import org.counterpull.weldment.Joint;
import org.counterpull.weldment.Side;

/**
 * The lines of a joint that become runs.
 *
 * @param lines to weld, in the contact's order
 * @param missed what is wanted and can't be welded, each a sentence
 * @param left lines that nobody asked for and nothing reaches, each a sentence
 */
record RunLines(List<WeldLine> lines, List<String> missed, List<String> left) {

  /**
   * Shorter lines are not welded unless their side is asked for: common practice, no source; EN
   * 1993-1-8 4.5.1 counts no weld shorter than 30 mm.
   */
  private static final double SHORTEST_MM = 15;

  RunLines {
    lines = List.copyOf(lines);
    missed = List.copyOf(missed);
    left = List.copyOf(left);
  }

  /**
   * Every line on the wanted sides that fits the wanted weld and can be reached, at the latest
   * before other parts are fitted.
   */
  static RunLines of(Joint joint, Contact contact) {
    List<WeldLine> fitting = fitting(joint, contact.lines());
    List<WeldLine> lines = new ArrayList<>();
    List<String> missed = new ArrayList<>();
    List<String> left = new ArrayList<>();
    List<String> shortOnes = new ArrayList<>();
    for (WeldLine line : fitting) {
      boolean wanted = joint.sides().isEmpty() || joint.sides().contains(line.side());
      if (!wanted) {
        continue;
      }
      boolean tooShort = line.shape() != Shape.PLUG && line.path().lengthMm() < SHORTEST_MM;
      if (joint.sides().isEmpty() && tooShort) {
        shortOnes.add(line.run());
      } else if (line.reach().open() || line.reach().openBefore(joint.first(), joint.second())) {
        lines.add(line);
      } else if (joint.sides().isEmpty()) {
        left.add(line.run() + " is left unwelded: " + blocked(line));
      } else {
        missed.add(line.run() + " is asked for and can't be reached: " + blocked(line));
      }
    }
    if (!shortOnes.isEmpty()) {
      left.add(
          "under "
              + Printed.quantity(SHORTEST_MM, "mm")
              + " and left out, the neighbouring runs are wrapped round: "
              + String.join(", ", shortOnes));
    }
    joint
        .holes()
        .filter(holes -> fitting.size() < holes.count())
        .ifPresent(
            holes ->
                missed.add(
                    holes.count()
                        + " holes are asked for at "
                        + joint.name()
                        + " and "
                        + fitting.size()
                        + " fit where the parts lie on each other, "
                        + Printed.quantity(holes.pitchMm(), "mm")
                        + " from middle to middle"));
    for (Side side : joint.sides()) {
      boolean flush =
          joint.weld() == Joint.WeldKind.FILLET
              && contact.lines().stream()
                  .anyMatch(l -> l.side() == side && l.shape() != Shape.FILLET);
      if (flush && fitting.stream().noneMatch(line -> line.side() == side)) {
        missed.add(
            "no fillet lies on the "
                + side.word()
                + " of "
                + joint.name()
                + ": the parts are flush there; weld that side with weld: bevel or square, or set "
                + joint.first()
                + " back by a leg");
      } else if (fitting.stream().noneMatch(line -> line.side() == side)) {
        missed.add(
            joint.name()
                + " has no line to weld on its "
                + side.word()
                + "; it has "
                + String.join(
                    ", ", fitting.stream().map(l -> l.side().word()).distinct().toList()));
      }
    }
    return new RunLines(lines, missed, left);
  }

  private static List<WeldLine> fitting(Joint joint, List<WeldLine> lines) {
    Set<Shape> shapes = shapes(joint);
    List<WeldLine> fitting = lines.stream().filter(l -> shapes.contains(l.shape())).toList();
    return fitting.isEmpty() && joint.holes().isEmpty() ? lines : fitting;
  }

  private static Set<Shape> shapes(Joint joint) {
    return switch (joint.weld()) {
      case AUTO -> EnumSet.allOf(Shape.class);
      case FILLET -> EnumSet.of(Shape.FILLET);
      case SQUARE, V, DOUBLE_V, Y, U, DOUBLE_U, STEEP_V ->
          EnumSet.of(Shape.BUTT, Shape.OUTSIDE_CORNER);
      case BEVEL, DOUBLE_BEVEL, J, DOUBLE_J, STEEP_BEVEL ->
          EnumSet.of(Shape.BUTT, Shape.OUTSIDE_CORNER, Shape.FILLET);
      case PLUG, SLOT -> EnumSet.of(Shape.PLUG);
      case FLARE_BEVEL -> EnumSet.of(Shape.FLARE_BEVEL);
      case FLARE_V -> EnumSet.of(Shape.FLARE_V);
    };
  }

  private static String blocked(WeldLine line) {
    return "torch and electrode get to "
        + Math.round(100 * line.reach().share())
        + " % of it"
        + (line.reach().blockedBy().isEmpty()
            ? ""
            : ", "
                + String.join(", ", line.reach().blockedBy())
                + (line.reach().inAnyOrder() ? " in the way in any order of work" : " in the way"));
  }
}
