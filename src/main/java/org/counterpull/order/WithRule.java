package org.counterpull.order;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.counterpull.weldment.Weldment;

/**
 * A rule that goes with a step instead of putting it before something else.
 *
 * @param id stable identifier
 * @param when the circumstance in words
 * @param tag the sort of step that it goes with
 * @param circumstance when it applies
 * @param text what is done and why, a sentence
 * @param source where it stands
 */
record WithRule(
    String id, String when, StepTag tag, Circumstance circumstance, String text, String source) {
  private static final String RESOURCE = "/rules/with.yaml";

  private static final List<WithRule> RULES = read();

  /** The rules that come with the program, in the order of the file. */
  static List<WithRule> all() {
    return RULES;
  }

  /** What goes with a step that is no run, at some parts. */
  static List<String> texts(StepTag tag, Weldment weldment, Collection<String> parts) {
    return RULES.stream()
        .filter(rule -> rule.tag() == tag)
        .filter(rule -> rule.circumstance().holds(weldment, parts))
        .map(WithRule::text)
        .toList();
  }

  private static List<WithRule> read() {
    try (InputStream in = WithRule.class.getResourceAsStream(RESOURCE)) {
      List<WithRule> rules = new ArrayList<>();
      for (JsonNode row : new YAMLMapper().readTree(in)) {
        rules.add(
            new WithRule(
                row.required("id").asText(),
                row.required("when").asText(),
                StepTag.of(row.path("step").asText("weld")),
                Circumstance.of(row.required("circumstance").asText()),
                row.required("text").asText(),
                row.required("source").asText()));
      }
      return List.copyOf(rules);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + RESOURCE, e);
    }
  }
}
