package org.counterpull.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import org.counterpull.plan.PullAnswer;
import org.counterpull.plan.PullAnswer.Band;
import org.counterpull.plan.PullAnswer.CheckAnswer;
import org.counterpull.plan.PullAnswer.Compared;
import org.counterpull.plan.PullAnswer.Preset;
import org.counterpull.plan.PullAnswer.Slender;
import org.counterpull.plan.PullAnswer.Turn;
import org.counterpull.plan.PullAnswer.Wanted;

/** What welding does to a shape, in numbers. */
final class PullJson {
  private PullJson() {}

  static ObjectNode tree(PullAnswer answer) {
    ObjectNode node = JsonValues.object();
    node.put("weldment", answer.weldment().name());
    node.put("order", answer.order().word());
    answer
        .search()
        .ifPresent(
            search ->
                node.putObject("search")
                    .put("proved", search.proved())
                    .put("evaluations", search.evaluations())
                    .put("seed", search.seed())
                    .put("interrupted", search.interrupted()));
    ArrayNode checks = node.putArray("checks");
    answer.checks().forEach(check -> check(checks.addObject(), check));
    ArrayNode orders = node.putArray("orders");
    answer.orders().forEach(order -> order(orders.addObject(), order));
    ArrayNode sequence = node.putArray("sequence");
    for (Turn turn : answer.sequence()) {
      sequence.addObject().put("run", turn.run()).put("reversed", turn.reversed());
    }
    ArrayNode runs = node.putArray("runs");
    answer.runs().forEach(run -> run(runs.addObject(), run));
    ArrayNode parts = node.putArray("parts");
    answer.parts().forEach(part -> parts.addObject().put("part", part.part()).put("as", part.as()));
    ArrayNode slender = node.putArray("buckling");
    answer.slender().forEach(thin -> slender(slender.addObject(), thin));
    answer.notes().forEach(node.putArray("notes")::add);
    return node;
  }

  private static void check(ObjectNode node, CheckAnswer check) {
    node.put("name", check.check().name()).put("kind", check.check().kind().word());
    put(node, "toleranceMm", check.toleranceMm());
    node.put("verdict", check.verdict().name().toLowerCase(Locale.ROOT));
    if (!check.untold().isEmpty()) {
      node.put("untold", check.untold());
    }
    band(node.putObject("held"), check.held());
    band(node.putObject("released"), check.released());
    ArrayNode shares = node.putArray("shares");
    check
        .shares()
        .forEach(
            share -> {
              ObjectNode one = shares.addObject().put("run", share.run());
              put(one, "mm", share.mm());
            });
    ArrayNode presets = node.putArray("presets");
    for (Preset preset : check.presets()) {
      ObjectNode one = presets.addObject().put("part", preset.part()).put("where", preset.where());
      ArrayNode offset = one.putArray("offsetMm");
      for (double mm : preset.offset().toArray()) {
        offset.add(JsonValues.number(mm));
      }
    }
    band(node.putObject("withPresets"), check.withPresets());
    ArrayNode remedies = node.putArray("remedies");
    check
        .remedies()
        .forEach(
            remedy ->
                band(
                    remedies.addObject().put("what", remedy.what()).putObject("leaves"),
                    remedy.leaves()));
  }

  private static void band(ObjectNode node, Band band) {
    put(node, "expectedMm", band.expected());
    put(node, "lowMm", band.low());
    put(node, "highMm", band.high());
  }

  private static void order(ObjectNode node, Compared order) {
    node.put("order", order.order().word());
    ArrayNode expected = node.putArray("expectedMm");
    order.expectedMm().forEach(mm -> expected.add(JsonValues.number(mm)));
    put(node, "worst", order.worst());
    put(node, "handlingMin", order.handlingMin());
  }

  private static void run(ObjectNode node, Wanted run) {
    node.put("run", run.run());
    put(node, "netHeatJPerMm", run.netHeatJPerMm());
    put(node, "closingMm", run.closingMm());
    put(node, "acrossMm", run.acrossMm());
    put(node, "angleRad", run.angleRad());
    put(node, "alongN", run.alongN());
    node.put("basis", run.basis());
    run.beyond().forEach(node.putArray("beyond")::add);
  }

  private static void slender(ObjectNode node, Slender thin) {
    node.put("part", thin.part());
    put(node, "forceN", thin.forceN());
    put(node, "limitN", thin.limitN());
    put(node, "stressMPa", thin.stressMPa());
    node.put("buckles", thin.buckles());
  }

  private static void put(ObjectNode node, String key, double value) {
    node.set(key, JsonValues.number(value));
  }
}
