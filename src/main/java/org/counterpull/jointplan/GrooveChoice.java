package org.counterpull.jointplan;

import java.util.ArrayList;
import java.util.List;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.contact.JointForm;
import org.counterpull.feeding.TransferMode;
import org.counterpull.fillet.PartialPenetrationThroat;
import org.counterpull.groove.Groove;
import org.counterpull.groove.Preparation;
import org.counterpull.jointplan.EdgePreparation.Kind;
import org.counterpull.quantity.Printed;

/** Chooses a groove: form, dimensions, backing and gouging, with the reason. */
final class GrooveChoice {
  private static final String ISO =
      "from memory: ISO 9692-1:2013, usual values, not checked against the standard";
  private static final String AWS_BACKED =
      "from memory: AWS D1.1, grooves on backing, not checked against the code";
  private static final String AWS_PARTIAL =
      "from memory: AWS D1.1, partial penetration grooves, not checked against the code";

  private static final double OPEN_V_USUAL_UP_TO_MM = 10;
  private static final double AWS_ABOVE_MM = 16;
  private static final double EN_MOST_LEFT_MM = 3;

  private GrooveChoice() {}

  static ChosenGroove of(GrooveQuestion q) {
    GrooveForm form = GrooveForm.of(q);
    Groove groove = GrooveDimensions.of(form.kind(), q);
    boolean uneven = groove.preparation().isDouble() && q.form() == JointForm.BUTT && !q.partial();
    Groove balanced =
        uneven
            ? FirstSideShare.balanced(groove, WeldMetal.CAP_MM, WeldMetal.gougedMm2(groove))
            : groove;
    Kind kind = kind(form.kind(), groove);
    boolean backed = kind == Kind.STEEP_V || kind == Kind.STEEP_BEVEL;
    boolean both = q.bothSides() && !backed;
    return new ChosenGroove(
        kind,
        balanced,
        both,
        backed && !q.partial(),
        both && !q.partial() && kind != Kind.SQUARE,
        form.reason() + (uneven ? share(balanced) : ""),
        source(kind, q),
        notes(kind, balanced, q));
  }

  /** A root radius that did not fit has been left out. */
  private static Kind kind(Kind wanted, Groove groove) {
    boolean lost =
        !groove.preparation().hasRadius()
            && switch (wanted) {
              case U, DOUBLE_U, J, DOUBLE_J -> true;
              case FILLET, SQUARE, V, DOUBLE_V, BEVEL, DOUBLE_BEVEL -> false;
              case FLARE_BEVEL, FLARE_V, Y, STEEP_V, STEEP_BEVEL, PLUG, SLOT -> false;
            };
    return lost ? Kind.valueOf(groove.preparation().name()) : wanted;
  }

  private static String share(Groove groove) {
    double percent =
        100 * FirstSideShare.firstShare(groove, WeldMetal.CAP_MM, WeldMetal.gougedMm2(groove));
    return "; the side that is welded first is the deeper one and takes about "
        + Math.round(percent)
        + " % of the metal, which leaves the least angle (Watanabe and Satoh 1956)";
  }

  private static String source(Kind kind, GrooveQuestion q) {
    if (q.partial()) {
      return AWS_PARTIAL;
    }
    boolean backed = kind == Kind.STEEP_V || kind == Kind.STEEP_BEVEL;
    return backed && q.thicknessMm() <= AWS_ABOVE_MM ? AWS_BACKED : ISO;
  }

  private static List<String> notes(Kind kind, Groove groove, GrooveQuestion q) {
    List<String> notes = new ArrayList<>();
    double t = q.thicknessMm();
    if (groove.preparation().hasRadius() && !q.mills()) {
      notes.add(
          "the root radius of a "
              + kind.words()
              + " takes a mill, and the shop names none: have the edges milled, or write weld: "
              + (groove.preparation().preparedEdges() == 1 ? "double bevel" : "double v"));
    }
    if (kind == Kind.V && !q.bothSides() && !q.partial() && t > OPEN_V_USUAL_UP_TO_MM) {
      notes.add(
          "an open root from one side is usual to "
              + Printed.quantity(OPEN_V_USUAL_UP_TO_MM, "mm")
              + " (from memory: ISO 9692-1): prove it on a test piece first");
    }
    if (q.partial()) {
      partial(notes, groove, q);
    }
    return notes;
  }

  private static void partial(List<String> notes, Groove groove, GrooveQuestion q) {
    double throat = q.throatMm().getAsDouble();
    double least = PartialPenetrationThroat.leastSizeMm(q.thicknessMm());
    if (throat < least) {
      notes.add(
          "a partial penetration throat of "
              + Printed.quantity(throat, "mm")
              + " is below the least for this thickness, "
              + Printed.quantity(least, "mm")
              + " (from memory: AWS D1.1)");
    }
    double leftMm = q.thicknessMm() - 2 * throat;
    boolean teeFromBoth = q.form() == JointForm.TEE && q.bothSides();
    if (teeFromBoth && leftMm <= Math.min(q.thicknessMm() / 5, EN_MOST_LEFT_MM)) {
      notes.add(
          "only "
              + Printed.quantity(Math.max(0, leftMm), "mm")
              + " stay unwelded in the middle, no more than a fifth of the part and 3 mm: with a"
              + " fillet over each side that brings the throats up to the part's thickness it counts"
              + " as full penetration (from memory: EN 1993-1-8, 4.7.3)");
    }
    boolean wire = q.point().process() == WeldingProcess.MAG;
    if (wire && q.point().transfer() == TransferMode.SHORT_CIRCUIT) {
      notes.add(
          "short-circuit transfer is not trusted at the root of a partial penetration groove: cut"
              + " a test piece and look");
    }
    if (groove.preparation() == Preparation.SQUARE) {
      notes.add("the throat is what the arc melts into square edges: prove it on a cut test piece");
    }
  }
}
