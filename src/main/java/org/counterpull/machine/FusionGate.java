package org.counterpull.machine;

import java.util.List;
import org.counterpull.feeding.TransferMode;
import org.counterpull.machine.GateResult.Outcome;
import org.counterpull.penetration.JacksonShrubsall;
import org.counterpull.penetration.PenetrationFactor;

/**
 * Whether the arc reaches the root. Fillets by current, {@code I >= 0.85 min(39.4 t, 150)} for
 * wire; square butts by energy from one side up to 4.5 mm and by penetration from both sides up to
 * 8 mm; what doesn't fuse as it stands is bevelled down to a root face that does.
 *
 * <p><b>Source:</b> common practice, no source: published settings, to which the constants were
 * fitted.
 */
final class FusionGate {
  private static final double SHARE_OF_RULE = 0.85;
  private static final double FULL_FILLET_CURRENT_A = 150;
  private static final double ONE_SIDE_UP_TO_MM = 4.5;
  private static final double TWO_SIDES_UP_TO_MM = 8;
  private static final double LEAST_ENERGY_PER_MM = 0.09;
  private static final double TIG_AMPERES_PER_MM = 28;
  private static final double TIG_FULL_A = 170;
  private static final double LARGEST_ROOT_FACE_MM = 2;

  /** Below this share of a full fillet's current no root fuses (common practice, no source). */
  private static final double LEAST_SHARE_FOR_A_ROOT = 0.6;

  private FusionGate() {}

  static GateResult judge(WorkingPoint point, WeldTask task) {
    return task.joint().isFillet() ? fillet(point, task) : butt(point, task);
  }

  /**
   * Current that a fillet takes, A. Vertical and overhead the pool goes slower at less current, so
   * the need falls with the current that the position takes.
   */
  static double neededA(WorkingPoint point, WeldTask task) {
    return ProcessLimits.currentShare(point.process(), task.position())
        * flatNeededA(point, task.thinnerMm());
  }

  private static double flatNeededA(WorkingPoint point, double thicknessMm) {
    return switch (point.process()) {
      case MAG, MIG, FCAW, FCAW_S ->
          SHARE_OF_RULE
              * Math.min(WorkingPoints.AMPERES_PER_MM * thicknessMm, FULL_FILLET_CURRENT_A);
      case TIG -> Math.min(TIG_AMPERES_PER_MM * thicknessMm, TIG_FULL_A);
      case MMA -> stickNeededA(thicknessMm);
    };
  }

  /** 2.5 mm electrodes from 70 A up to 6 mm, 3.2 mm ones from 110 A above. */
  private static double stickNeededA(double thicknessMm) {
    if (thicknessMm <= 6) {
      return Math.min(70, SHARE_OF_RULE * WorkingPoints.AMPERES_PER_MM * thicknessMm);
    }
    return 110;
  }

  /** Penetration in a tight joint at the slowest travel that deepens it, mm. */
  static double penetrationMm(WorkingPoint point, double gapMm) {
    double share =
        point.transfer() == TransferMode.SHORT_CIRCUIT ? PenetrationFactor.SHORT_CIRCUIT_SHARE : 1;
    double byProcess =
        switch (point.process()) {
          case MAG, MIG, FCAW, FCAW_S -> share;
          case MMA -> PenetrationFactor.BASIC_SHARE;
          case TIG -> PenetrationFactor.RUTILE_SHARE;
        };
    return JacksonShrubsall.mm(
        PenetrationFactor.forGap(gapMm) * byProcess,
        point.currentA(),
        point.voltageV(),
        point.slowestMmPerS());
  }

  /** Largest root face that both sides fuse without gouging, mm; at most 2. */
  static double rootFaceMm(WorkingPoint point, boolean bothSides) {
    double tightMm = penetrationMm(point, 0);
    double fused = bothSides ? 2 * tightMm - 1 : tightMm;
    return Math.max(0, Math.min(LARGEST_ROOT_FACE_MM, fused));
  }

  private static GateResult fillet(WorkingPoint point, WeldTask task) {
    double neededA = neededA(point, task);
    List<Figure> figures =
        List.of(
            new Figure("welding current", point.currentA(), "A"),
            new Figure("current needed", neededA, "A"),
            new Figure("penetration", penetrationMm(point, 0), "mm"));
    if (point.currentA() >= neededA) {
      return new GateResult(
          "fusion", Outcome.OPEN, figures, "the current melts the root of a fillet", "");
    }
    if (point.currentA() < LEAST_SHARE_FOR_A_ROOT * neededA) {
      return new GateResult(
          "fusion",
          Outcome.SHUT,
          figures,
          "the current is too small even for the root of a bevelled joint",
          "a machine of " + Math.round(neededA) + " A and more");
    }
    return new GateResult(
        "fusion",
        Outcome.WITH_HELP,
        figures,
        "the current is too small to melt the root of a fillet on square edges",
        "bevelled edges, or a machine of " + Math.round(neededA) + " A and more");
  }

  private static GateResult butt(WorkingPoint point, WeldTask task) {
    double t = task.thinnerMm();
    double energy = point.largestArcEnergyKJPerMm();
    double gapped = penetrationMm(point, PenetrationFactor.GAP_FROM_MM);
    List<Figure> figures =
        List.of(
            new Figure("welding current", point.currentA(), "A"),
            new Figure("arc energy", energy, "kJ/mm"),
            new Figure("arc energy needed", LEAST_ENERGY_PER_MM * t, "kJ/mm"),
            new Figure("penetration over a gap", gapped, "mm"),
            new Figure("penetration", penetrationMm(point, 0), "mm"));
    if (oneSide(point, task)) {
      String gap = t >= 3 ? " over a gap of a quarter to a third of the thickness" : "";
      return new GateResult(
          "fusion", Outcome.OPEN, figures, "square edges fuse from one side" + gap, "");
    }
    if (bothSides(point, t)) {
      return new GateResult(
          "fusion",
          Outcome.WITH_HELP,
          figures,
          "square edges fuse from both sides over a gap of 1.2 mm and more",
          "a pass from each side");
    }
    double rootNeededA = LEAST_SHARE_FOR_A_ROOT * neededA(point, task);
    if (point.currentA() < rootNeededA) {
      return new GateResult(
          "fusion",
          Outcome.SHUT,
          figures,
          "the current is too small even for the root of a groove",
          "a machine of " + Math.round(neededA(point, task)) + " A and more");
    }
    return new GateResult(
        "fusion",
        Outcome.WITH_HELP,
        figures,
        "square edges do not fuse through",
        "a groove with a root face that the arc reaches");
  }

  private static boolean oneSide(WorkingPoint point, WeldTask task) {
    double t = task.thinnerMm();
    return t <= ONE_SIDE_UP_TO_MM
        && point.largestArcEnergyKJPerMm() >= LEAST_ENERGY_PER_MM * t
        && point.currentA() >= neededOneSideA(point, task);
  }

  private static double neededOneSideA(WorkingPoint point, WeldTask task) {
    return switch (point.process()) {
      case MAG, MIG, FCAW, FCAW_S ->
          ProcessLimits.currentShare(point.process(), task.position())
              * SHARE_OF_RULE
              * WorkingPoints.AMPERES_PER_MM
              * task.thinnerMm();
      case MMA, TIG -> neededA(point, task);
    };
  }

  static boolean bothSides(WorkingPoint point, double thicknessMm) {
    return thicknessMm <= TWO_SIDES_UP_TO_MM
        && 2 * penetrationMm(point, PenetrationFactor.GAP_FROM_MM) >= thicknessMm;
  }
}
