package org.counterpull.report;

import java.util.List;
import org.counterpull.jointplan.Coupon;
import org.counterpull.jointplan.EdgePreparation;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.PreheatOpinion;
import org.counterpull.jointplan.SteelAdvice;
import org.counterpull.jointplan.WeldSize;
import org.counterpull.machine.GateResult;
import org.counterpull.machine.MachineVerdict;
import org.counterpull.machine.PreparationChoice;
import org.counterpull.order.Operation;
import org.counterpull.order.Timed;
import org.counterpull.plan.Plan;
import org.counterpull.quantity.LengthUnit;

/** A plan whose sentences speak in the units of its file; its figures stay as they are. */
final class PlanInFileUnits {
  private final Sentences sentences;

  private PlanInFileUnits(Sentences sentences) {
    this.sentences = sentences;
  }

  static Plan of(Plan plan, LengthUnit fileUnits) {
    return new PlanInFileUnits(new Measures(fileUnits).sentences()).plan(plan);
  }

  private Plan plan(Plan plan) {
    return new Plan(
        plan.weldment(),
        plan.seed(),
        plan.refusals().stream().map(this::refusal).toList(),
        plan.cautions().stream().map(this::caution).toList(),
        plan.joints().stream().map(this::joint).toList(),
        plan.runs(),
        new Plan.Preheat(
            plan.preheat().highest(), plan.preheat().joints(), sentences.of(plan.preheat().how())),
        plan.operations().stream().map(this::timed).toList(),
        plan.precedence(),
        sentences.of(plan.orderReasons()),
        plan.consumables(),
        plan.cost(),
        plan.checks(),
        plan.practice(),
        plan.heat(),
        plan.shape());
  }

  private Plan.Refusal refusal(Plan.Refusal r) {
    return new Plan.Refusal(r.where(), sentences.of(r.why()), sentences.of(r.wayForward()));
  }

  private Plan.Caution caution(Plan.Caution c) {
    return new Plan.Caution(c.id(), sentences.of(c.text()), sentences.of(c.because()), c.basis());
  }

  private Timed timed(Timed timed) {
    Operation o = timed.operation();
    Operation said =
        new Operation(
            o.id(),
            o.kind(),
            sentences.of(o.what()),
            o.where(),
            o.place(),
            sentences.of(o.why()),
            sentences.of(o.cautions()),
            o.activeS(),
            o.run());
    return new Timed(timed.number(), said, timed.startS(), timed.endS());
  }

  private JointPlan joint(JointPlan j) {
    return new JointPlan(
        j.joint(),
        j.contact(),
        preparation(j.preparation()),
        new WeldSize(
            j.size().leg(), j.size().throat(), j.size().given(), sentences.of(j.size().reason())),
        j.filler(),
        j.verdicts().stream().map(this::verdict).toList(),
        j.machine(),
        j.carbonEquivalents(),
        j.hardness(),
        j.preheat(),
        steel(j.steel()),
        j.coupon().map(this::coupon),
        j.loadCheck(),
        sentences.of(j.notes()),
        sentences.of(j.refusals()),
        j.runs());
  }

  private EdgePreparation preparation(EdgePreparation p) {
    return new EdgePreparation(
        p.kind(),
        p.firstDepthMm(),
        p.secondDepthMm(),
        p.angleDeg(),
        p.rootFaceMm(),
        p.rootGapMm(),
        p.rootRadiusMm(),
        p.bevelledPart(),
        sentences.of(p.backing()),
        p.gouged(),
        sentences.of(p.how()),
        sentences.of(p.reason()),
        p.source());
  }

  private MachineVerdict verdict(MachineVerdict v) {
    return new MachineVerdict(
        v.verdict(),
        v.machine(),
        v.task(),
        v.point(),
        v.gates().stream().map(this::gate).toList(),
        new PreparationChoice(
            sentences.of(v.preparation().words()),
            v.preparation().groove(),
            v.preparation().passes()),
        v.preheatC(),
        v.arcTimeSPerM(),
        v.waitSPerM(),
        v.fusedInOnePassMm(),
        v.notChilledUpToMm(),
        sentences.of(v.notes()));
  }

  private GateResult gate(GateResult g) {
    return new GateResult(
        g.name(), g.outcome(), g.figures(), sentences.of(g.why()), sentences.of(g.wouldChange()));
  }

  private SteelAdvice steel(SteelAdvice s) {
    List<SteelAdvice.Forbidden> forbidden =
        s.forbidden().stream()
            .map(
                f -> new SteelAdvice.Forbidden(sentences.of(f.why()), sentences.of(f.wayForward())))
            .toList();
    return new SteelAdvice(
        s.parts(),
        s.hardness(),
        s.preheats().stream()
            .map(o -> new PreheatOpinion(o.method(), o.answer(), sentences.of(o.words())))
            .toList(),
        s.tackPreheat(),
        sentences.of(s.heating()),
        forbidden);
  }

  private Coupon coupon(Coupon c) {
    return new Coupon(
        c.likeness(),
        c.chillMmPerKJ(),
        sentences.of(c.why()),
        sentences.of(c.pieces()),
        sentences.of(c.welded()),
        c.place(),
        sentences.of(c.cut()),
        sentences.of(c.see()));
  }
}
