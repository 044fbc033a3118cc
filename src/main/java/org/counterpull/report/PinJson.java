package org.counterpull.report;

import static org.counterpull.report.JsonValues.computed;
import static org.counterpull.report.JsonValues.list;
import static org.counterpull.report.JsonValues.number;
import static org.counterpull.report.JsonValues.object;
import static org.counterpull.report.JsonValues.text;
import static org.counterpull.report.JsonValues.texts;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import org.counterpull.fit.AxisZone;
import org.counterpull.plan.PinLoad;
import org.counterpull.plan.PinRow;

/** Rows of bores as JSON. */
final class PinJson {
  private PinJson() {}

  static ObjectNode of(PinRow row) {
    ObjectNode node = object().put("name", row.name()).put("hinge", row.hinge());
    node.set("boreMm", number(row.fit().boreMm()));
    node.set("pinMm", number(row.fit().pinMm()));
    node.put("turns", row.turns().words());
    node.set(
        "zoneRadius",
        row.fit()
            .zone()
            .<JsonNode>map(
                band -> {
                  ObjectNode zone = object();
                  zone.set("expectedMm", number(band.expected()));
                  zone.set("lowMm", number(band.low()));
                  zone.set("highMm", number(band.high()));
                  return zone;
                })
            .orElse(JsonValues.NODES.nullNode()));
    node.set("left", computed(row.fit().left()));
    node.set("leftAtWorst", computed(row.fit().leftAtWorst()));
    node.set("finish", finish(row.finish()));
    node.set("bores", list(row.bores(), PinJson::bore));
    node.set(
        "shares",
        list(
            row.shares(),
            s -> {
              ObjectNode share = object().put("run", s.run());
              share.set("mm", number(s.mm()));
              return share;
            }));
    node.set("warm", warm(row.warm()));
    node.set("bench", bench(row.bench()));
    node.set("load", row.load().<JsonNode>map(PinJson::load).orElse(JsonValues.NODES.nullNode()));
    return node;
  }

  private static ObjectNode finish(PinRow.Finish finish) {
    ObjectNode node = object().put("way", finish.way().words());
    node.set("stockMm", number(finish.stockMm()));
    node.set("beforeMm", number(finish.beforeMm()));
    return node;
  }

  private static ObjectNode bore(PinRow.Bore bore) {
    ObjectNode node =
        object().put("feature", bore.feature()).put("part", bore.part()).put("piece", bore.piece());
    node.set("fromMm", number(bore.fromMm()));
    node.set("toMm", number(bore.toMm()));
    node.set("left", off(bore.left()));
    node.set("right", off(bore.right()));
    node.set("closingMm", number(bore.closingMm()));
    node.set("movedMm", number(bore.movedMm()));
    return node;
  }

  private static JsonNode off(Optional<AxisZone.Off> off) {
    return off.<JsonNode>map(
            o -> {
              ObjectNode node = object();
              node.set("oneMm", number(o.oneMm()));
              node.set("otherMm", number(o.otherMm()));
              return node;
            })
        .orElse(JsonValues.NODES.nullNode());
  }

  private static ObjectNode warm(PinRow.Warm warm) {
    ObjectNode node = object();
    node.set("carrier", text(warm.carrier()));
    node.set("bindsAt", computed(warm.bindsAtK()));
    node.set("sidePlayMm", number(warm.sidePlayMm()));
    node.set("playGoneAtK", number(warm.playGoneAtK()));
    node.set("hottestC", number(warm.hottestC()));
    node.set("atLastPassC", number(warm.atLastArcC()));
    return node;
  }

  private static ObjectNode bench(PinRow.Bench bench) {
    ObjectNode node = object();
    node.set("rod", text(bench.rod()));
    node.set("rodMm", number(bench.rodMm()));
    node.put("spacer", bench.spacer());
    node.set("tackOrder", texts(bench.tackOrder()));
    node.set("turnAfter", list(bench.turnAfter(), JsonValues.NODES::numberNode));
    node.put("triedAt", bench.triedAt());
    node.set("grease", list(bench.grease(), PinJson::grease));
    return node;
  }

  private static ObjectNode grease(PinRow.Grease grease) {
    ObjectNode node =
        object().put("feature", grease.feature()).put("drilledAt", grease.drilledAt());
    node.set("fromSeamDeg", number(grease.fromSeamDeg()));
    node.set(
        "reached",
        grease
            .reached()
            .<JsonNode>map(JsonValues.NODES::booleanNode)
            .orElse(JsonValues.NODES.nullNode()));
    return node;
  }

  private static ObjectNode load(PinLoad load) {
    ObjectNode node = object().put("by", load.by());
    node.set("forceN", number(load.forceN()));
    node.set("designN", number(load.designN()));
    node.set("middleMm", number(load.middleMm()));
    node.set("outerMm", number(load.outerMm()));
    node.set("gapMm", number(load.gapMm()));
    node.set("weldLoadN", number(load.weldLoadN()));
    node.set(
        "uses",
        list(
            load.uses(),
            use -> {
              ObjectNode one = object().put("what", use.what());
              one.set("load", number(use.load()));
              one.set("allowed", number(use.allowed()));
              one.put("unit", use.unit());
              one.set("share", number(use.share()));
              one.put("source", use.source());
              return one;
            }));
    node.set("assumed", texts(load.assumed()));
    return node;
  }
}
