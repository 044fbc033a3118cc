package org.counterpull.jointplan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.counterpull.contact.Contact;
import org.counterpull.contact.JointForm;
import org.counterpull.contact.WeldLine;
import org.counterpull.fillet.FilletThroat;
import org.counterpull.fillet.FlareThroat;
import org.counterpull.fillet.FlareThroat.Flare;
import org.counterpull.fillet.MaximumFillet;
import org.counterpull.fillet.MinimumFillet;
import org.counterpull.machine.BarSection;
import org.counterpull.machine.JointKind;
import org.counterpull.machine.WeldTask;
import org.counterpull.position.WeldingPosition;
import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Printed;
import org.counterpull.stock.Flat;
import org.counterpull.stock.RoundBar;
import org.counterpull.stock.SquareBar;
import org.counterpull.stock.Stock;
import org.counterpull.weldment.Joint;
import org.counterpull.weldment.Joint.Holes;
import org.counterpull.weldment.Joint.WeldKind;
import org.counterpull.weldment.Part;

/**
 * What a joint needs before any machine is looked at.
 *
 * @param thinnerMm thinner wall at its lines; of solid round bars the radius, which the arc reaches
 *     from all round
 * @param thickerMm thicker wall at its lines; the same of solid round bars
 * @param size weld size
 * @param flare true where a round lies against the other part
 * @param groove true where a butt or a full penetration is wanted
 * @param holes what plug and slot welds fill; empty for every other weld
 */
