package org.counterpull.report;

import static org.counterpull.report.JsonValues.computed;
import static org.counterpull.report.JsonValues.list;
import static org.counterpull.report.JsonValues.number;
import static org.counterpull.report.JsonValues.object;
import static org.counterpull.report.JsonValues.text;
import static org.counterpull.report.JsonValues.texts;

import com.fasterxml.jackson.databind.node.ObjectNode;
import org.counterpull.jointplan.LoadCheck;

/** The check of a loaded joint as JSON. */
final class LoadJson {
  private LoadJson() {}

  static ObjectNode check(LoadCheck check) {
    ObjectNode node = object();
    node.set("loadN", number(check.loadN()));
    node.put("at", check.at());
    node.set("utilisation", computed(check.utilisation()));
    node.put("governs", check.governs());
    node.set("ways", list(check.ways(), LoadJson::way));
    node.set("counted", computed(check.countedMm()));
    node.set("leastLeg", computed(check.leastLeg()));
    node.set("leastThroat", computed(check.leastThroat()));
    node.set("standOff", computed(check.standOffMm()));
    node.set("remarks", texts(check.remarks()));
    node.set("shortfall", text(check.shortfall()));
    node.put("remedy", check.remedy());
    return node;
  }

  private static ObjectNode way(LoadCheck.Way way) {
    ObjectNode node = object();
    node.put("direction", way.direction());
    node.set("lineForce", computed(way.lineForce()));
    node.set("simplified", computed(way.simplified()));
    node.set("directional", computed(way.directional()));
    node.set("allowable", computed(way.allowable()));
    node.set("besideWeld", computed(way.besideWeld()));
    return node;
  }
}
