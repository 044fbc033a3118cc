package org.counterpull.report;

import static org.counterpull.report.JsonValues.computed;
import static org.counterpull.report.JsonValues.list;
import static org.counterpull.report.JsonValues.number;
import static org.counterpull.report.JsonValues.object;
import static org.counterpull.report.JsonValues.texts;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.counterpull.order.AccessLost;
import org.counterpull.order.AppliedRule;
import org.counterpull.plan.Plan.Practice;
import org.counterpull.swing.SwingResult;

/** Rules that had a say, access that is lost, and what swings, as JSON. */
final class PracticeJson {
  private PracticeJson() {}

  static ObjectNode of(Practice practice) {
    ObjectNode node = object();
    node.set("rules", list(practice.rules(), PracticeJson::rule));
    node.set("accessLost", list(practice.accessLost(), PracticeJson::lost));
    node.set("swings", list(practice.swings(), PracticeJson::swing));
    node.set("pins", list(practice.pins(), PinJson::of));
    node.set("mounts", list(practice.mounts(), MountJson::answer));
    return node;
  }

  private static ObjectNode rule(AppliedRule rule) {
    return object()
        .put("id", rule.id())
        .put("when", rule.when())
        .put("relation", rule.relation())
        .put("reason", rule.reason())
        .put("hardness", rule.hardness().words())
        .put("times", rule.times())
        .put("source", rule.source());
  }

  private static ObjectNode lost(AccessLost lost) {
    return object()
        .put("place", lost.place())
        .put("tool", lost.tool())
        .put("doneAt", lost.doneAt())
        .put("blockedBy", lost.blockedBy())
        .put("lostAt", lost.lostAt());
  }

  private static ObjectNode swing(SwingResult swing) {
    ObjectNode node =
        object().put("name", swing.swing().name()).put("about", swing.swing().about());
    node.set("fromDeg", number(swing.swing().fromDeg()));
    node.set("toDeg", number(swing.swing().toDeg()));
    node.set("moving", texts(swing.moving()));
    node.set("massKg", number(swing.massKg()));
    node.set(
        "clash",
        swing.clash().<JsonNode>map(PracticeJson::clash).orElse(JsonValues.NODES.nullNode()));
    node.set("positions", list(swing.positions(), PracticeJson::position));
    node.set("grease", list(swing.grease(), PracticeJson::grease));
    node.set(
        "ports",
        swing.ports().<JsonNode>map(PracticeJson::ports).orElse(JsonValues.NODES.nullNode()));
    node.set(
        "faults",
        list(swing.faults(), f -> object().put("why", f.why()).put("wayForward", f.wayForward())));
    return node;
  }

  private static ObjectNode clash(SwingResult.Clash clash) {
    ObjectNode node = object();
    node.put("movingPart", clash.movingPart()).put("standingPart", clash.standingPart());
    node.set("angleDeg", number(clash.angleDeg()));
    return node;
  }

  private static ObjectNode position(SwingResult.Position position) {
    ObjectNode node = object();
    node.set("angleDeg", number(position.angleDeg()));
    node.set(
        "drive",
        position.drive().<JsonNode>map(PracticeJson::drive).orElse(JsonValues.NODES.nullNode()));
    return node;
  }

  private static ObjectNode drive(SwingResult.Drive drive) {
    ObjectNode node = object();
    node.set("pinToPinMm", number(drive.lengthMm()));
    node.set("leverArm", computed(drive.armMm()));
    node.set("push", computed(drive.pushN()));
    node.set("pull", computed(drive.pullN()));
    node.set("needed", computed(drive.neededN()));
    return node;
  }

  private static ObjectNode grease(SwingResult.Grease grease) {
    ObjectNode node = object().put("feature", grease.feature());
    node.set("reachedDeg", list(grease.reachedDeg(), JsonValues::number));
    node.set("blockedDeg", list(grease.blockedDeg(), JsonValues::number));
    node.set("blockedBy", texts(grease.blockedBy()));
    return node;
  }

  private static ObjectNode ports(SwingResult.Ports ports) {
    ObjectNode node = object().put("side", ports.side());
    node.set("roomMm", number(ports.roomMm()));
    node.put("worstSide", ports.worstSide());
    node.set("worstRoomMm", number(ports.worstRoomMm()));
    return node;
  }
}
