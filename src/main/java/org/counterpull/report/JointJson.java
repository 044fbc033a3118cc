package org.counterpull.report;

import static org.counterpull.report.JsonValues.computed;
import static org.counterpull.report.JsonValues.list;
import static org.counterpull.report.JsonValues.number;
import static org.counterpull.report.JsonValues.object;
import static org.counterpull.report.JsonValues.point;
import static org.counterpull.report.JsonValues.text;
import static org.counterpull.report.JsonValues.texts;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import org.counterpull.contact.LinePath;
import org.counterpull.feeding.TransferMode;
import org.counterpull.jointplan.EdgePreparation;
import org.counterpull.jointplan.Filler;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.PassPlan;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.jointplan.WeldSize;
import org.counterpull.machine.Figure;
import org.counterpull.machine.GateResult;
import org.counterpull.machine.Machine;
import org.counterpull.machine.MachineVerdict;
import org.counterpull.machine.Stretch;
import org.counterpull.power.DutyPoint;
import org.counterpull.weldment.ShopMachine;

/** Joints, runs and machines as JSON. */
final class JointJson {
  private JointJson() {}

  static ObjectNode joint(JointPlan joint) {
    ObjectNode node = object();
    node.put("name", joint.joint().name());
    node.set("between", texts(List.of(joint.joint().first(), joint.joint().second())));
    node.put("form", joint.contact().form().word());
    node.set("contactAreaMm2", number(joint.contact().areaMm2()));
    node.set("gapMm", number(joint.contact().gapMm()));
    node.set("preparation", preparation(joint.preparation()));
    node.set("size", size(joint.size()));
    node.set("machine", text(joint.machine()));
    node.set("filler", joint.filler().map(JointJson::filler).orElse(JsonValues.NODES.nullNode()));
    node.set("carbonEquivalents", list(joint.carbonEquivalents(), JsonValues::computed));
    node.set("hardness", computed(joint.hardness()));
    node.set("preheat", computed(joint.preheat()));
    node.set("steel", SteelJson.of(joint.steel()));
    node.set(
        "testPiece",
        joint.coupon().<JsonNode>map(SteelJson::coupon).orElse(JsonValues.NODES.nullNode()));
    node.set(
        "load",
        joint.loadCheck().<JsonNode>map(LoadJson::check).orElse(JsonValues.NODES.nullNode()));
    node.set("notes", texts(joint.notes()));
    node.set("refusals", texts(joint.refusals()));
    node.set("runs", texts(joint.runs().stream().map(RunPlan::name).toList()));
    return node;
  }

  private static ObjectNode preparation(EdgePreparation preparation) {
    ObjectNode node = object();
    node.put("kind", preparation.kind().words());
    node.set("firstDepthMm", number(preparation.firstDepthMm()));
    node.set("secondDepthMm", number(preparation.secondDepthMm()));
    node.set("angleDeg", number(preparation.angleDeg()));
    node.set("rootFaceMm", number(preparation.rootFaceMm()));
    node.set("rootGapMm", number(preparation.rootGapMm()));
    node.put("bevelledPart", preparation.bevelledPart());
    node.put("how", preparation.how());
    node.put("reason", preparation.reason());
    node.put("source", preparation.source());
    return node;
  }

  private static ObjectNode size(WeldSize size) {
    ObjectNode node = object();
    node.set("leg", computed(size.leg()));
    node.set("throat", computed(size.throat()));
    node.put("given", size.given());
    node.put("reason", size.reason());
    return node;
  }

  private static JsonNode filler(Filler filler) {
    ObjectNode node = object();
    node.put("designation", filler.designation());
    node.set("diameterMm", number(filler.diameterMm()));
    node.put("gas", filler.gas());
    node.put("polarity", filler.polarity());
    node.put("storage", filler.storage());
    return node;
  }

  static ObjectNode run(RunPlan run, int number) {
    ObjectNode node = object();
    node.put("number", number);
    node.put("name", run.name());
    node.put("joint", run.line().joint());
    node.put("side", run.line().side().word());
    node.set("start", point(run.line().path().start()));
    node.set("end", point(run.line().path().end()));
    node.put("path", pathWord(run.line().path()));
    node.set("lengthMm", number(run.line().path().lengthMm()));
    node.set("weldedMm", number(run.weldedMm()));
    node.put("machine", run.machine());
    node.put("place", run.place());
    node.put("process", run.process().word());
    node.set("transfer", text(run.transfer().map(TransferMode::word)));
    node.put("position", run.position().name());
    node.put("lies", run.lay().words());
    node.put("procedure", run.procedure());
    node.set("filler", filler(run.filler()));
    node.set("preheatC", computed(run.preheatC()));
    node.set("interpassMaxC", number(run.interpassMaxC()));
    node.set("arcTimeS", number(run.arcTimeS()));
    node.set("netHeatJPerMm", number(run.netHeatJPerMm()));
    node.set("passes", list(run.passes(), JointJson::pass));
    return node;
  }

