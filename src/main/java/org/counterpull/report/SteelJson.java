package org.counterpull.report;

import static org.counterpull.report.JsonValues.computed;
import static org.counterpull.report.JsonValues.list;
import static org.counterpull.report.JsonValues.number;
import static org.counterpull.report.JsonValues.object;
import static org.counterpull.report.JsonValues.texts;

import com.fasterxml.jackson.databind.node.ObjectNode;
import org.counterpull.jointplan.Coupon;
import org.counterpull.jointplan.PreheatOpinion;
import org.counterpull.jointplan.SteelAdvice;

/** What the steels of a joint ask for, as JSON. */
final class SteelJson {
  private SteelJson() {}

  static ObjectNode of(SteelAdvice steel) {
    ObjectNode node = object();
    node.set("parts", list(steel.parts(), SteelJson::part));
    node.set("hardnesses", hardnesses(steel));
    node.set("preheats", list(steel.preheats(), SteelJson::opinion));
    node.set("heating", texts(steel.heating()));
    return node;
  }

  private static ObjectNode part(SteelAdvice.PartSteel part) {
    ObjectNode node = object();
    node.put("part", part.part());
    node.put("designation", part.designation());
    node.put("known", part.known());
    node.set("carbonEquivalents", list(part.equivalents(), JsonValues::computed));
    return node;
  }

  private static ObjectNode hardnesses(SteelAdvice steel) {
    ObjectNode node = object();
    steel
        .hardness()
        .ifPresent(
            h -> {
              node.set("t85S", number(h.t85S()));
              ObjectNode methods = node.putObject("byMethodHV10");
              h.estimates().byMethod().forEach((name, hv) -> methods.set(name, number(hv)));
              node.set("spreadHV10", number(h.estimates().spreadHV()));
            });
    return node;
  }

  private static ObjectNode opinion(PreheatOpinion opinion) {
    ObjectNode node = object();
    node.put("method", opinion.method());
    node.set("answer", computed(opinion.answer()));
    node.put("counts", opinion.counts());
    node.put("words", opinion.words());
    return node;
  }

  static ObjectNode coupon(Coupon coupon) {
    ObjectNode node = object();
    node.put("why", coupon.why());
    node.put("pieces", coupon.pieces());
    node.put("welded", coupon.welded());
    node.put("place", coupon.place());
    node.set("cut", texts(coupon.cut()));
    node.set("see", texts(coupon.see()));
    return node;
  }
}
