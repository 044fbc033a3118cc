package org.counterpull.jointplan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.counterpull.contact.JointForm;
import org.counterpull.filler.Joined;
import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Printed;
import org.counterpull.steel.CarbonEquivalent;
import org.counterpull.steel.Composition;
import org.counterpull.steel.Grade;
import org.counterpull.steel.Grades;
import org.counterpull.steel.HazHardness;
import org.counterpull.steel.MartensiteStart;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.PartMass;
import org.counterpull.weldment.PartMaterial;

/** Puts together what the steels of a joint ask for. */
record SteelAdvisor(SteelAtJoint steel, JointNeeds needs, double ambientC) {
  private static final double WARMED_EACH_SIDE_MM = 75;
  private static final double KG_PER_MM3 = 7.85e-6;
  private static final double J_PER_KG_K = 500;

  /** Heat that a hand torch on propane brings into a plate. Common practice, no source. */
  private static final double TORCH_W = 1500;

  private static final double HARD_HV = 350;
  private static final double HARDENS_CE = 0.50;

  SteelAdvice advice(
      List<RunPlan> runs,
      PreheatChoice preheat,
      Optional<Computed> tackPreheat,
      JointForm form,
      List<SteelAdvice.Forbidden> more) {
    List<SteelAdvice.Forbidden> forbidden = new ArrayList<>(more);
    if (steel.joined() == Joined.NOTHING_TOGETHER) {
      forbidden.add(
          new SteelAdvice.Forbidden(
              "aluminium and steel are not welded together: brittle compounds form",
              "bolt them, with an insulating layer between"));
    }
    Optional<SteelAdvice.Hardness> hardness =
        fastestS(runs).isPresent() && steel.composition().isPresent()
            ? Optional.of(hardness(fastestS(runs).getAsDouble()))
            : Optional.empty();
    return new SteelAdvice(
        steel.parts().stream().map(SteelAdvisor::part).toList(),
        hardness,
        preheat.opinions(),
        tackPreheat,
        heating(runs, preheat.least().value(), form),
        forbidden);
  }

  private SteelAdvice.Hardness hardness(double t85S) {
    Composition composition = steel.composition().orElseThrow();
    return new SteelAdvice.Hardness(t85S, HazHardness.estimates(composition, t85S));
  }

  private static OptionalDouble fastestS(List<RunPlan> runs) {
    return runs.stream()
        .flatMap(run -> run.passes().stream())
        .mapToDouble(pass -> pass.coolingTime().value())
        .min();
  }

  private static SteelAdvice.PartSteel part(Part part) {
    PartMaterial material = part.steel();
    String limits =
        Grades.find(material.designation())
            .map(Grade::limits)
            .filter(words -> !words.isEmpty())
            .map(words -> "; limits " + words)
            .orElse("");
    String known =
        switch (material.certainty()) {
          case CERTIFIED -> "values of its certificate";
          case TYPICAL ->
              material.composition().isPresent()
                  ? "typical values, no certificate" + limits
                  : "grade without carbon equivalents" + limits;
          case UNKNOWN -> "nobody knows it";
        };
    return new SteelAdvice.PartSteel(
        part.name(),
        material.designation(),
        known,
        material.composition().map(SteelAdvisor::equivalents).orElse(List.of()));
  }

  private static List<Computed> equivalents(Composition composition) {
    return List.of(
        CarbonEquivalent.ceIIW(composition),
        CarbonEquivalent.cet(composition),
        CarbonEquivalent.pcm(composition),
        CarbonEquivalent.cen(composition));
  }

  /** What else the steel asks for, in sentences. */
  List<String> notes(List<RunPlan> runs, PreheatChoice preheat) {
    List<String> notes = new ArrayList<>();
    if (steel.composition().isEmpty()) {
      return notes;
    }
    if (preheat.least().value() <= ambientC + 1) {
      notes.add(
          "no preheat: the metal is dry and not colder than "
              + Math.round(Math.max(5, ambientC))
              + " C");
    }
    Composition composition = steel.composition().get();
    OptionalDouble fastest = fastestS(runs);
    OptionalDouble longer = steel.shortestT85S();
    if (fastest.isPresent() && longer.isPresent()) {
      double hv = HazHardness.of(composition, fastest.getAsDouble()).value();
      if (hv > HARD_HV) {
        notes.add(
            "harder than 350 HV10 beside the weld: low-hydrogen filler, and a look for cracks after"
                + " 24 to 48 hours; a t8/5 above "
                + Printed.quantity(longer.getAsDouble(), "s").replaceAll("(\\d+\\.\\d)\\d+", "$1")
                + " (more heat in one pass, or more preheat) would keep it below");
      }
    }
    if (CarbonEquivalent.ceIIW(composition).value() > HARDENS_CE) {
      notes.add(
          "this steel hardens: hold the preheat until the last pass is in, then cool slowly under a"
              + " dry blanket or sand; martensite starts at about "
              + Math.round(MartensiteStart.of(composition).value())
              + " C");
    }
    return notes;
  }

  private List<String> heating(List<RunPlan> runs, double preheatC, JointForm form) {
    if (preheatC <= ambientC + 1 || runs.isEmpty()) {
      return List.of();
    }
    double thick = needs.thickerMm();
    double zone = Math.max(WARMED_EACH_SIDE_MM, thick);
    double distance = thick <= 50 ? Math.min(4 * thick, 50) : WARMED_EACH_SIDE_MM;
    double soakMin = Math.max(1, Math.ceil(2 * thick / 25));
    double minutes = massKg(runs, zone, form) * J_PER_KG_K * (preheatC - ambientC) / TORCH_W / 60;
    return List.of(
        "warm both parts over "
            + Math.round(zone)
            + " mm each side of the seam with a broad soft flame kept moving, never a cutting flame",
        "a propane hand torch takes about "
            + Math.max(1, Math.round(minutes))
            + " min for it (1.5 kW into the metal; common practice, no source)",
        "take the flame away, let it soak for "
            + Math.round(soakMin)
            + " min, then measure "
            + Math.round(distance)
            + " mm from the edge of the seam, on the far side where you can get there: a crayon for "
            + Math.round(preheatC)
            + " C melts, or a contact thermometer shows it (from memory: EN ISO 13916)",
        "measure again before each pass, and after each stop");
  }

  /** What is warmed: each leg of the joint over the zone, at most both parts. */
  private double massKg(List<RunPlan> runs, double zoneMm, JointForm form) {
    double longest = runs.stream().mapToDouble(r -> r.line().path().lengthMm()).max().orElse(0);
    int through =
        switch (form) {
          case TEE, LAP -> 2;
          case BUTT, CORNER, EDGE -> 1;
        };
    double legs = needs.thinnerMm() + through * needs.thickerMm();
    double all = steel.parts().stream().mapToDouble(PartMass::kg).sum();
    return Math.min(all, legs * zoneMm * (longest + 2 * zoneMm) * KG_PER_MM3);
  }
}
