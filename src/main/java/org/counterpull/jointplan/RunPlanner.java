package org.counterpull.jointplan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.contact.Contact;
import org.counterpull.contact.WeldLine;
import org.counterpull.cooling.WeldShape;
import org.counterpull.feeding.ShieldingGas;
import org.counterpull.feeding.TransferMode;
import org.counterpull.filler.FillerClass;
import org.counterpull.filler.FillerClasses;
import org.counterpull.machine.FillerAtHand;
import org.counterpull.machine.Machine;
import org.counterpull.machine.MachineVerdict;
import org.counterpull.machine.ProcessLimits;
import org.counterpull.machine.WorkingPoint;
import org.counterpull.position.WeldingPosition;
import org.counterpull.procedure.Found;
import org.counterpull.procedure.JointForm;
import org.counterpull.procedure.Procedure;
import org.counterpull.procedure.ProcedureBook;
import org.counterpull.procedure.ProcedureQuery;
import org.counterpull.quantity.Computed;
import org.counterpull.weldment.Joint;
import org.counterpull.weldment.Joint.Intermittent;
import org.counterpull.weldment.ShopMachine;
import org.counterpull.weldment.Weldment;

/** Plans the runs of one joint on the machine that was chosen for it. */
final class RunPlanner {
  private static final String NO_ROW =
      "load line of IEC 60974-1; no procedure row covers this work";

  private static final String NO_ROOT_ROW = "common practice, no source";

  /** Leg of a usual tack, mm. Common practice, no source. */
  private static final double TACK_LEG_MM = 4;

  /** Of rutile electrodes, ml/100 g. */
  private static final double MUCH_HYDROGEN_ML = 15;

