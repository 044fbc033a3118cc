package org.counterpull.report;

import static org.counterpull.report.JsonValues.computed;
import static org.counterpull.report.JsonValues.list;
import static org.counterpull.report.JsonValues.number;
import static org.counterpull.report.JsonValues.object;
import static org.counterpull.report.JsonValues.text;
import static org.counterpull.report.JsonValues.texts;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.concurrent.atomic.AtomicInteger;
import org.counterpull.order.Operation;
import org.counterpull.order.Precedence;
import org.counterpull.order.Timed;
import org.counterpull.plan.Plan;
import org.counterpull.plan.Plan.Caution;
import org.counterpull.plan.Plan.CheckPlan;
import org.counterpull.plan.Plan.Consumables;
import org.counterpull.plan.Plan.Cost;
import org.counterpull.plan.Plan.FillerUse;
import org.counterpull.plan.Plan.Preheat;
import org.counterpull.plan.Plan.Refusal;
import org.counterpull.weldment.Assumption;
import org.counterpull.weldment.Check;

/**
 * A plan as JSON, by {@code schema/plan.schema.json}. The order of keys is fixed, lines end in LF,
 * and nothing in it depends on when or where it was made.
 */
final class PlanJson {
  private static final ObjectMapper MAPPER =
      JsonMapper.builder().enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN).build();

  private final Plan plan;
  private final FormulasUsed formulas;

  PlanJson(Plan plan, FormulasUsed formulas) {
    this.plan = plan;
    this.formulas = formulas;
  }

  String write() {
    DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer =
        new DefaultPrettyPrinter().withObjectIndenter(indenter).withArrayIndenter(indenter);
    try {
      return MAPPER.writer(printer).writeValueAsString(tree()) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree of plain values can always be written", e);
    }
  }

  ObjectNode tree() {
    ObjectNode node = object();
    node.set("refusals", list(plan.refusals(), PlanJson::refusal));
    node.set("cautions", list(plan.cautions(), PlanJson::caution));
    node.put("weldment", plan.weldment().name());
    node.put("seed", plan.seed());
    node.set("assumptions", list(plan.weldment().assumptions(), PlanJson::assumption));
    node.set("joints", list(plan.joints(), JointJson::joint));
    AtomicInteger run = new AtomicInteger();
    node.set("runs", list(plan.runs(), r -> JointJson.run(r, run.incrementAndGet())));
    node.set("preheat", preheat(plan.preheat()));
    node.set(
        "machines", list(plan.weldment().machines(), m -> JointJson.machine(m, plan.joints())));
    node.set("operations", list(plan.operations(), PlanJson::operation));
    node.set("precedence", list(plan.precedence(), PlanJson::precedence));
    node.set("orderReasons", texts(plan.orderReasons()));
    node.set("consumables", consumables(plan.consumables()));
    node.set("cost", plan.cost().<JsonNode>map(PlanJson::cost).orElse(JsonValues.NODES.nullNode()));
    node.set("checks", list(plan.checks(), PlanJson::check));
    plan.shape().ifPresent(shape -> node.set("shape", PullJson.tree(shape)));
    node.set("heat", plan.heat().<JsonNode>map(HeatJson::of).orElse(JsonValues.NODES.nullNode()));
    node.set("practice", PracticeJson.of(plan.practice()));
    node.set("formulas", list(formulas.uses(), PlanJson::formula));
    return node;
  }

  private static ObjectNode refusal(Refusal refusal) {
    return object()
        .put("where", refusal.where())
        .put("why", refusal.why())
        .put("wayForward", refusal.wayForward());
  }

  private static ObjectNode caution(Caution caution) {
    return object()
        .put("id", caution.id())
        .put("text", caution.text())
        .put("because", caution.because())
        .put("basis", caution.basis());
  }

  private static ObjectNode assumption(Assumption assumption) {
    return object().put("where", assumption.where()).put("what", assumption.what());
  }

  private static ObjectNode preheat(Preheat preheat) {
    ObjectNode node = object();
    node.set("highest", computed(preheat.highest()));
    node.set("joints", texts(preheat.joints()));
    node.set("how", texts(preheat.how()));
    return node;
  }

  private static ObjectNode operation(Timed timed) {
    Operation operation = timed.operation();
    ObjectNode node = object();
    node.put("number", timed.number());
    node.put("id", operation.id());
    node.put("kind", operation.kind().words());
    node.put("what", operation.what());
    node.put("where", operation.where());
    node.set("run", text(operation.run()));
    node.put("place", operation.place());
    node.set("startS", number(timed.startS()));
    node.set("endS", number(timed.endS()));
    node.set("activeS", number(operation.activeS()));
    node.set("why", texts(operation.why()));
    node.set("cautions", texts(operation.cautions()));
    return node;
  }

  private static ObjectNode precedence(Precedence precedence) {
    return object()
        .put("earlier", precedence.earlier())
        .put("later", precedence.later())
        .put("rule", precedence.rule())
        .put("reason", precedence.reason())
        .put("hard", precedence.hard());
  }

  private static ObjectNode consumables(Consumables consumables) {
    ObjectNode node = object();
    node.set("fillers", list(consumables.fillers(), PlanJson::filler));
    node.set("gasLitres", computed(consumables.gasLitres()));
    node.set("energyKWh", computed(consumables.energyKWh()));
    node.set("weldMetalKg", computed(consumables.weldMetalKg()));
    node.set("massKg", computed(consumables.massKg()));
    node.set("arcS", number(consumables.arcS()));
    node.set("waitS", number(consumables.waitS()));
    node.set("elapsedS", number(consumables.elapsedS()));
    node.set("cutList", CutJson.of(consumables.cutList()));
    return node;
  }

  private static ObjectNode filler(FillerUse filler) {
    ObjectNode node = object();
    node.put("designation", filler.designation());
    node.set("diameterMm", number(filler.diameterMm()));
    node.set("depositedKg", number(filler.depositedKg()));
    node.set("kg", computed(filler.kg()));
    node.put("pieces", filler.pieces());
    return node;
  }

  private static ObjectNode cost(Cost cost) {
    ObjectNode node = object();
    node.put("currency", cost.currency());
    node.set("labour", computed(cost.labour()));
    node.set("filler", computed(cost.filler()));
    node.set("gas", computed(cost.gas()));
    node.set("energy", computed(cost.energy()));
    node.set("stock", computed(cost.stock()));
    node.set("total", computed(cost.total()));
    return node;
  }

  private static ObjectNode check(CheckPlan plan) {
    Check check = plan.check();
    ObjectNode node = object();
    node.put("name", check.name());
    node.put("kind", check.kind().word());
    node.set("subjects", list(check.subjects(), s -> JsonValues.NODES.textNode(Shown.subject(s))));
    node.set("targetMm", number(check.targetMm()));
    node.set("tolerance", computed(plan.toleranceMm()));
    node.set("expected", number(plan.expectedMm()));
    node.set("low", number(plan.lowMm()));
    node.set("high", number(plan.highMm()));
    return node;
  }

  private static ObjectNode formula(FormulasUsed.Use use) {
    ObjectNode node = object();
    node.put("name", use.name());
    node.put("gives", use.formula().gives());
    node.put("unit", use.formula().unit());
    node.put("source", use.formula().source());
    node.put("uses", use.numbers());
    node.set("warnings", texts(use.warnings()));
    return node;
  }
}
