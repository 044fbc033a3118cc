package org.counterpull.machine;

import java.util.Locale;
import java.util.Optional;
import org.counterpull.groove.Groove;
import org.counterpull.groove.GrooveArea;
import org.counterpull.groove.Preparation;
import org.counterpull.groove.WeldSections;
import org.counterpull.machine.GateResult.Outcome;

/**
 * What is done to the edges so that a machine can weld them.
 *
 * @param words as printed
 * @param groove the groove; empty for fillets and square edges
 * @param passes number of passes, both sides together
 */
public record PreparationChoice(String words, Optional<Groove> groove, int passes) {
  private static final double DOUBLE_ABOVE_MM = 10;
  private static final double BUTT_ANGLE_DEGREES = 60;
  private static final double EDGE_ANGLE_DEGREES = 45;
  private static final double GAP_MM = 2;
  private static final double CAP_MM = 1;

  static PreparationChoice choose(WorkingPoint point, WeldTask task, GateResult fusion) {
    boolean opens = fusion.outcome() == Outcome.OPEN;
    return task.joint().isFillet() ? fillet(point, task, opens) : butt(point, task, opens);
  }

  private static PreparationChoice fillet(WorkingPoint point, WeldTask task, boolean fuses) {
    if (!fuses) {
      Preparation bevel =
          task.thinnerMm() > DOUBLE_ABOVE_MM ? Preparation.DOUBLE_BEVEL : Preparation.BEVEL;
      return grooved(point, task, bevel, EDGE_ANGLE_DEGREES);
    }
    double leg = task.legToLayMm();
    int passes =
        LayeringGate.singlePass(point, task)
            ? 1
            : Math.max(2, LayeringGate.passesFor(point, leg * leg / 2));
    return new PreparationChoice("none: fillet", Optional.empty(), passes);
  }

  private static PreparationChoice butt(WorkingPoint point, WeldTask task, boolean fuses) {
    double t = task.thinnerMm();
    if (fuses) {
      double gapMm = t < 3 ? 0 : t / 3;
      return new PreparationChoice(
          String.format(Locale.ROOT, "square edges, gap %.1f mm, one side", gapMm),
          Optional.of(Groove.square(t, gapMm)),
          1);
    }
    if (FusionGate.bothSides(point, t)) {
      return new PreparationChoice(
          "square edges, gap 1.2 to 1.5 mm, both sides", Optional.of(Groove.square(t, 1.5)), 2);
    }
    return grooved(
        point,
        task,
        t > DOUBLE_ABOVE_MM ? Preparation.DOUBLE_V : Preparation.V,
        BUTT_ANGLE_DEGREES);
  }

  private static PreparationChoice grooved(
      WorkingPoint point, WeldTask task, Preparation preparation, double angleDegrees) {
    double t = task.thinnerMm();
    double rootFaceMm =
        Math.floor(2 * Math.min(t / 2, FusionGate.rootFaceMm(point, preparation.isDouble()))) / 2;
    Groove groove = Groove.straight(preparation, t, GAP_MM, rootFaceMm, angleDegrees);
    int sides = preparation.isDouble() ? 2 : 1;
    double perSideMm2 =
        GrooveArea.mm2(groove) / sides + WeldSections.capMm2(groove.faceWidthMm(), CAP_MM);
    String words =
        String.format(
            Locale.ROOT,
            "%s, %.0f degrees, root face %.1f mm, gap %.0f mm, %s",
            preparation.word(),
            angleDegrees,
            rootFaceMm,
            GAP_MM,
            sides == 2 ? "from both sides" : "from one side");
    // A groove is never closed by its root alone: root and cap at least.
    int passesPerSide = Math.max(2, LayeringGate.passesFor(point, perSideMm2 / 1.1));
    return new PreparationChoice(words, Optional.of(groove), sides * passesPerSide);
  }
}
