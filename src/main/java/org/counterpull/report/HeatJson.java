package org.counterpull.report;

import static org.counterpull.report.JsonValues.list;
import static org.counterpull.report.JsonValues.number;
import static org.counterpull.report.JsonValues.object;
import static org.counterpull.report.JsonValues.texts;

import com.fasterxml.jackson.databind.node.ObjectNode;
import org.counterpull.plan.PlanHeat;
import org.counterpull.plan.PlanHeat.PassStart;
import org.counterpull.plan.PlanHeat.Spot;

/** The temperatures of a plan as JSON. */
final class HeatJson {
  private HeatJson() {}

  static ObjectNode of(PlanHeat heat) {
    ObjectNode node = object();
    node.put("resolution", heat.resolution());
    node.put("cells", heat.cells());
    node.put("steps", heat.steps());
    node.set("imbalance", number(heat.imbalance()));
    node.set("starts", list(heat.starts(), HeatJson::start));
    node.set("places", list(heat.spots(), HeatJson::spot));
    node.set("notes", texts(heat.notes()));
    return node;
  }

  private static ObjectNode start(PassStart start) {
    ObjectNode node = object();
    node.put("run", start.run());
    node.put("pass", start.pass());
    node.set("startS", number(start.startS()));
    node.set("hottestC", number(start.hottestC()));
    node.set("coolestC", number(start.coolestC()));
    node.set("preheatC", number(start.preheatC()));
    node.set("interpassMaxC", number(start.interpassMaxC()));
    node.set("metalWaitS", number(start.waitS()));
    node.set("superposedWaitS", number(start.superposedS()));
    return node;
  }

  private static ObjectNode spot(Spot spot) {
    ObjectNode node = object();
    node.put("name", spot.name());
    node.put("kind", spot.feature() ? "feature" : "run");
    node.set("limitC", number(spot.limitC()));
    node.put("takenOut", spot.takenOut());
    node.set("peakC", number(spot.peakC()));
    node.set("peakS", number(spot.peakS()));
    node.set("aboveLimitS", number(spot.aboveS()));
    node.set("advice", texts(spot.advice()));
    node.set("timesS", list(spot.timesS(), JsonValues::number));
    node.set("tempsC", list(spot.tempsC(), JsonValues::number));
    return node;
  }
}
