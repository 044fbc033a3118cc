package org.counterpull.jointplan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.counterpull.preheat.AwsPreheatTable;
import org.counterpull.preheat.HydrogenControlPreheat;
import org.counterpull.preheat.HydrogenControlPreheat.Hydrogen;
import org.counterpull.preheat.HydrogenControlPreheat.Restraint;
import org.counterpull.preheat.HydrogenScale;
import org.counterpull.preheat.MethodATable;
import org.counterpull.preheat.MethodBPreheat;
import org.counterpull.preheat.PracticePreheat;
import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Printed;
import org.counterpull.steel.CarbonEquivalent;
import org.counterpull.steel.Composition;
import org.counterpull.steel.Grade;

/**
 * Asks the methods for preheat side by side. Each counts only inside its own box; where two that
 * count differ by more than 50 K, the higher stands.
 */
final class PreheatMethods {
  static final String METHOD_B = "EN 1011-2 method B";
  private static final double APART_K = 50;

  private PreheatMethods() {}

  /**
   * All opinions.
   *
   * @param steel governing steel, composition known
   * @param hydrogenMl diffusible hydrogen of the filler, ml/100 g
   * @param sink what carries heat away
   * @param heatInputKJPerMm least heat input of the passes, with the factor k
   */
  static List<PreheatOpinion> opinions(
      SteelAtJoint steel, double hydrogenMl, HeatSink sink, double heatInputKJPerMm) {
    List<PreheatOpinion> opinions = new ArrayList<>();
    double thickerMm = sink.preheatMm();
    Composition composition = steel.composition().orElseThrow();
    opinions.add(methodB(composition, hydrogenMl, thickerMm, heatInputKJPerMm));
    opinions.add(awsTable(steel, hydrogenMl, thickerMm));
    opinions.add(hydrogenControl(composition, hydrogenMl, thickerMm));
    opinions.add(methodA(composition, hydrogenMl, sink, heatInputKJPerMm));
    PracticePreheat.of(steel.designation(), thickerMm)
        .ifPresent(
            c ->
                opinions.add(
                    new PreheatOpinion("handbook practice", Optional.of(c), steel.designation())));
    return opinions;
  }

  private static PreheatOpinion methodB(
      Composition composition, double hydrogenMl, double thickerMm, double heatInputKJPerMm) {
    Computed cet = CarbonEquivalent.cet(composition);
    // A smaller heat input asks for no less than the edge of the box does.
    boolean small = heatInputKJPerMm < MethodBPreheat.LEAST_HEAT_INPUT_KJ_PER_MM;
    double reckonedKJPerMm = Math.max(heatInputKJPerMm, MethodBPreheat.LEAST_HEAT_INPUT_KJ_PER_MM);
    Computed answer = MethodBPreheat.of(cet.value(), thickerMm, hydrogenMl, reckonedKJPerMm);
    List<String> outside = new ArrayList<>(answer.warnings());
    cet.warnings().stream().filter(w -> !outside.contains(w)).forEach(outside::add);
    return new PreheatOpinion(
        METHOD_B,
        Optional.of(answer.formula().result(answer.value(), outside)),
        "CET "
            + Printed.number(cet.value(), 3)
            + " %, "
            + Printed.quantity(thickerMm, "mm")
            + ", hydrogen "
            + Printed.number(hydrogenMl, 2)
            + " ml/100 g, heat input "
            + Printed.number(heatInputKJPerMm, 3)
            + " kJ/mm"
            + (small
                ? ", reckoned with "
                    + Printed.number(reckonedKJPerMm, 3)
                    + " at the edge of the method: less heat asks for no less"
                : ""));
  }

