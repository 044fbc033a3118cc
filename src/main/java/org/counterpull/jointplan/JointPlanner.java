package org.counterpull.jointplan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.contact.Contact;
import org.counterpull.contact.JointForm;
import org.counterpull.contact.WeldLine;
import org.counterpull.machine.MachineAssessor;
import org.counterpull.machine.MachineVerdict;
import org.counterpull.machine.Verdict;
import org.counterpull.procedure.ProcedureBook;
import org.counterpull.quantity.Computed;
import org.counterpull.weldment.Joint;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.ShopMachine;
import org.counterpull.weldment.Weldment;

/**
 * Plans one joint: what each machine of the shop can make of it, the best of them, preparation,
 * size, and each run with its passes.
 *
 * <p>A machine here is preferred to one elsewhere only where its verdict is as good: a machine that
 * can merely tack leaves the runs to one that can weld.
 */
public final class JointPlanner {
  private static final String NO_STRENGTH =
      "its load is not checked: no strength is known here for its material; write a steel whose"
          + " strength is listed, such as S235JR, S355J2, A36 or 304, or have it checked by hand";

  private final Weldment weldment;
  private final ProcedureBook procedures;

  /**
   * A planner.
   *
   * @param weldment the whole weldment, for its parts, machines and surroundings
   * @param procedures starting settings
   */
  public JointPlanner(Weldment weldment, ProcedureBook procedures) {
    this.weldment = weldment;
    this.procedures = procedures;
  }

  /** Joints whose test pieces are alike share the one that is hardest to fuse. */
  public static List<JointPlan> sharing(List<JointPlan> joints) {
    return Coupons.shared(joints);
  }

  /**
   * Plans a joint.
   *
   * @param joint what the file asks for
   * @param contact how its parts meet; with at least one line
   * @throws IllegalArgumentException when the contact has no line
   */
  public JointPlan plan(Joint joint, Contact contact) {
    RunLines chosen = RunLines.of(joint, contact);
    List<WeldLine> lines = chosen.lines().isEmpty() ? contact.lines() : chosen.lines();
    if (lines.isEmpty()) {
      throw new IllegalArgumentException("joint " + joint.name() + " has no line to weld");
    }
    Part first = weldment.part(joint.first());
    SteelAtJoint steel = SteelAtJoint.of(first, weldment.part(joint.second()));
    Optional<LoadedJoint> load =
        LoadedJoint.of(weldment, joint, chosen.lines(), contact.form() == JointForm.LAP);
    JointNeeds needs = JointNeeds.of(joint, contact, lines, load);
    List<Assessed> assessed =
        weldment.machines().stream()
            .map(machine -> assess(machine, contact, needs, lines, steel, first))
            .toList();
    List<MachineVerdict> verdicts = assessed.stream().map(Assessed::verdict).toList();
    Optional<ShopMachine> machine = choose(joint, verdicts);
    List<String> notes = new ArrayList<>(chosen.left());
    notes.addAll(needs.remarks());
    if (load.isEmpty() && !needs.groove()) {
      notes.addAll(SkewWords.of(lines));
    }
    Optional<LoadCheck> check = load.map(needs::check);
    check.ifPresent(c -> notes.addAll(c.remarks()));
    if (joint.loadN().isPresent() && check.isEmpty()) {
      notes.add(NO_STRENGTH);
    }
    GroovePlanner grooves =
        new GroovePlanner(weldment, joint, contact, needs, steel.baseMaterial(), lines);
    if (machine.isEmpty()) {
      EdgePreparation edges =
          needs.groove() && !assessed.isEmpty()
              ? grooves.edges(grooves.choose(assessed.get(0)), assessed.get(0))
              : Preparations.plain(joint, needs, "no machine here can weld it");
      return unwelded(joint, contact, edges, needs, verdicts, steel, check, notes, chosen.missed());
    }
    Assessed best = assessed.get(weldment.machines().indexOf(machine.get()));
    MachineVerdict verdict = best.verdict();
    Optional<ChosenGroove> groove = grooves.choose(best);
    RunPlanner runs =
        new RunPlanner(
            weldment, procedures, joint, contact, needs, steel, machine.get(), best, groove);
    List<RunPlan> planned = runs.plan(chosen.lines());
    PreheatChoice preheat = runs.preheat();
    EdgePreparation edges = grooves.edges(groove, best);
    Coupons coupons = new Coupons(needs, edges, contact.form(), steel);
    SteelAdvisor advisor = new SteelAdvisor(steel, needs, weldment.surroundings().ambientC());
    notes.addAll(preheat.notes());
    notes.addAll(advisor.notes(planned, preheat));
    notes.addAll(runs.fillerNotes());
    notes.addAll(verdict.notes());
    groove.ifPresent(g -> notes.addAll(g.notes()));
    List<String> missed = new ArrayList<>(chosen.missed());
    missed.addAll(grooves.unreached(verdict));
    return new JointPlan(
        joint,
        contact,
        edges,
        needs.size(),
        planned.stream().findFirst().map(RunPlan::filler),
        verdicts,
        Optional.of(machine.get().machine().name()),
        steel.carbonEquivalents(),
        fastestCooling(planned).flatMap(cooling -> steel.hardness(cooling.value())),
        preheat.least(),
        advisor.advice(planned, preheat, runs.tackPreheat(), contact.form(), runs.forbidden()),
        coupons.of(planned, verdict, runs.unproven()),
        check,
        notes,
        missed,
        planned);
  }

