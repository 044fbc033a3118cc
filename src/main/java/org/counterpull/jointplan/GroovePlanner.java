package org.counterpull.jointplan;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.contact.Contact;
import org.counterpull.contact.WeldLine;
import org.counterpull.groove.Groove;
import org.counterpull.groove.Preparation;
import org.counterpull.machine.MachineVerdict;
import org.counterpull.machine.Verdict;
import org.counterpull.position.WeldingPosition;
import org.counterpull.procedure.BaseMaterial;
import org.counterpull.quantity.Printed;
import org.counterpull.weldment.Joint;
import org.counterpull.weldment.Joint.WeldKind;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.Weldment;

/** Asks for the groove of one joint on the machine that was chosen for it. */
final class GroovePlanner {
  private static final double DOUBLE_ABOVE_MM = 10;
  private static final double USUAL_ROOT_FACE_MM = 1.5;

  private final Weldment weldment;
  private final Joint joint;
  private final Contact contact;
  private final JointNeeds needs;
  private final BaseMaterial material;
  private final WeldLine first;
  private final boolean bothSides;

  /**
   * A planner.
   *
   * @param lines that are welded; at least one
   */
  GroovePlanner(
      Weldment weldment,
      Joint joint,
      Contact contact,
      JointNeeds needs,
      BaseMaterial material,
      List<WeldLine> lines) {
    this.weldment = weldment;
    this.joint = joint;
    this.contact = contact;
    this.needs = needs;
    this.material = material;
    Map<WeldLine, LineRole> roles = LineRole.of(contact.form(), lines);
    this.first =
        lines.stream().filter(l -> roles.get(l) == LineRole.FIRST).findFirst().orElse(lines.get(0));
    this.bothSides = roles.containsValue(LineRole.SECOND);
  }

  /** The groove to weld in; empty for a plain fillet or flare. */
  Optional<ChosenGroove> choose(Assessed best) {
    MachineVerdict verdict = best.verdict();
    if (needs.flare() || needs.holes().isPresent() || !needs.groove() && !opensFillet(verdict)) {
      return Optional.empty();
    }
    if (cones()) {
      return Optional.of(BarCones.groove(needs.thinnerMm()));
    }
    ChosenGroove chosen = GrooveChoice.of(question(best, kind()));
    boolean onePass = verdict.preparation().passes() == 1 && chosen.squareMm() > 0;
    return Optional.of(
        onePass && joint.sides().isEmpty() && bothSides ? chosen.fromOneSide() : chosen);
  }

  private boolean cones() {
    return needs.groove() && BarCones.meet(contact, first);
  }

  /** A fillet whose root the machine doesn't melt on square edges. */
  private static boolean opensFillet(MachineVerdict verdict) {
    boolean helps =
        verdict.verdict() == Verdict.WITH_PREPARATION || verdict.verdict() == Verdict.TEST_FIRST;
    return helps && verdict.preparation().groove().isPresent();
  }

  private WeldKind kind() {
    if (needs.groove()) {
      return joint.weld();
    }
    return preparedMm() > DOUBLE_ABOVE_MM ? WeldKind.DOUBLE_BEVEL : WeldKind.BEVEL;
  }

  private GrooveQuestion question(Assessed best, WeldKind asked) {
    MachineVerdict verdict = best.verdict();
    Optional<Groove> byMachine = verdict.preparation().groove();
    double face =
        byMachine
            .filter(g -> g.preparation() != Preparation.SQUARE)
            .map(Groove::rootFaceMm)
            .orElse(USUAL_ROOT_FACE_MM);
    return new GrooveQuestion(
        asked,
        contact.form(),
        preparedMm(),
        needs.partialThroatMm(),
        bothSides,
        position(best),
        verdict.point(),
        face,
        byMachine
            .filter(g -> g.preparation() == Preparation.SQUARE)
            .filter(g -> bothSides || verdict.preparation().passes() == 1),
        material,
        weldment.surroundings().edgeTools());
  }

  /** Wall that is cut: of a tee the standing part's, else the thinner one. */
  private double preparedMm() {
    return switch (contact.form()) {
      case TEE -> first.firstWallMm();
      case BUTT, CORNER, LAP, EDGE -> needs.thinnerMm();
    };
  }

  private Placing placing(Assessed best) {
    return Placing.of(first, weldment.surroundings().canBeTurned(), best.effort());
  }

  private WeldingPosition position(Assessed best) {
    return placing(best).position();
  }

  /** What is done to the edges. */
  EdgePreparation edges(Optional<ChosenGroove> groove, Assessed best) {
    if (groove.isEmpty()) {
      return Preparations.plain(
          joint,
          needs,
          needs.flare()
              ? "a round against a wall"
              : needs.holes().isPresent()
                  ? "the parts lie on each other: the holes bring the arc to the lower one"
                  : "a fillet carries what the size asks for, and the machine fuses the root");
    }
    String why =
        cones()
            ? ""
            : needs.partialThroatMm().isPresent()
                ? "the throat asked for"
                : needs.groove()
                    ? "full depth of the part is wanted"
                    : "the machine does not fuse this thickness square: the bevel brings the arc to the"
                        + " root";
    return cones()
        ? Preparations.cones(groove.get())
        : Preparations.cut(
            groove.get(),
            bevelled(best),
            why,
            weldment.surroundings().edgeTools(),
            material == BaseMaterial.CARBON_STEEL);
  }

  /** The fitted part; the upper one where the joint stands upright and is welded horizontally. */
  private String bevelled(Assessed best) {
    Placing placing = placing(best);
    if (contact.form() != org.counterpull.contact.JointForm.BUTT
        || placing.position() != WeldingPosition.PC) {
      return joint.first();
    }
    Vector3D up = placing.lay().up();
    Part one = weldment.part(joint.first());
    Part other = weldment.part(joint.second());
    return middle(one).dotProduct(up) >= middle(other).dotProduct(up)
        ? joint.first()
        : joint.second();
  }

  private static Vector3D middle(Part part) {
    return part.frame().outOf(new Vector3D(part.lengthMm() / 2, 0, 0));
  }

  /** What the file asks for and these edges don't give. */
  List<String> unreached(MachineVerdict verdict) {
    boolean fuses =
        verdict
            .preparation()
            .groove()
            .map(g -> g.preparation() == Preparation.SQUARE)
            .orElse(false);
    boolean wanted = joint.weld() == WeldKind.SQUARE && needs.partialThroatMm().isEmpty();
    return wanted && !fuses && needs.thinnerMm() > 3
        ? List.of(
            "square edges of "
                + Printed.quantity(needs.thinnerMm(), "mm")
                + " do not melt through on this machine: write weld: double v, or give the throat"
                + " that is enough")
        : List.of();
  }
}
