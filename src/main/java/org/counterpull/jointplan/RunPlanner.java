package org.counterpull.jointplan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.counterpull.contact.Contact;
import org.counterpull.contact.WeldLine;
import org.counterpull.cooling.WeldShape;
import org.counterpull.feeding.ShieldingGas;
import org.counterpull.filler.FillerClass;
import org.counterpull.filler.FillerClasses;
import org.counterpull.groove.Groove;
import org.counterpull.machine.FillerAtHand;
import org.counterpull.machine.Machine;
import org.counterpull.machine.MachineVerdict;
import org.counterpull.machine.WorkingPoint;
import org.counterpull.position.WeldingPosition;
import org.counterpull.procedure.Found;
import org.counterpull.procedure.JointForm;
import org.counterpull.procedure.Procedure;
import org.counterpull.procedure.ProcedureBook;
import org.counterpull.procedure.ProcedureQuery;
import org.counterpull.weldment.Joint;
import org.counterpull.weldment.Joint.Intermittent;
import org.counterpull.weldment.ShopMachine;
import org.counterpull.weldment.Weldment;

/** Plans the runs of one joint on the machine that was chosen for it. */
final class RunPlanner {
  private static final String NO_ROW =
      "load line of IEC 60974-1; no procedure row covers this work";

  private final Weldment weldment;
  private final ProcedureBook procedures;
  private final Joint joint;
  private final Contact contact;
  private final JointNeeds needs;
  private final SteelAtJoint steel;
  private final ShopMachine machine;
  private final Placing.Effort effort;
  private final WorkingPoint point;
  private final Optional<Groove> groove;
  private final OptionalDouble againstChillC;
  private final Set<String> fillerNotes = new LinkedHashSet<>();
  private final Set<SteelAdvice.Forbidden> forbidden = new LinkedHashSet<>();
  private final Set<String> unproven = new LinkedHashSet<>();
  private PreheatChoice preheat;
  private double mostHydrogenMl;

  RunPlanner(
      Weldment weldment,
      ProcedureBook procedures,
      Joint joint,
      Contact contact,
      JointNeeds needs,
      SteelAtJoint steel,
      ShopMachine machine,
      Assessed assessed,
      Optional<Groove> groove) {
    MachineVerdict verdict = assessed.verdict();
    this.weldment = weldment;
    this.procedures = atHand(procedures, machine);
    this.joint = joint;
    this.contact = contact;
    this.needs = needs;
    this.steel = steel;
    this.machine = machine;
    this.effort = assessed.effort();
    this.point = verdict.point();
    this.groove = groove;
    this.againstChillC = verdict.preheatC();
    this.preheat =
        preheat(
            Hydrogen.mlPer100g(point.process()),
            point.largestArcEnergyKJPerMm() * point.process().k());
  }

  /** The rows that what lies at the machine can follow: those of its classes, where known. */
  private static ProcedureBook atHand(ProcedureBook book, ShopMachine machine) {
    return new ProcedureBook(
        book.rows().stream().filter(row -> canFollow(row, machine.machine())).toList());
  }

  private static boolean canFollow(Procedure row, Machine machine) {
    List<FillerClass> known =
        machine.fillersFor(row.scope().process()).stream()
            .map(FillerAtHand::fillerClass)
            .flatMap(Optional::stream)
            .toList();
    return known.isEmpty()
        || FillerClasses.find(row.electrode().classification()).map(known::contains).orElse(true);
  }

  private PreheatChoice preheat(double hydrogenMl, double heatInputKJPerMm) {
    return PreheatChoice.of(
            steel,
            hydrogenMl,
            needs.thickerMm(),
            heatInputKJPerMm,
            weldment.surroundings().ambientC())
        .atLeast(againstChillC);
  }

  PreheatChoice preheat() {
    return preheat;
  }

  /** What doesn't match about the fillers, in sentences. */
  List<String> fillerNotes() {
    return List.copyOf(fillerNotes);
  }

  /** Why the settings are not proved; empty where a source stands behind each row. */
  Optional<String> unproven() {
    return unproven.stream().findFirst();
  }

  /** What the fillers mustn't be used for. */
  List<SteelAdvice.Forbidden> forbidden() {
    return List.copyOf(forbidden);
  }

