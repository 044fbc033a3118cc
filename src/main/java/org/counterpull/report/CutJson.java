package org.counterpull.report;

import static org.counterpull.report.JsonValues.list;
import static org.counterpull.report.JsonValues.number;
import static org.counterpull.report.JsonValues.object;
import static org.counterpull.report.JsonValues.texts;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.counterpull.plan.CutList;

/** The cutting list as JSON. */
final class CutJson {
  private CutJson() {}

  static ObjectNode of(CutList list) {
    ObjectNode node = object();
    node.set("cuts", list(list.cuts(), CutJson::cut));
    node.set("bars", list(list.bars(), CutJson::bars));
    return node;
  }

  private static ObjectNode cut(CutList.Cut cut) {
    ObjectNode node = object();
    node.put("stock", cut.stock());
    node.put("steel", cut.steel());
    node.set("parts", texts(cut.parts()));
    node.set("drawnMm", number(cut.drawnMm()));
    node.set("gapMm", number(cut.gapMm()));
    node.set("shrinkageMm", number(cut.shrinkageMm()));
    node.set("cutMm", number(cut.cutMm()));
    node.set("kg", number(cut.kg()));
    return node;
  }

  private static ObjectNode bars(CutList.Bars bars) {
    ObjectNode node = object();
    node.put("stock", bars.stock());
    node.put("steel", bars.steel());
    node.set("barMm", number(bars.barMm()));
    node.set("kerfMm", number(bars.kerfMm()));
    node.set("lengthsMm", list(bars.lengthsMm(), CutJson::numbers));
    node.set("tooLongMm", numbers(bars.tooLongMm()));
    node.put("leastPossible", bars.leastPossible());
    node.set("kg", number(bars.kg()));
    return node;
  }

  private static JsonNode numbers(List<Double> values) {
    ArrayNode array = JsonValues.NODES.arrayNode();
    values.forEach(v -> array.add(number(v)));
    return array;
  }
}
