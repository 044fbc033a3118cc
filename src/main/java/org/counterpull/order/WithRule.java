package org.counterpull.order;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/**
 * A rule that goes with a run instead of putting it before something else.
 *
 * @param id stable identifier
 * @param circumstance when it applies
 * @param text what is done and why, a sentence
 * @param source where it stands
 */
record WithRule(String id, Circumstance circumstance, String text, String source) {
  private static final String RESOURCE = "/rules/with.yaml";

  private static final List<WithRule> RULES = read();

  /** The rules that come with the program, in the order of the file. */
  static List<WithRule> all() {
    return RULES;
  }

  private static List<WithRule> read() {
    try (InputStream in = WithRule.class.getResourceAsStream(RESOURCE)) {
      List<WithRule> rules = new ArrayList<>();
      for (JsonNode row : new YAMLMapper().readTree(in)) {
        rules.add(
            new WithRule(
                row.required("id").asText(),
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