  /** The fastest cooling of all passes: it hardens most. */
  private static Optional<Computed> fastestCooling(List<RunPlan> runs) {
    return runs.stream()
        .flatMap(run -> run.passes().stream())
        .map(PassPlan::coolingTime)
        .min(Comparator.comparingDouble(Computed::value));
  }

  private Assessed assess(
      ShopMachine machine,
      Contact contact,
      JointNeeds needs,
      List<WeldLine> lines,
      SteelAtJoint steel,
      Part first) {
    double ambientC = weldment.surroundings().ambientC();
    return Assessed.of(
        lines,
        weldment.surroundings().canBeTurned(),
        position ->
            MachineAssessor.assess(
                machine.machine(), needs.task(contact, position, ambientC, steel, first)));
  }

  private Optional<ShopMachine> choose(Joint joint, List<MachineVerdict> verdicts) {
    Comparator<ShopMachine> best =
        Comparator.<ShopMachine, Verdict>comparing(m -> verdictOf(m, verdicts).verdict())
            .thenComparing(m -> !m.place().equals(ShopMachine.HERE));
    return weldment.machines().stream()
        .filter(m -> joint.machine().map(m.machine().name()::equals).orElse(true))
        .filter(m -> verdictOf(m, verdicts).verdict() != Verdict.NO)
        .filter(m -> verdictOf(m, verdicts).verdict() != Verdict.TACK_ONLY)
        .min(best);
  }

  private MachineVerdict verdictOf(ShopMachine machine, List<MachineVerdict> verdicts) {
    return verdicts.get(weldment.machines().indexOf(machine));
  }

  private JointPlan unwelded(
      Joint joint,
      Contact contact,
      EdgePreparation edges,
      JointNeeds needs,
      List<MachineVerdict> verdicts,
      SteelAtJoint steel,
      Optional<LoadCheck> check,
      List<String> notes,
      List<String> missed) {
    List<String> refused = new ArrayList<>(missed);
    refused.add("no machine of this shop can weld it");
    PreheatChoice preheat =
        PreheatChoice.of(
            steel,
            Hydrogen.mlPer100g(WeldingProcess.MMA),
            HeatSink.of(
                weldment.part(joint.first()),
                weldment.part(joint.second()),
                contact.form(),
                contact.lines()),
            1,
            weldment.surroundings().ambientC());
    return new JointPlan(
        joint,
        contact,
        edges,
        needs.size(),
        Optional.empty(),
        verdicts,
        Optional.empty(),
        steel.carbonEquivalents(),
        Optional.empty(),
        preheat.least(),
        new SteelAdvisor(steel, needs, weldment.surroundings().ambientC())
            .advice(List.of(), preheat, Optional.empty(), contact.form(), List.of()),
        Optional.empty(),
        check,
        notes,
        refused,
        List.of());
  }
}
