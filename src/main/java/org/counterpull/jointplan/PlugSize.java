package org.counterpull.jointplan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.counterpull.contact.WeldLine;
import org.counterpull.groove.GrooveSide;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Printed;
import org.counterpull.weldment.Joint.Holes;

/**
 * Sizes of plug and slot welds.
 *
 * <p><b>Source:</b> from memory: AWS D1.1, plug and slot welds: a hole at least 8 mm wider than the
 * part is thick and at most the greater of that plus 3 mm and 2.25 thicknesses; a slot at most ten
 * thicknesses long; filled to the top up to 16 mm, above to half the thickness and at least 16 mm.
 */
final class PlugSize {
  private static final Formula THROAT =
      new Formula(
          "plug-throat",
          "throat along its line that gives a plug its whole shear area",
          "mm",
          "derived: shear area over the length of the line; area by AWS D1.1, from memory");

  private static final double WIDER_MM = 8;
  private static final double WIDEST_MORE_MM = 3;
  private static final double WIDEST_THICKNESSES = 2.25;
  private static final double LONGEST_THICKNESSES = 10;
  private static final double FULL_UP_TO_MM = 16;

  private PlugSize() {}

  /** The size: a line of this throat has the shear area of the hole. */
  static WeldSize of(Holes holes, WeldLine line) {
    double throat = holes.areaMm2() / line.path().lengthMm();
    return new WeldSize(
        Optional.empty(),
        THROAT.result(throat),
        true,
        holes.count()
            + (holes.lengthMm() > holes.widthMm()
                ? " slots of "
                    + Printed.quantity(holes.widthMm(), "mm")
                    + " x "
                    + Printed.quantity(holes.lengthMm(), "mm")
                : " plugs of " + Printed.quantity(holes.widthMm(), "mm"))
            + ", each with "
            + Printed.quantity(Math.round(holes.areaMm2()), "mm2")
            + " in shear");
  }

  /** Depth of the fill, mm. */
  static double depthMm(double thicknessMm) {
    return thicknessMm <= FULL_UP_TO_MM ? thicknessMm : Math.max(FULL_UP_TO_MM, thicknessMm / 2);
  }

  /** What a run along the line fills: as wide as the metal is long by its line. */
  static GrooveSide room(Holes holes, WeldLine line) {
    double wideMm = holes.areaMm2() / line.path().lengthMm();
    return new GrooveSide(wideMm, depthMm(line.firstWallMm()), 0, 0, 0, 0);
  }

  /** Sentences about holes that are too narrow, too wide or too long. */
  static List<String> remarks(Holes holes, double thicknessMm) {
    List<String> remarks = new ArrayList<>();
    double least = thicknessMm + WIDER_MM;
    double most = Math.max(least + WIDEST_MORE_MM, WIDEST_THICKNESSES * thicknessMm);
    if (holes.widthMm() < least - 1e-9 || holes.widthMm() > most + 1e-9) {
      remarks.add(
          "a hole of "
              + Printed.quantity(holes.widthMm(), "mm")
              + " is outside "
              + Printed.quantity(least, "mm")
              + " to "
              + Printed.quantity(most, "mm")
              + ", usual for a part of "
              + Printed.quantity(thicknessMm, "mm")
              + " (from memory: AWS D1.1): too narrow and its root is not reached, too wide and it"
              + " pulls");
    }
    if (holes.lengthMm() > LONGEST_THICKNESSES * thicknessMm) {
      remarks.add(
          "a slot is at most ten thicknesses long, "
              + Printed.quantity(LONGEST_THICKNESSES * thicknessMm, "mm")
              + " (from memory: AWS D1.1)");
    }
    return remarks;
  }

  /** What is done to the part, in one sentence. */
  static String how(String part, Holes holes, double thicknessMm) {
    boolean slot = holes.lengthMm() > holes.widthMm();
    String hole =
        slot
            ? Printed.quantity(holes.widthMm(), "mm")
                + " x "
                + Printed.quantity(holes.lengthMm(), "mm")
                + " with round ends"
            : Printed.quantity(holes.widthMm(), "mm");
    String fill =
        depthMm(thicknessMm) < thicknessMm
            ? "fill " + Printed.quantity(depthMm(thicknessMm), "mm") + " deep"
            : "fill flush";
    return (slot ? "mill or drill out " : "drill ")
        + holes.count()
        + (slot ? " slot" : " hole")
        + (holes.count() > 1 ? "s of " : " of ")
        + hole
        + " through "
        + part
        + " on the middle line of the overlap"
        + (holes.count() > 1
            ? ", " + Printed.quantity(holes.pitchMm(), "mm") + " from middle to middle"
            : "")
        + "; clamp tight, weld round the root first, then inwards; "
        + fill;
  }
}
