package org.counterpull.order;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.counterpull.weldment.Weldment;

/** The rules of order that come with the program: {@code rules/order.yaml}. */
final class OrderRules {
  private static final String RESOURCE = "/rules/order.yaml";

  private static final List<OrderRule> RULES = read();

  private OrderRules() {}

  /** In the order of the file, which is the order in which preferences are tried. */
  static List<OrderRule> all() {
    return RULES;
  }

  /** The same, and behind them the weldment's own. */
  static List<OrderRule> with(Weldment weldment) {
    List<OrderRule> rules = new ArrayList<>(RULES);
    weldment.rules().stream().map(AppliedRules::own).forEach(rules::add);
    return rules;
  }

  /** True for a rule whose reason the steps repeat; the file's own rules are told. */
  static boolean told(String id) {
    return RULES.stream().filter(rule -> rule.id().equals(id)).allMatch(OrderRule::told);
  }

  private static List<OrderRule> read() {
    try (InputStream in = OrderRules.class.getResourceAsStream(RESOURCE)) {
      List<OrderRule> rules = new ArrayList<>();
      for (JsonNode row : new YAMLMapper().readTree(in)) {
        rules.add(rule(row));
      }
      return List.copyOf(rules);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + RESOURCE, e);
    }
  }

  private static OrderRule rule(JsonNode row) {
    return new OrderRule(
        row.required("id").asText(),
        row.required("when").asText(),
        StepTag.of(row.required("earlier").asText()),
        StepTag.of(row.required("later").asText()),
        Match.of(row.required("match").asText()),
        row.required("reason").asText(),
        row.required("hard").asBoolean(),
        row.path("except").asText("").equals("early"),
        row.path("told").asBoolean(true),
        row.required("source").asText(),
        row.path("remedy").asText(""));
  }
}