  private final Weldment weldment;
  private final ProcedureBook procedures;
  private final Joint joint;
  private final Contact contact;
  private final JointNeeds needs;
  private final SteelAtJoint steel;
  private final ShopMachine machine;
  private final Assessed assessed;
  private final Optional<ChosenGroove> groove;
  private final OptionalDouble againstChillC;
  private final HeatSink sink;
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
      Optional<ChosenGroove> groove) {
    MachineVerdict verdict = assessed.verdict();
    this.weldment = weldment;
    this.joint = joint;
    this.contact = contact;
    this.needs = needs;
    this.steel = steel;
    this.machine = machine;
    this.assessed = assessed;
    this.groove = groove;
    WorkingPoint set = verdict.point();
    this.againstChillC = verdict.preheatC();
    this.sink =
        HeatSink.of(
            weldment.part(joint.first()),
            weldment.part(joint.second()),
            contact.form(),
            contact.lines());
    this.procedures = rows(atHand(procedures, machine));
    this.preheat =
        preheat(
            Hydrogen.mlPer100g(set.process()), set.largestArcEnergyKJPerMm() * set.process().k());
  }

  /** The rows that what lies at the machine can follow: those of its classes, where known. */
  private static ProcedureBook atHand(ProcedureBook book, ShopMachine machine) {
    return new ProcedureBook(
        book.rows().stream().filter(row -> canFollow(row, machine.machine())).toList());
  }

  /**
   * Without an electrode named in the file, the basic ones where any other would ask for preheat.
   */
  private ProcedureBook rows(ProcedureBook book) {
    WorkingPoint point = assessed.verdict().point();
    boolean free =
        point.process() == WeldingProcess.MMA
            && machine.machine().fillersFor(WeldingProcess.MMA).isEmpty();
    if (!free) {
      return book;
    }
    double heatInputKJPerMm = point.largestArcEnergyKJPerMm() * point.process().k();
    double asked = preheat(MUCH_HYDROGEN_ML, heatInputKJPerMm).least().value();
    double byBasic =
        preheat(Hydrogen.mlPer100g(WeldingProcess.MMA), heatInputKJPerMm).least().value();
    if (asked <= byBasic) {
      return book;
    }
    fillerNotes.add(
        "basic electrodes are planned: rutile or cellulosic ones bring more hydrogen and would ask"
            + " for "
            + Math.round(asked)
            + " C before the first pass");
    return new ProcedureBook(book.rows().stream().filter(RunPlanner::isLowHydrogen).toList());
  }

  private static boolean isLowHydrogen(Procedure row) {
    return row.scope().process() != WeldingProcess.MMA
        || FillerClasses.find(row.electrode().classification())
            .map(FillerClass::isLowHydrogen)
            .orElse(false);
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
            steel, hydrogenMl, sink, heatInputKJPerMm, weldment.surroundings().ambientC())
        .atLeast(againstChillC);
  }

  PreheatChoice preheat() {
    return preheat;
  }

  /**
   * Least temperature before a tack: a short bead of a small leg brings little heat, so it never
   * asks for less than the runs.
   */
  Optional<Computed> tackPreheat() {
    WorkingPoint point = assessed.verdict().point();
    double legMm = Math.min(TACK_LEG_MM, needs.thinnerMm());
    double heatInput =
        ProcessLimits.energyPerLeg(point.process()) * legMm * legMm * point.process().k();
    Computed own = preheat(mostHydrogenMl, heatInput).least();
    return Optional.of(own.value() > preheat.least().value() ? own : preheat.least());
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
    Map<WeldLine, LineRole> roles =
        groove.isPresent() && !lines.isEmpty() ? LineRole.of(contact.form(), lines) : Map.of();
    List<RunPlan> runs = new ArrayList<>();
    for (WeldLine line : lines) {
      LineRole role = roles.getOrDefault(line, LineRole.FIRST);
      boolean runsOut =
          role == LineRole.END && contact.form() == org.counterpull.contact.JointForm.BUTT;
      if (!runsOut && groove.map(g -> g.welds(role)).orElse(true)) {
        runs.add(run(line, role));
      }
    }
    return runs;
  }

  private RunPlan run(WeldLine line, LineRole role) {
    boolean turned = weldment.surroundings().canBeTurned();
    Placing placing = Placing.of(line, turned, assessed.effort());
    WorkingPoint point = assessed.point(placing.position());
    Optional<Found> row = fitting(row(line, placing.position(), point, form()), point);
    PassSettings settings = new PassSettings(machine.machine(), point, row.map(Found::procedure));
    PassSettings root = rootSettings(line, role, placing.position(), point).orElse(settings);
    double welded = weldedMm(line.path().lengthMm());
    List<PassPlan> passes =
        beads(line, role, new BeadSettings(settings, root, placing.position())).stream()
            .map(
                bead ->
                    (bead.kind() == PassPlan.Kind.ROOT ? root : settings)
                        .pass(
                            bead,
                            sink.coolingMm(),
                            needs.thickerMm(),
                            shape(),
                            preheat.least().value(),
                            welded))
            .toList();
    double filled = passes.stream().mapToDouble(p -> p.area().value()).sum();
    double runMm =
        groove.isPresent() && BarCones.meet(contact, line)
            ? BarCones.meanLengthMm(BarCones.depthMm(line), filled)
            : welded;
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
        row.map(Found::explanation).orElse(NO_ROW) + rootWords(settings, root),
        filler.filler(),
        runMm,
        passes,
        preheat.least(),
        preheat.interpassMaxC());
  }

  private static String rootWords(PassSettings settings, PassSettings root) {
    return root.equals(settings)
        ? ""
        : root.row().map(r -> "; root: row " + r.id()).orElse("; root: " + NO_ROOT_ROW);
  }

  /** A row of short-circuit settings is no start where the thickness asks for spray. */
  private Optional<Found> fitting(Optional<Found> row, WorkingPoint point) {
    boolean solid = point.process() == WeldingProcess.MAG || point.process() == WeldingProcess.MIG;
    if (!solid || point.transfer() != TransferMode.SPRAY || needs.thickerMm() <= 5) {
      return row;
    }
    return row.filter(
        r -> {
          double mostA = Math.min(r.procedure().settings().currentA().high(), point.currentA());
          return TransferMode.of(point.diameterMm(), machine.machine().gas(), mostA)
              == TransferMode.SPRAY;
        });
  }

  /** Settings of the root of an open groove; empty where nothing can fall through. */
  private Optional<PassSettings> rootSettings(
      WeldLine line, LineRole role, WeldingPosition position, WorkingPoint point) {
    if (role != LineRole.FIRST || !groove.map(ChosenGroove::openRoot).orElse(false)) {
      return Optional.empty();
    }
    WorkingPoint cooler = RootPoint.of(point, machine.machine().gas());
    Optional<Procedure> row =
        row(line, position, cooler, JointForm.ROOT_PASS).map(Found::procedure);
    double mostA = row.map(r -> r.settings().currentA().high()).orElse(cooler.currentA());
    WorkingPoint set = RootPoint.limited(point, mostA, machine.machine().gas());
    return Optional.of(new PassSettings(machine.machine(), set, row));
  }

  private List<Bead> beads(WeldLine line, LineRole role, BeadSettings settings) {
    if (needs.holes().isPresent()) {
      return WeldMetal.plug(PlugSize.room(needs.holes().get(), line), settings);
    }
    if (needs.flare()) {
      return WeldMetal.flare(needs.size().throat().value(), line, settings);
    }
    if (groove.isPresent()) {
      return WeldMetal.groove(groove.get(), role, needs.reinforcingLegMm(line), settings);
    }
    return WeldMetal.fillet(needs.size().leg().orElseThrow().value(), line, settings);
  }

  private Optional<Found> row(
      WeldLine line, WeldingPosition position, WorkingPoint point, JointForm form) {
    return procedures.find(
        ProcedureQuery.of(
                point.process(),
                steel.baseMaterial(),
                form,
                position,
                Math.min(line.firstWallMm(), line.secondWallMm()))
            .with(point.diameterMm(), gas(), point.currentA()));
  }

  private Optional<ShieldingGas> gas() {
    return switch (assessed.verdict().point().process()) {
      case MAG, MIG, FCAW, TIG -> Optional.of(machine.machine().gas());
      case MMA, FCAW_S -> Optional.empty();
    };
  }

  private JointForm form() {
    if (groove.isPresent()) {
      return switch (groove.get().groove().preparation()) {
        case SQUARE -> JointForm.SQUARE_BUTT;
        case V, BEVEL, U, J -> JointForm.V_BUTT;
        case DOUBLE_V, DOUBLE_BEVEL, DOUBLE_U, DOUBLE_J -> JointForm.DOUBLE_V_BUTT;
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
