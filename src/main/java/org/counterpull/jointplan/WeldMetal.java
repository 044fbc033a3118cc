package org.counterpull.jointplan;

import java.util.List;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.contact.WeldLine;
import org.counterpull.fillet.FilletArea;
import org.counterpull.fillet.LegEnergy;
import org.counterpull.groove.Groove;
import org.counterpull.groove.GrooveSide;
import org.counterpull.groove.WeldSections;
import org.counterpull.machine.ProcessLimits;

/**
 * The beads of one run: what has to be filled on its side of the joint, laid out within what the
 * machine lays.
 */
final class WeldMetal {
  /** Fillets are laid a tenth over on the leg. */
  private static final double OVER_NOMINAL = 1.21;

  /** Height of a cap. */
  static final double CAP_MM = 1;

  private static final double LEAST_CAP_WIDTH_MM = 4;

  private static final double GOUGE_WIDTH_MM = 6;
  private static final double GOUGE_PAST_FACE_MM = 1;

  /** Arc energy per thickness that melts square edges: mean of published starting settings. */
  private static final double SQUARE_KJ_PER_MM2 = 0.129;

  private WeldMetal() {}

  /** Beads of a fillet run. */
  static List<Bead> fillet(double legMm, WeldLine line, BeadSettings settings) {
    double faces = Math.max(60, Math.min(120, line.dihedralDeg()));
    double metal = OVER_NOMINAL * FilletArea.of(legMm, faces, 0).value() + line.gapMm() * legMm;
    return BeadLayout.fillet(metal, settings.limits().forFillet(legMm, metal));
  }

  /** Beads of a plug or slot, with a slight cap. */
  static List<Bead> plug(GrooveSide room, BeadSettings settings) {
    return BeadLayout.groove(
        room, WeldSections.capMm2(room.gapMm(), CAP_MM), settings.limits(), PassPlan.Kind.ROOT);
  }

  /** Beads of a run in a flare groove. */
  static List<Bead> flare(double throatMm, WeldLine line, BeadSettings settings) {
    double oneSide =
        FlareFill.mm2(
            line.flareRadiusMm().orElseThrow(), line.gapMm(), throatMm, gas(settings.process()));
    double metal = line.shape() == WeldLine.Shape.FLARE_V ? 2 * oneSide : oneSide;
    return BeadLayout.fillet(Math.max(metal, 2), settings.limits());
  }

  private static boolean gas(WeldingProcess process) {
    return switch (process) {
      case MAG, MIG, FCAW, TIG -> true;
      case MMA, FCAW_S -> false;
    };
  }

  /**
   * Beads of a run in a groove.
   *
   * @param chosen the groove
   * @param role first side, second side, or a narrow end that a fillet is wrapped round
   * @param reinforcingLegMm leg of the fillet over the groove of a tee; 0 for a plain cap
   * @param settings what they are laid with
   */
  static List<Bead> groove(
      ChosenGroove chosen, LineRole role, double reinforcingLegMm, BeadSettings settings) {
    return switch (role) {
      case FIRST ->
          chosen.squareMm() > 0
              ? square(chosen, settings)
              : first(chosen, reinforcingLegMm, settings);
      case SECOND ->
          chosen.squareMm() > 0
              ? square(chosen, settings)
              : chosen.sealed()
                  ? List.of(sealing(reinforcingLegMm, settings.limits()))
                  : second(chosen, reinforcingLegMm, settings);
      case END ->
          BeadLayout.fillet(
              OVER_NOMINAL * FilletArea.of(Math.max(3, reinforcingLegMm), 90, 0).value(),
              settings.limits());
    };
  }

  private static List<Bead> first(ChosenGroove chosen, double legMm, BeadSettings settings) {
    GrooveSide space = chosen.firstSide();
    double cap = capMm2(space, legMm);
    return chosen.openRoot()
        ? BeadLayout.openGroove(space, cap, settings.limits(), settings.rootLimits())
        : BeadLayout.groove(space, cap, settings.limits(), PassPlan.Kind.ROOT);
  }

  /** The first side closed the root; what was gouged out of it is filled first. */
  private static List<Bead> second(ChosenGroove chosen, double legMm, BeadSettings settings) {
    GrooveSide space = chosen.secondSide();
    List<Bead> beads =
        BeadLayout.groove(space, capMm2(space, legMm), settings.limits(), PassPlan.Kind.FILL);
    double gouged = gougedMm2(chosen);
    return gouged > 0 ? BeadLayout.over(gouged, beads, settings.limits()) : beads;
  }

  /**
   * Section that is ground out of the first side's root before the second side is begun: a channel
   * as wide as a grinding disc, through the root face and a little deeper. Common practice, no
   * source.
   */
  static double gougedMm2(ChosenGroove chosen) {
    return chosen.gouged() && chosen.isDouble() ? gougedMm2(chosen.groove()) : 0;
  }

  /** The same for a groove from both sides. */
  static double gougedMm2(Groove groove) {
    return WeldSections.capMm2(GOUGE_WIDTH_MM, groove.rootFaceMm() + GOUGE_PAST_FACE_MM);
  }

  /**
   * One bead of each side that is hot enough to melt square edges through; with a melting electrode
   * that energy brings more metal than the gap takes, and the bead stands proud.
   */
  private static List<Bead> square(ChosenGroove chosen, BeadSettings settings) {
    GrooveSide space = chosen.firstSide();
    double fill = space.areaMm2() + capMm2(space, 0);
    double energy = SQUARE_KJ_PER_MM2 * chosen.squareMm();
    double laid =
        settings.process() == WeldingProcess.TIG
            ? 0
            : energy
                * LegEnergy.BEAD_MM2_PER_KJ_PER_MM
                * LegEnergy.WIRE_KJ_PER_MM3
                / ProcessLimits.energyPerLeg(settings.process());
    double bead = Math.max(fill, Math.min(laid, settings.limits().areaMm2()));
    return List.of(new Bead(1, 1, PassPlan.Kind.SINGLE, bead));
  }

  /** Metal above the face of a groove, mm2. */
  static double capMm2(GrooveSide space, double legMm) {
    double faceMm = space.widthMm(space.heightMm());
    double cap = WeldSections.capMm2(Math.max(faceMm, LEAST_CAP_WIDTH_MM), CAP_MM);
    return Math.max(cap, OVER_NOMINAL * legMm * legMm / 2);
  }

  /** A bead over the gouged root. */
  private static Bead sealing(double legMm, BeadLimits limits) {
    double metal = Math.max(WeldSections.capMm2(6, 2) + 6, OVER_NOMINAL * legMm * legMm / 2);
    return new Bead(1, 1, PassPlan.Kind.SEALING, Math.min(limits.areaMm2(), metal));
  }
}