record JointNeeds(
    double thinnerMm,
    double thickerMm,
    WeldSize size,
    boolean flare,
    boolean groove,
    Optional<Holes> holes) {

  private static final Formula GIVEN =
      new Formula("given-size", "weld size from the file", "mm", "the weldment file");

  private static final Formula FULL =
      new Formula(
          "full-penetration", "throat of a full penetration weld", "mm", "the thinner part itself");

  private static final Formula FLARE_DEFAULT =
      new Formula(
          "flare-default-throat",
          "throat of a flare groove where none is given",
          "mm",
          "common practice, no source: 0.7 of the thinner wall, at most a flush fill (AWS D1.1)");

  private static final Formula BY_LOAD =
      new Formula(
          "leg-for-load",
          "leg that carries the load",
          "mm",
          "derived: least half millimetre that holds");

  static JointNeeds of(
      Joint joint, Contact contact, List<WeldLine> lines, Optional<LoadedJoint> load) {
    double thinner =
        lines.stream()
            .mapToDouble(l -> Math.min(l.firstWallMm(), l.secondWallMm()))
            .min()
            .orElseThrow();
    double thicker =
        lines.stream()
            .mapToDouble(l -> Math.max(l.firstWallMm(), l.secondWallMm()))
            .max()
            .orElseThrow();
    boolean cones = BarCones.meet(contact, lines.get(0));
    boolean flare = lines.stream().allMatch(l -> l.flareRadiusMm().isPresent());
    Optional<Holes> holes = joint.holes().filter(h -> lines.get(0).shape() == WeldLine.Shape.PLUG);
    boolean groove = !flare && holes.isEmpty() && isGroove(joint, contact, lines);
    WeldSize size =
        holes.isPresent()
            ? PlugSize.of(holes.get(), lines.get(0))
            : flare
                ? flareSize(joint, lines, thinner)
                : groove
                    ? grooveSize(joint, thinner)
                    : filletSize(joint, lines, thinner, thicker, load);
    double reachedMm = cones ? BarCones.depthMm(lines.get(0)) : thinner;
    return new JointNeeds(reachedMm, cones ? reachedMm : thicker, size, flare, groove, holes);
  }

  private static boolean isGroove(Joint joint, Contact contact, List<WeldLine> lines) {
    boolean askedFor = joint.fullPenetration() || isGroove(joint.weld());
    boolean noFillet = lines.stream().noneMatch(l -> l.shape() == WeldLine.Shape.FILLET);
    return askedFor
        || noFillet
        || (contact.form() == JointForm.BUTT && joint.weld() == WeldKind.AUTO);
  }

  /** True for the kinds that need a cut edge; a round beside an edge is welded like a fillet. */
  private static boolean isGroove(WeldKind kind) {
    return switch (kind) {
      case AUTO, FILLET, FLARE_BEVEL, FLARE_V, PLUG, SLOT -> false;
      case SQUARE, V, DOUBLE_V, BEVEL, DOUBLE_BEVEL, U, J -> true;
      case Y, DOUBLE_U, DOUBLE_J, STEEP_V, STEEP_BEVEL -> true;
    };
  }

  /** Wanted throat of a groove that need not go through; empty for full penetration. */
  OptionalDouble partialThroatMm() {
    double throat = size.throat().value();
    return groove && throat < thinnerMm - 1e-9 ? OptionalDouble.of(throat) : OptionalDouble.empty();
  }

  /**
   * Leg of the fillet over a groove, mm; 0 where the parts are flush.
   *
   * <p>Source: AWS D1.1, from memory: a quarter of the part, at most 10 mm, over grooves of tees
   * and corners.
   */
  double reinforcingLegMm(WeldLine line) {
    if (line.shape() != WeldLine.Shape.FILLET) {
      return 0;
    }
    return size.leg().map(Computed::value).orElse(Math.min(10, thinnerMm / 4));
  }

  private static WeldSize filletSize(
      Joint joint,
      List<WeldLine> lines,
      double thinner,
      double thicker,
      Optional<LoadedJoint> load) {
    // The side that opens widest gets the least throat from a leg.
    double faces =
        lines.stream()
            .filter(line -> line.shape() == WeldLine.Shape.FILLET)
            .mapToDouble(WeldLine::dihedralDeg)
            .max()
            .orElse(90);
    if (joint.size().isPresent()) {
      double leg = joint.size().get().legMm(faces);
      return new WeldSize(
          Optional.of(GIVEN.result(leg)), FilletThroat.of(leg, faces), true, "given in the file");
    }
    Computed least = MinimumFillet.of(thicker);
    double leg = Math.min(least.value(), thinner);
    double byLoad = load.map(l -> l.leastLegMm().orElse(thinner)).orElse(0.0);
    if (byLoad > leg && leg < thinner) {
      double wanted = Math.min(byLoad, thinner);
      return new WeldSize(
          Optional.of(BY_LOAD.result(wanted)),
          FilletThroat.of(wanted, faces),
          false,
          byLoad > thinner
              ? "as much as the thinner part can use: the load asks for more"
              : "what the load asks for; the least for "
                  + Printed.quantity(thicker, "mm")
                  + " would be "
                  + Printed.quantity(leg, "mm"));
    }
    String reason =
        leg < least.value()
            ? "the least for " + Printed.quantity(thicker, "mm") + ", cut down to the thinner part"
            : "the least for " + Printed.quantity(thicker, "mm") + " by the AWS D1.1 table";
    return new WeldSize(
        Optional.of(least.formula().result(leg, least.warnings())),
        FilletThroat.of(leg, faces),
        false,
        reason);
  }

  private static WeldSize grooveSize(Joint joint, double thinner) {
    if (!joint.fullPenetration() && joint.size().isPresent()) {
      double throat = joint.size().get().throatMm(90);
      return new WeldSize(
          Optional.empty(), GIVEN.result(Math.min(throat, thinner)), true, "given in the file");
    }
    return new WeldSize(
        Optional.empty(), FULL.result(thinner), false, "full penetration of the thinner part");
  }

  private static WeldSize flareSize(Joint joint, List<WeldLine> lines, double thinner) {
    double radius = lines.get(0).flareRadiusMm().orElseThrow();
    // The share that every process reaches: the process is not chosen yet.
    Flare form = lines.get(0).shape() == WeldLine.Shape.FLARE_V ? Flare.V : Flare.BEVEL;
    double flush = FlareThroat.of(form, false, radius).value();
    if (joint.size().isPresent()) {
      double throat = joint.size().get().throatMm(90);
      return throat <= flush
          ? new WeldSize(Optional.empty(), GIVEN.result(throat), true, "given in the file")
          : new WeldSize(
              Optional.empty(),
              FlareThroat.FORMULA.result(flush),
              false,
              "the file asks for "
                  + Printed.quantity(throat, "mm")
                  + ", more than a flush fill is sure to give");
    }
    double throat = Math.min(0.7 * thinner, flush);
    return new WeldSize(
        Optional.empty(),
        FLARE_DEFAULT.result(throat),
        false,
        "0.7 of the thinner wall, at most what a flush fill gives");
  }

  /** Sentences about the size that the planner should say. */
  List<String> remarks() {
    if (holes.isPresent()) {
      return PlugSize.remarks(holes.get(), thinnerMm);
    }
    if (size.leg().isEmpty()) {
      return List.of();
    }
    double leg = size.leg().get().value();
    double least = Math.min(MinimumFillet.legMm(thickerMm), thinnerMm);
    double largest = MaximumFillet.of(thinnerMm).value();
    if (leg < least - 1e-9) {
      return List.of(
          "a leg of "
              + Printed.quantity(leg, "mm")
              + " is below the least for this thickness, "
              + Printed.quantity(least, "mm")
              + " (AWS D1.1): it may cool too fast and crack");
    }
    if (leg > Math.max(largest, least) + 1e-9) {
      return List.of(
          "a leg of "
              + Printed.quantity(leg, "mm")
              + " is more than the thinner part can use ("
              + Printed.quantity(largest, "mm")
              + "): it costs metal, time and pull");
    }
    return List.of();
  }

  /** What the load does to the size that was chosen. */
  LoadCheck check(LoadedJoint load) {
    boolean full = groove && size.throat().value() >= thinnerMm - 1e-9;
    return load.check(size, full, Math.min(MinimumFillet.legMm(thickerMm), thinnerMm));
  }

  /** The question for a machine, in one position. */
  WeldTask task(
      Contact contact, WeldingPosition position, double ambientC, SteelAtJoint steel, Part first) {
    OptionalDouble leg =
        flare
            ? OptionalDouble.of(size.throat().value() * Math.sqrt(2))
            : size.leg().map(l -> OptionalDouble.of(l.value())).orElse(OptionalDouble.empty());
    return new WeldTask(
        groove && !flare ? kindOfGroove(contact.form()) : kind(contact.form()),
        thinnerMm,
        thickerMm,
        leg,
        position,
        ambientC,
        steel.shortestT85S(),
        bar(contact, first));
  }

  private static JointKind kindOfGroove(JointForm form) {
    return form == JointForm.TEE ? JointKind.TEE : JointKind.BUTT;
  }

  private static JointKind kind(JointForm form) {
    return switch (form) {
      case TEE -> JointKind.TEE;
      case BUTT -> JointKind.BUTT;
      case CORNER, EDGE -> JointKind.CORNER;
      case LAP -> JointKind.LAP;
    };
  }

  /** Two bars welded end to end across their width warm as a whole. */
  private static Optional<BarSection> bar(Contact contact, Part first) {
    if (contact.form() != JointForm.BUTT) {
      return Optional.empty();
    }
    Stock stock = first.stock();
    if (stock instanceof RoundBar) {
      double asSquareMm = Math.sqrt(stock.areaMm2());
      return Optional.of(section(asSquareMm, asSquareMm));
    }
    return stock instanceof Flat || stock instanceof SquareBar
        ? Optional.of(section(stock.acrossMm(), stock.upMm()))
        : Optional.empty();
  }

  private static BarSection section(double oneMm, double otherMm) {
    return new BarSection(Math.min(oneMm, otherMm), Math.max(oneMm, otherMm));
  }
}
