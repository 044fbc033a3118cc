package org.counterpull.machine;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.counterpull.feeding.TransferMode;
import org.counterpull.quantity.Printed;

/**
 * How bevel, passes and preheat bring a small machine to a thickness that it does not fuse in one
 * pass, each with the limit at which it ends, and what none of them mends.
 *
 * <p><b>Source:</b> the figures are those of the gates; which way helps is common practice, no
 * source.
 */
public final class Stretch {
  /** Twice the penetration must exceed a root face by this where nobody gouges, mm. */
  private static final double UNGOUGED_MARGIN_MM = 1;

  private static final double SHORT_CIRCUIT_UP_TO_MM = 5;

  private Stretch() {}

  /** The ways, in sentences; empty for what goes in one pass or not at all. */
  public static List<String> of(MachineVerdict verdict) {
    boolean stretched =
        switch (verdict.verdict()) {
          case WITH_PREPARATION, TEST_FIRST, TACK_ONLY -> true;
          case ONE_PASS, NO -> false;
        };
    if (!stretched) {
      return List.of();
    }
    List<String> ways = new ArrayList<>();
    ways.add(bevel(verdict.point()));
    ways.add(passes(verdict));
    preheat(verdict.point(), verdict.task()).ifPresent(ways::add);
    mendsNothing(verdict).ifPresent(ways::add);
    return List.copyOf(ways);
  }

  private static String bevel(WorkingPoint point) {
    double reach = FusionGate.penetrationMm(point, 0);
    double gouged = 2 * reach;
    double plain = Math.max(0, gouged - UNGOUGED_MARGIN_MM);
    return "bevel: the arc reaches "
        + mm(reach)
        + " into a tight root, so a root face of at most "
        + mm(reach)
        + " is fused from one side, "
        + mm(gouged)
        + " from both sides ("
        + mm(plain)
        + " without gouging); below that the thickness only has to be filled";
  }

  private static String passes(MachineVerdict verdict) {
    double waitMin = verdict.waitSPerM() / 60;
    return "passes: one lays at most "
        + Printed.number(verdict.point().largestBeadMm2(), 2)
        + " mm2 (leg "
        + mm(verdict.point().largestLegMm())
        + "), so this takes "
        + verdict.preparation().passes()
        + "; a metre is "
        + Printed.number(verdict.arcTimeSPerM() / 60, 2)
        + " min of arc and "
        + Printed.number(waitMin, 2)
        + " min of rests";
  }

  private static Optional<String> preheat(WorkingPoint point, WeldTask task) {
    double ratio = ChillGate.neededKJPerMm(task) / point.largestArcEnergyKJPerMm();
    if (ratio <= 1) {
      return Optional.empty();
    }
    OptionalDouble preheatC = WeakPassPreheat.celsius(ratio, task.ambientC());
    String start =
        "preheat: the first pass brings "
            + Printed.number(point.largestArcEnergyKJPerMm(), 2)
            + " kJ/mm where "
            + Printed.number(ChillGate.neededKJPerMm(task), 2)
            + " are asked for; ";
    return Optional.of(
        preheatC.isPresent()
            ? start
                + "at "
                + Math.round(preheatC.getAsDouble())
                + " C it cools as slowly (the limit of this way is 250 C)"
            : start + "no preheat up to 250 C makes up for that: a bigger machine");
  }

  private static Optional<String> mendsNothing(MachineVerdict verdict) {
    boolean dips =
        verdict.point().transfer() == TransferMode.SHORT_CIRCUIT
            && verdict.task().thickerMm() > SHORT_CIRCUIT_UP_TO_MM;
    return dips
        ? Optional.of(
            "none of these mends short-circuit transfer on walls above 5 mm: it may lie on them"
                + " without fusing; stick or cored wire on the same machine does not have that fault")
        : Optional.empty();
  }

  private static String mm(double lengthMm) {
    return Printed.quantity(Math.floor(10 * lengthMm + 1e-9) / 10, "mm");
  }
}