  private static String pathWord(LinePath path) {
    return path instanceof LinePath.Arc ? "arc" : "straight";
  }

  private static ObjectNode pass(PassPlan pass) {
    ObjectNode node = object();
    node.put("number", pass.number());
    node.put("layer", pass.layer());
    node.put("kind", pass.kind().word());
    node.set("area", computed(pass.area()));
    node.set("currentA", number(pass.currentA()));
    node.set("voltageV", number(pass.voltageV()));
    node.set("travelMmPerS", number(pass.travelMmPerS()));
    node.set("wireFeed", computed(pass.wireFeed()));
    node.set("arcEnergy", computed(pass.arcEnergy()));
    node.set("heatInput", computed(pass.heatInput()));
    node.set("netHeat", computed(pass.netHeat()));
    node.set("coolingTime", computed(pass.coolingTime()));
    node.set("arcTimeS", number(pass.arcTimeS()));
    return node;
  }

  /** A machine with what it can make of each joint; its own verdict is the worst of them. */
  static ObjectNode machine(ShopMachine shop, List<JointPlan> joints) {
    Machine machine = shop.machine();
    ObjectNode node = object();
    node.put("name", machine.name());
    node.put("place", shop.place());
    node.set("processes", list(machine.processes(), p -> JsonValues.NODES.textNode(p.word())));
    node.set("smallestCurrentA", number(machine.smallestCurrentA()));
    node.set("largestCurrentA", number(machine.largestCurrentA()));
    node.set("duty", list(machine.duty().points(), JointJson::duty));
    node.set("supplyV", number(machine.supply().voltageV()));
    node.set("breakerA", number(machine.supply().breakerA()));
    node.put("phases", machine.supply().phases());
    node.set("verdict", text(Verdicts.worst(machine.name(), joints).map(v -> v.word())));
    node.set(
        "verdicts",
        list(
            joints.stream().filter(j -> Verdicts.of(machine.name(), j).isPresent()).toList(),
            j -> verdict(j, Verdicts.of(machine.name(), j).orElseThrow())));
    return node;
  }

  private static ObjectNode duty(DutyPoint point) {
    ObjectNode node = object();
    node.set("currentA", number(point.currentA()));
    node.set("percent", number(point.dutyPercent()));
    return node;
  }

  private static ObjectNode verdict(JointPlan joint, MachineVerdict verdict) {
    ObjectNode node = object();
    node.put("joint", joint.joint().name());
    node.put("chosen", joint.machine().equals(Optional.of(verdict.machine())));
    node.put("verdict", verdict.verdict().word());
    node.put("preparation", verdict.preparation().words());
    node.put("passes", verdict.preparation().passes());
    node.set(
        "preheatC",
        number(verdict.preheatC().isPresent() ? verdict.preheatC().getAsDouble() : Double.NaN));
    node.set("waitSPerM", number(verdict.waitSPerM()));
    node.set("fusedInOnePassMm", number(verdict.fusedInOnePassMm()));
    node.set("notChilledUpToMm", number(verdict.notChilledUpToMm()));
    node.set("gates", list(verdict.gates(), JointJson::gate));
    node.set("wouldChange", texts(verdict.whatWouldChangeIt()));
    node.set("stretch", texts(Stretch.of(verdict)));
    node.set("notes", texts(verdict.notes()));
    return node;
  }

  private static ObjectNode gate(GateResult gate) {
    ObjectNode node = object();
    node.put("name", gate.name());
    node.put("outcome", Verdicts.outcomeWords(gate.outcome()));
    node.put("why", gate.why());
    node.put("wouldChange", gate.wouldChange());
    node.set("figures", list(gate.figures(), JointJson::figure));
    return node;
  }

  private static ObjectNode figure(Figure figure) {
    ObjectNode node = object();
    node.put("name", figure.name());
    node.set("value", number(figure.value()));
    node.put("unit", figure.unit());
    return node;
  }
}