  /** The runs; the preheat follows from the least heat input of their passes. */
  List<RunPlan> plan(List<WeldLine> lines) {
    List<RunPlan> rough = runs(lines);
    OptionalDouble least =
        rough.stream()
            .flatMap(run -> run.passes().stream())
            .mapToDouble(pass -> pass.heatInput().value())
            .min();
    if (least.isEmpty()) {
      return rough;
    }
    preheat = preheat(mostHydrogenMl, least.getAsDouble());
    return runs(lines);
  }

  private List<RunPlan> runs(List<WeldLine> lines) {
    List<RunPlan> runs = new ArrayList<>();
    for (WeldLine line : lines) {
      runs.add(run(line, !runs.isEmpty()));
    }
    return runs;
  }

  private RunPlan run(WeldLine line, boolean second) {
    Placing placing = Placing.of(line, weldment.surroundings().canBeTurned(), effort);
    Optional<Found> row = row(line, placing.position());
    PassSettings settings = new PassSettings(machine.machine(), point, row.map(Found::procedure));
    double welded = weldedMm(line.path().lengthMm());
    List<PassPlan> passes =
        beads(line, second, placing.position()).stream()
            .map(
                bead ->
                    settings.pass(
                        bead,
                        needs.thinnerMm(),
                        needs.thickerMm(),
                        shape(),
                        preheat.least().value(),
                        welded))
            .toList();
    FillerChoice filler =
        FillerChoice.of(
            machine.machine(),
            point,
            steel,
            row.map(Found::procedure),
            new FillerChoice.Work(passes.size(), placing.position(), needs.thickerMm()));
    fillerNotes.addAll(filler.notes());
    if (row.isEmpty()) {
      unproven.add(
          "no row of procedures covers this work: its settings are the machine's load line");
    } else if (row.get().procedure().isUnproven()) {
      unproven.add("its settings stand on common practice or memory, not on a source");
    }
    forbidden.addAll(filler.forbidden());
    mostHydrogenMl = Math.max(mostHydrogenMl, filler.hydrogenMlPer100g(point.process()));
    return new RunPlan(
        line,
        machine.machine().name(),
        machine.place(),
        placing.lay(),
        placing.position(),
        point.process(),
        settings.transfer(needs.thickerMm()),
        row.map(Found::explanation).orElse(NO_ROW),
        filler.filler(),
        welded,
        passes,
        preheat.least(),
        preheat.interpassMaxC());
  }

  private List<Bead> beads(WeldLine line, boolean second, WeldingPosition position) {
    if (needs.flare()) {
      return WeldMetal.flare(needs.size().throat().value(), line, point, position);
    }
    if (groove.isPresent()) {
      return WeldMetal.groove(groove.get(), second, point, position);
    }
    return WeldMetal.fillet(needs.size().leg().orElseThrow().value(), line, point, position);
  }

  private Optional<Found> row(WeldLine line, WeldingPosition position) {
    return procedures.find(
        ProcedureQuery.of(
                point.process(),
                steel.baseMaterial(),
                form(),
                position,
                Math.min(line.firstWallMm(), line.secondWallMm()))
            .with(point.diameterMm(), gas(), point.currentA()));
  }

  private Optional<ShieldingGas> gas() {
    return switch (point.process()) {
      case MAG, MIG, FCAW, TIG -> Optional.of(machine.machine().gas());
      case MMA, FCAW_S -> Optional.empty();
    };
  }

  private JointForm form() {
    if (groove.isPresent()) {
      return switch (groove.get().preparation()) {
        case SQUARE -> JointForm.SQUARE_BUTT;
        case V, BEVEL, U, J -> JointForm.V_BUTT;
        case DOUBLE_V, DOUBLE_BEVEL -> JointForm.DOUBLE_V_BUTT;
      };
    }
    return contact.form() == org.counterpull.contact.JointForm.LAP
        ? JointForm.LAP_FILLET
        : JointForm.TEE_FILLET;
  }

  private WeldShape shape() {
    return switch (contact.form()) {
      case TEE, LAP -> WeldShape.TEE_FILLET;
      case CORNER, EDGE -> WeldShape.CORNER_FILLET;
      case BUTT -> WeldShape.BUTT_FILL;
    };
  }

  private double weldedMm(double lengthMm) {
    if (joint.intermittent().isEmpty()) {
      return lengthMm;
    }
    Intermittent stitch = joint.intermittent().get();
    double pitch = stitch.lengthMm() + stitch.clearMm();
    double count = Math.floor((lengthMm + stitch.clearMm()) / pitch);
    return Math.min(lengthMm, Math.max(1, count) * stitch.lengthMm());
  }
}
