package org.counterpull.jointplan;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.preheat.AwsPreheatTable;
import org.counterpull.preheat.MaxInterpass;
import org.counterpull.preheat.MethodBPreheat;
import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.steel.CarbonEquivalent;
import org.counterpull.steel.Family;

/**
 * Least and highest temperature of the metal at a joint.
 *
 * @param least before the first pass, deg C
 * @param interpassMaxC before any pass
 * @param notes what was decided, in sentences
 */
record PreheatChoice(Computed least, double interpassMaxC, List<String> notes) {
  private static final Formula NONE =
      new Formula(
          "no-preheat",
          "temperature of the shop: no preheat is asked for",
          "C",
          "EN 1011-2:2001 C.3: no preheat where the result lies at or below the ambient temperature");

  private static final Formula COLD_STEEL =
      new Formula(
          "cold-steel",
          "cold steel is warmed and dried first",
          "C",
          "from memory: AWS D1.1, note to the preheat table");

  private static final Formula CHILL =
      new Formula(
          "weak-pass-preheat",
          "preheat at which a weak pass cools like the one that the thickness asks for",
          "C",
          "derived: equal thick-plate t8/5 by EN 1011-2:2001 Annex D");

  private static final double COLD_C = 5;
  private static final double WARMED_C = 20;

  PreheatChoice {
    notes = List.copyOf(notes);
  }

  /**
   * Preheat of a joint.
   *
   * @param steel governing steel
   * @param process welding process
   * @param thickerMm the thicker part
   * @param heatInputKJPerMm with the factor k
   * @param ambientC temperature of the parts
   */
  static PreheatChoice of(
      SteelAtJoint steel,
      WeldingProcess process,
      double thickerMm,
      double heatInputKJPerMm,
      double ambientC) {
    List<String> notes = new ArrayList<>();
    Computed ambient = NONE.result(ambientC);
    if (ambientC < COLD_C) {
      ambient = COLD_STEEL.result(WARMED_C);
      notes.add("the steel is colder than 5 C: warm and dry it to 20 C before the first tack");
    }
    double interpassMaxC = interpass(steel, thickerMm);
    if (steel.family().isEmpty()) {
      notes.add(
          "the steel is unknown: no preheat can be given; have it analysed, or weld and break a test"
              + " piece, and let nobody depend on it before");
      return new PreheatChoice(ambient, interpassMaxC, notes);
    }
    if (!steel.family().get().hardensByCarbon() || steel.composition().isEmpty()) {
      notes.add(steel.family().get().words() + ": no preheat against hydrogen cracking");
      return new PreheatChoice(ambient, interpassMaxC, notes);
    }
    Computed least = ofHardeningSteel(steel, process, thickerMm, heatInputKJPerMm, notes);
    return new PreheatChoice(
        least.value() > ambient.value() ? least : ambient, interpassMaxC, notes);
  }

  private static Computed ofHardeningSteel(
      SteelAtJoint steel,
      WeldingProcess process,
      double thickerMm,
      double heatInputKJPerMm,
      List<String> notes) {
    double cet = CarbonEquivalent.cet(steel.composition().orElseThrow()).value();
    Computed byComposition =
        MethodBPreheat.of(cet, thickerMm, Hydrogen.mlPer100g(process), heatInputKJPerMm);
    Computed byTable = AwsPreheatTable.of(AwsPreheatTable.Category.B, thickerMm);
    if (byComposition.inRange()) {
      return byComposition;
    }
    notes.add(
        "EN 1011-2 method B does not hold here ("
            + String.join("; ", byComposition.warnings())
            + "): the table of AWS D1.1 is used, category B");
    return byTable;
  }

  /** The same, raised to what a weak first pass needs so as not to be chilled. */
  PreheatChoice atLeast(OptionalDouble againstChillC) {
    if (againstChillC.isEmpty() || againstChillC.getAsDouble() <= least.value()) {
      return this;
    }
    List<String> more = new ArrayList<>(notes);
    more.add("the machine's first pass alone would be chilled: preheat makes up for its heat");
    return new PreheatChoice(CHILL.result(againstChillC.getAsDouble()), interpassMaxC, more);
  }

  private static double interpass(SteelAtJoint steel, double thickerMm) {
    return steel
        .family()
        .map(family -> maxInterpass(family, thickerMm))
        .orElse(MaxInterpass.CARBON_MANGANESE)
        .maxC();
  }

  private static MaxInterpass maxInterpass(Family family, double thickerMm) {
    return switch (family) {
      case CARBON -> MaxInterpass.CARBON_MANGANESE;
      case QUENCHED_AND_TEMPERED -> MaxInterpass.quenchedAndTempered(thickerMm);
      case STAINLESS -> MaxInterpass.AUSTENITIC_STAINLESS;
      case ALUMINIUM -> MaxInterpass.ALUMINIUM;
      case CAST_IRON -> MaxInterpass.CAST_IRON_COLD;
    };
  }
}