  private static PreheatOpinion awsTable(SteelAtJoint steel, double hydrogenMl, double thickerMm) {
    AwsPreheatTable.Category category =
        hydrogenMl <= 10 ? AwsPreheatTable.Category.B : AwsPreheatTable.Category.A;
    Computed answer = AwsPreheatTable.of(category, thickerMm);
    List<String> outside = new ArrayList<>(answer.warnings());
    boolean listed =
        steel.grades().size() == 2 && steel.grades().stream().allMatch(Grade::awsListed);
    if (!listed) {
      outside.add(steel.designation() + " is not in its list of steels");
    }
    return new PreheatOpinion(
        "table of AWS D1.1",
        Optional.of(answer.formula().result(answer.value(), outside)),
        "category " + category + ", " + Printed.quantity(thickerMm, "mm"));
  }

  private static PreheatOpinion hydrogenControl(
      Composition composition, double hydrogenMl, double thickerMm) {
    Computed pcm = CarbonEquivalent.pcm(composition);
    Hydrogen level = hydrogenMl <= 5 ? Hydrogen.H1 : hydrogenMl <= 10 ? Hydrogen.H2 : Hydrogen.H3;
    Computed answer = HydrogenControlPreheat.of(pcm.value(), level, Restraint.MEDIUM, thickerMm);
    List<String> outside = new ArrayList<>(answer.warnings());
    outside.addAll(pcm.warnings());
    char group = HydrogenControlPreheat.group(HydrogenControlPreheat.index(pcm.value(), level));
    return new PreheatOpinion(
        "AWS D1.1 hydrogen control",
        Optional.of(answer.formula().result(answer.value(), outside)),
        "Pcm "
            + Printed.number(pcm.value(), 3)
            + " %, "
            + level
            + ", group "
            + group
            + ", medium restraint");
  }

  /** A yes or no by combined thickness: the real sections of bars, bushes, lugs count here. */
  private static PreheatOpinion methodA(
      Composition composition, double hydrogenMl, HeatSink sink, double heatInputKJPerMm) {
    double ce = CarbonEquivalent.ceIIW(composition).value();
    String answer =
        switch (MethodATable.answer(
            ce, heatInputKJPerMm, sink.combinedMm(), HydrogenScale.of(hydrogenMl))) {
          case NO_PREHEAT_NEEDED -> "no preheat needed";
          case PREHEAT_NEEDED -> "preheat needed";
          case OUTSIDE -> "outside: CE to 0.49 % and heat input from 1 kJ/mm only";
        };
    return new PreheatOpinion(
        "EN 1011-2 method A, table C.1",
        Optional.empty(),
        answer
            + "; CE "
            + Printed.number(ce, 3)
            + " %, combined thickness "
            + Printed.number(sink.combinedMm(), 3)
            + " mm ("
            + sink.words()
            + "), heat input "
            + Printed.number(heatInputKJPerMm, 3)
            + " kJ/mm");
  }

  /** The temperature that stands. */
  static Computed decided(List<PreheatOpinion> opinions, List<String> notes) {
    Comparator<PreheatOpinion> byTemperature =
        Comparator.comparingDouble(o -> o.answer().orElseThrow().value());
    List<PreheatOpinion> counting = opinions.stream().filter(PreheatOpinion::counts).toList();
    if (counting.isEmpty()) {
      PreheatOpinion highest =
          opinions.stream().filter(o -> o.answer().isPresent()).max(byTemperature).orElseThrow();
      notes.add(
          "no method for preheat holds here: the highest answer is taken ("
              + highest.method()
              + "), and a test piece is welded, cut and etched first");
      return highest.answer().orElseThrow();
    }
    PreheatOpinion highest = counting.stream().max(byTemperature).orElseThrow();
    Optional<PreheatOpinion> methodB =
        counting.stream().filter(o -> o.method().equals(METHOD_B)).findFirst();
    double highestC = highest.answer().orElseThrow().value();
    if (methodB.isEmpty()) {
      return highest.answer().orElseThrow();
    }
    Computed byMethodB = methodB.get().answer().orElseThrow();
    if (highestC - byMethodB.value() > APART_K) {
      notes.add(
          highest.method() + " asks for more than 50 K above method B: the higher one is taken");
      return highest.answer().orElseThrow();
    }
    return byMethodB;
  }
}
