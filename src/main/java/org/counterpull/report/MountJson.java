package org.counterpull.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import org.counterpull.mount.BoreFigure;
import org.counterpull.mount.BoreMovement;
import org.counterpull.mount.HeatFigures;
import org.counterpull.mount.LugHole;
import org.counterpull.mount.MountAnswer;
import org.counterpull.mount.MountCase;
import org.counterpull.mount.Sleeve;
import org.counterpull.mount.Span;
import org.counterpull.mount.StrengthUse;
import org.counterpull.mount.Warmth;
import org.counterpull.mount.WayAnswer;

/** {@code mount.json}. */
final class MountJson {
  private static final ObjectMapper MAPPER =
      new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

  private MountJson() {}

  static String of(List<MountAnswer> answers, List<String> leftOut) {
    ObjectNode root = JsonValues.object();
    root.set("mounts", JsonValues.list(answers, MountJson::answer));
    root.set("leftOut", JsonValues.texts(leftOut));
    try {
      return MAPPER.writeValueAsString(root) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a JSON tree could not be written", e);
    }
  }

  /** One mount. */
  static JsonNode answer(MountAnswer answer) {
    ObjectNode node = JsonValues.object();
    MountCase mount = answer.mount();
    node.put("name", mount.name());
    ObjectNode tube = node.putObject("tube");
    tube.set("outsideMm", JsonValues.number(mount.tube().outsideMm()));
    tube.set("wallMm", JsonValues.number(mount.tube().wallMm()));
    tube.set("insideMm", JsonValues.number(mount.tube().insideMm()));
    tube.set("fadingMm", JsonValues.number(mount.tube().fadingMm()));
    node.put("taken", answer.taken().word());
    node.set("verdict", JsonValues.texts(answer.verdict()));
    node.set("notKnown", JsonValues.texts(answer.unknown()));
    node.set("assumed", JsonValues.texts(mount.assumptions()));
    answer.hole().ifPresent(h -> node.set("hole", hole(h)));
    node.set("ways", JsonValues.list(answer.ways(), MountJson::way));
    return node;
  }

  private static JsonNode hole(LugHole hole) {
    ObjectNode node = JsonValues.object();
    node.set("pinMm", JsonValues.number(hole.pin().pinMm()));
    node.set("holeMm", JsonValues.number(hole.pin().holeMm()));
    node.set("offsetMm", span(hole.offsetMm()));
    node.set("tiltMm", span(hole.tiltMm()));
    node.set("clearanceMm", JsonValues.number(hole.clearanceMm()));
    node.set("drillBeforeMm", JsonValues.number(hole.pilotMm()));
    node.set("strength", JsonValues.list(hole.uses(), MountJson::strength));
    return node;
  }

  private static JsonNode way(WayAnswer way) {
    ObjectNode node = JsonValues.object();
    node.put("way", way.way().word());
    node.put("outcome", way.outcome().word());
    way.heat().ifPresent(h -> node.set("heat", heat(h)));
    node.set("bores", JsonValues.list(way.bores(), MountJson::bore));
    node.set("strength", JsonValues.list(way.strength(), MountJson::strength));
    node.set("parts", JsonValues.texts(way.parts()));
    way.sleeve().ifPresent(s -> node.set("sleeve", sleeve(s)));
    node.put("passes", way.passes());
    node.set("minutes", JsonValues.number(way.minutes()));
    node.set("before", JsonValues.texts(way.before()));
    node.set("after", JsonValues.texts(way.after()));
    node.set("deciding", JsonValues.texts(way.deciding()));
    return node;
  }

  private static JsonNode heat(HeatFigures heat) {
    ObjectNode node = JsonValues.object();
    node.set("borePeakC", JsonValues.number(heat.borePeakC()));
    node.set("weldedS", JsonValues.number(heat.weldedS()));
    node.set("arcS", JsonValues.number(heat.arcS()));
    node.put("cells", heat.cells());
    node.put("cellsThroughWall", heat.cellsThroughWall());
    node.set("imbalance", JsonValues.number(heat.imbalance()));
    node.set("near", JsonValues.list(heat.near(), MountJson::warmth));
    return node;
  }

  private static JsonNode warmth(Warmth warm) {
    ObjectNode node = JsonValues.object();
    node.put("what", warm.what());
    node.set("peakC", JsonValues.number(warm.peakC()));
    node.set("longC", JsonValues.number(warm.limit().map(l -> l.longC())));
    node.set("shortC", JsonValues.number(warm.limit().map(l -> l.shortC())));
    node.set("overS", JsonValues.number(warm.overS()));
    node.put("spoilt", warm.spoilt());
    return node;
  }

  private static JsonNode bore(BoreFigure bore) {
    ObjectNode node = JsonValues.object();
    BoreMovement moved = bore.movement();
    node.put("what", bore.what());
    node.set("changeMm", span(moved.changeMm()));
    node.set("inwardMm", span(moved.inwardMm()));
    node.set("meanMm", JsonValues.number(moved.meanMm()));
    node.set("outOfRoundMm", JsonValues.number(moved.outOfRoundMm()));
    node.set("dentMm", JsonValues.number(moved.dentMm()));
    node.set("bandMm", JsonValues.number(bore.bandMm()));
    node.set("accept", JsonValues.text(bore.accept().map(a -> a.words())));
    node.set("clearanceMm", JsonValues.number(bore.clearanceMm()));
    node.put("through", bore.through().words());
    return node;
  }

  private static JsonNode span(Span span) {
    ObjectNode node = JsonValues.object();
    node.set("low", JsonValues.number(span.low()));
    node.set("value", JsonValues.number(span.value()));
    node.set("high", JsonValues.number(span.high()));
    return node;
  }

  private static JsonNode strength(StrengthUse use) {
    ObjectNode node = JsonValues.object();
    node.put("what", use.what()).put("load", use.load()).put("allowable", use.allowable());
    node.set("use", JsonValues.number(use.use()));
    node.put("source", use.source());
    return node;
  }

  private static JsonNode sleeve(Sleeve sleeve) {
    ObjectNode node = JsonValues.object();
    node.set("lengthMm", JsonValues.number(sleeve.lengthMm()));
    node.set("wallMm", JsonValues.number(sleeve.wallMm()));
    node.set("gapMm", JsonValues.number(sleeve.gapMm()));
    node.set("ringMm", JsonValues.number(sleeve.ringZMm().or(Optional::empty)));
    return node;
  }
}
