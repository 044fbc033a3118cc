package org.counterpull.jointplan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.counterpull.contact.WeldLine;
import org.counterpull.fillet.EnThroatBounds;
import org.counterpull.groove.WeldMetalMass;
import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Printed;

/** What a load check means, in sentences. */
record LoadWords(
    WeldSize size,
    LoadCheck.Way worst,
    Optional<Computed> leastLeg,
    Optional<Computed> leastThroat,
    double leastByThicknessMm,
    boolean full) {
  /** Legs above this share of what is needed are pointed out. */
  private static final double OVERSIZE = 1.3;

  /** Direction and rule that give the highest utilisation. */
  String governs() {
    String rule =
        worst.utilisation() == worst.besideWeld().value()
            ? "the metal beside the weld"
            : worst.utilisation() == worst.simplified().value()
                ? "the throat by EN 1993-1-8, simplified"
                : "the throat by AWS D1.1";
    return worst.direction() + ": " + rule;
  }

  /** What was assumed, and what is more than needed. */
  List<String> remarks(LoadPoint point, Optional<Computed> standOff, List<WeldLine> lines) {
    List<String> remarks = new ArrayList<>();
    remarks.add(
        "the load is taken as the working load, steady, "
            + point.words()
            + (point.at().isPresent() ? ", in any direction square to it" : ", in any direction")
            + "; EN 1993-1-8 is checked with 1.5 times as much; shock, fatigue and"
            + " the bending of the parts themselves are not in it");
    standOff
        .filter(s -> worst.utilisation() <= 1)
        .ifPresent(s -> remarks.add(standOffSentence(s.value())));
    oversize(lines).ifPresent(remarks::add);
    thinThroat().ifPresent(remarks::add);
    return remarks;
  }

  private static String standOffSentence(double standOffMm) {
    return standOffMm < 1
        ? "one line of weld, or all of them along one line, carries no bending about itself: the"
            + " load must pass through it, or the other side is welded too"
        : "the welds hold this load up to "
            + Printed.number(Math.floor(standOffMm), 4)
            + " mm away from the joint; further out they need checking with the true lever";
  }

  /** EN 1993-1-8 4.5.2. */
  private Optional<String> thinThroat() {
    double throat = size.throat().value();
    return full || throat >= EnThroatBounds.LEAST_COUNTED_MM - 1e-9
        ? Optional.empty()
        : Optional.of(
            "a throat of "
                + Printed.quantity(throat, "mm")
                + " is under the 3 mm that EN 1993-1-8 asks of a weld that carries load");
  }

  private Optional<String> oversize(List<WeldLine> lines) {
    if (size.leg().isEmpty() || leastLeg.isEmpty()) {
      return Optional.empty();
    }
    double needed = Math.max(leastLeg.get().value(), leastByThicknessMm);
    double leg = size.leg().get().value();
    if (leg <= OVERSIZE * needed) {
      return Optional.empty();
    }
    double more = 100 * (Math.pow(leg / needed, 2) - 1);
    return Optional.of(
        "a leg of "
            + Printed.quantity(leg, "mm")
            + " is more than load and thickness ask for ("
            + Printed.quantity(needed, "mm")
            + "): it takes "
            + Math.round(more)
            + " % more metal ("
            + Printed.quantity(Math.round(moreKg(lines, leg, needed) * 1000), "g")
            + " over its runs), as much more arc time, and pulls about as much harder along its"
            + " welds");
  }

  /** Weld metal that an oversize takes, a tenth over on the leg in both. */
  private static double moreKg(List<WeldLine> lines, double legMm, double neededMm) {
    double lengthMm = lines.stream().mapToDouble(l -> l.path().lengthMm()).sum();
    double mm2 = 1.21 * (legMm * legMm - neededMm * neededMm) / 2;
    return WeldMetalMass.steelKgPerM(mm2) * lengthMm / 1000;
  }

  /** What is wrong; empty where the joint holds. */
  Optional<String> shortfall(double loadN, boolean counts, boolean bends) {
    if (!counts) {
      return Optional.of(
          "it carries load, and none of its welds is long enough to count (EN 1993-1-8 4.5.1: 30 mm"
              + " and six throats)");
    }
    if (bends) {
      return Optional.of(
          "its load bends a single line of weld about itself: the root opens, and no code counts"
              + " that");
    }
    return worst.utilisation() <= 1
        ? Optional.empty()
        : Optional.of(
            "the load of "
                + Printed.quantity(loadN / 1000, "kN")
                + " is "
                + Printed.number(worst.utilisation(), 3)
                + " times what it carries ("
                + governs()
                + ")");
  }

  /** What would carry it; empty where it holds. */
  String remedy(boolean counts, boolean bends) {
    if (!counts) {
      return "weld longer runs, or wrap the weld all round";
    }
    if (bends) {
      return "weld the other side as well, or all round";
    }
    if (worst.utilisation() <= 1) {
      return "";
    }
    if (full || worst.utilisation() == worst.besideWeld().value() && leastThroat.isEmpty()) {
      return "thicker parts, a longer joint or a second path for the load: more weld does not help";
    }
    return leastLeg
        .map(leg -> "a leg of " + Printed.quantity(leg.value(), "mm") + throatWords())
        .or(() -> leastThroat.map(t -> "a throat of " + Printed.quantity(t.value(), "mm")))
        .orElse("longer welds, thicker parts or a second path for the load");
  }

  private String throatWords() {
    return leastThroat.map(t -> " (throat " + Printed.quantity(t.value(), "mm") + ")").orElse("");
  }
}
