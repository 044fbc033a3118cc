package org.counterpull.machine;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.counterpull.cooling.CoolingTime85;
import org.counterpull.cooling.WeldShape;
import org.counterpull.fillet.LegEnergy;
import org.counterpull.machine.GateResult.Outcome;

/**
 * Whether the first pass cools slowly enough: {@code E >= 0.0305 min(z_min, t_thin)^2} with the
 * least leg of AWS D1.1 for the thicker part, or a cooling time at which this steel stays below 350
 * to 380 HV. A weak pass is helped by preheat up to 250 C.
 */
final class ChillGate {

  private ChillGate() {}

  /** Arc energy that keeps the first pass from being chilled, kJ/mm. */
  static double neededKJPerMm(WeldTask task) {
    return LegEnergy.kJPerMm(task.leastLegMm());
  }

  /** Preheat that the first pass takes; ambient where none; empty where none helps. */
  static OptionalDouble preheatC(WorkingPoint point, WeldTask task) {
    if (coolsSlowlyEnough(point, task)) {
      return OptionalDouble.of(task.ambientC());
    }
    double ratio = neededKJPerMm(task) / point.largestArcEnergyKJPerMm();
    return WeakPassPreheat.celsius(ratio, task.ambientC());
  }

  static GateResult judge(WorkingPoint point, WeldTask task) {
    double energy = point.largestArcEnergyKJPerMm();
    double needed = neededKJPerMm(task);
    List<Figure> figures = new ArrayList<>();
    figures.add(new Figure("arc energy", energy, "kJ/mm"));
    figures.add(new Figure("arc energy needed", needed, "kJ/mm"));
    figures.add(new Figure("t8/5", t85S(point, task, task.ambientC()), "s"));
    task.shortestT85S().ifPresent(t -> figures.add(new Figure("shortest t8/5", t, "s")));
    if (energy >= needed) {
      return result(Outcome.OPEN, figures, "the first pass brings enough heat for the class", "");
    }
    if (coolsSlowlyEnough(point, task)) {
      return result(Outcome.OPEN, figures, "this steel stays soft enough at that cooling time", "");
    }
    OptionalDouble preheatC = preheatC(point, task);
    if (preheatC.isEmpty()) {
      return result(
          Outcome.SHUT,
          figures,
          "the first pass is chilled, and no preheat up to 250 C makes up for it",
          "a bigger machine");
    }
    figures.add(new Figure("preheat", preheatC.getAsDouble(), "C"));
    return result(Outcome.WITH_HELP, figures, "the first pass is chilled by cold parts", "preheat");
  }

  private static GateResult result(
      Outcome outcome, List<Figure> figures, String why, String wouldChange) {
    return new GateResult("chill", outcome, figures, why, wouldChange);
  }

  private static boolean coolsSlowlyEnough(WorkingPoint point, WeldTask task) {
    if (point.largestArcEnergyKJPerMm() >= neededKJPerMm(task)) {
      return true;
    }
    OptionalDouble shortest = task.shortestT85S();
    return shortest.isPresent() && t85S(point, task, task.ambientC()) >= shortest.getAsDouble();
  }

  /** Cooling time by EN 1011-2 annex D with the shape factors that are safe for hardness, s. */
  private static double t85S(WorkingPoint point, WeldTask task, double plateTempC) {
    double heatInput = point.process().k() * point.largestArcEnergyKJPerMm();
    WeldShape shape =
        switch (task.joint()) {
          case TEE, LAP -> WeldShape.TEE_FILLET;
          case CORNER -> WeldShape.CORNER_FILLET;
          case BUTT -> WeldShape.BUTT_FILL;
        };
    return CoolingTime85.of(
            heatInput, task.thickerMm(), plateTempC, shape.f2ForHardness(), shape.f3())
        .value();
  }
}
