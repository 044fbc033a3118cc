package org.counterpull.report;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.quantity.Computed;

/** Numbers, computed numbers and lists as JSON; numbers to six significant digits. */
final class JsonValues {
  static final JsonNodeFactory NODES = JsonNodeFactory.instance;
  private static final MathContext SIX_DIGITS = new MathContext(6, RoundingMode.HALF_EVEN);

  private JsonValues() {}

  static ObjectNode object() {
    return NODES.objectNode();
  }

  /** A number; null where it isn't finite, such as "no limit". */
  static JsonNode number(double value) {
    if (!Double.isFinite(value)) {
      return NODES.nullNode();
    }
    BigDecimal rounded = new BigDecimal(value).round(SIX_DIGITS);
    if (rounded.signum() == 0) {
      return NODES.numberNode(0);
    }
    BigDecimal bare = rounded.stripTrailingZeros();
    return NODES.numberNode(bare.scale() < 0 ? bare.setScale(0) : bare);
  }

  static JsonNode number(Optional<Double> value) {
    return value.map(JsonValues::number).orElse(NODES.nullNode());
  }

  /** A computed number; warnings only where there are any. */
  static JsonNode computed(Computed computed) {
    ObjectNode node = object();
    node.set("value", number(computed.value()));
    node.put("unit", computed.unit());
    node.put("formula", computed.formula().name());
    node.put("inRange", computed.inRange());
    if (!computed.warnings().isEmpty()) {
      node.set("warnings", texts(computed.warnings()));
    }
    return node;
  }

  static JsonNode computed(Optional<Computed> computed) {
    return computed.map(JsonValues::computed).orElse(NODES.nullNode());
  }

  static JsonNode text(Optional<String> text) {
    return text.<JsonNode>map(NODES::textNode).orElse(NODES.nullNode());
  }

  static ArrayNode texts(List<String> texts) {
    return list(texts, NODES::textNode);
  }

  static JsonNode point(Vector3D p) {
    return list(List.of(p.getX(), p.getY(), p.getZ()), JsonValues::number);
  }

  static <T> ArrayNode list(List<T> items, Function<T, ? extends JsonNode> each) {
    ArrayNode array = NODES.arrayNode();
    items.forEach(item -> array.add(each.apply(item)));
    return array;
  }
}
