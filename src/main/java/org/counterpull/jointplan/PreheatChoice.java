package org.counterpull.jointplan;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.counterpull.preheat.MaxInterpass;
import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.steel.Family;

/**
 * Least and highest temperature of the metal at a joint.
 *
 * @param least before the first pass, deg C
 * @param interpassMaxC before any pass
 * @param opinions what each method says
 * @param notes what was decided, in sentences
 */
record PreheatChoice(
    Computed least, double interpassMaxC, List<PreheatOpinion> opinions, List<String> notes) {
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

  /** Torch and crayon don't meet a temperature more closely than this, K. */
  private static final double STEP_K = 10;

  PreheatChoice {
    opinions = List.copyOf(opinions);
    notes = List.copyOf(notes);
  }

  /**
   * Preheat of a joint.
   *
   * @param steel governing steel
   * @param hydrogenMl diffusible hydrogen of the filler, ml/100 g
   * @param sink what carries heat away
   * @param heatInputKJPerMm least of the passes, with the factor k
   * @param ambientC temperature of the parts
   */
  static PreheatChoice of(
      SteelAtJoint steel,
      double hydrogenMl,
      HeatSink sink,
      double heatInputKJPerMm,
      double ambientC) {
    List<String> notes = new ArrayList<>();
    Computed ambient = NONE.result(ambientC);
    if (ambientC < COLD_C) {
      ambient = COLD_STEEL.result(WARMED_C);
      notes.add("the steel is colder than 5 C: warm and dry it to 20 C before the first tack");
    }
    double interpassMaxC = interpass(steel, sink.preheatMm());
    if (steel.family().isEmpty()) {
      notes.add(
          "the steel is unknown: no preheat can be given; have it analysed, or weld and break a test"
              + " piece, and let nobody depend on it before");
      return new PreheatChoice(ambient, interpassMaxC, List.of(), notes);
    }
    if (!steel.family().get().hardensByCarbon() || steel.composition().isEmpty()) {
      notes.add(
          steel.family().get().hardensByCarbon()
              ? "no composition of "
                  + steel.designation()
                  + " is kept here: a preheat needs its"
                  + " certificate"
              : steel.family().get().words() + ": no preheat against hydrogen cracking");
      return new PreheatChoice(ambient, interpassMaxC, List.of(), notes);
    }
    List<PreheatOpinion> opinions =
        PreheatMethods.opinions(steel, hydrogenMl, sink, heatInputKJPerMm);
    Computed decided = PreheatMethods.decided(opinions, notes);
    return new PreheatChoice(ordered(decided, ambient), interpassMaxC, opinions, notes);
  }

  /** Whole steps that a torch can meet; what lies within a step of the shop's warmth is none. */
  private static Computed ordered(Computed wanted, Computed ambient) {
    if (wanted.value() <= ambient.value() + STEP_K) {
      return ambient;
    }
    double orderedC = STEP_K * Math.ceil(wanted.value() / STEP_K - 1e-9);
    return wanted.formula().result(orderedC, wanted.warnings());
  }

  /** The same, raised to what a weak first pass needs so as not to be chilled. */
  PreheatChoice atLeast(OptionalDouble againstChillC) {
    if (againstChillC.isEmpty() || againstChillC.getAsDouble() <= least.value()) {
      return this;
    }
    Computed raised = ordered(CHILL.result(againstChillC.getAsDouble()), least);
    if (raised.equals(least)) {
      return this;
    }
    List<String> more = new ArrayList<>(notes);
    more.add("the machine's first pass alone would be chilled: preheat makes up for its heat");
    return new PreheatChoice(raised, interpassMaxC, opinions, more);
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
