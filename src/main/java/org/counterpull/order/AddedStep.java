package org.counterpull.order;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/**
 * A step that practice wants on an occasion, as data.
 *
 * @param id of the rule that wants it
 * @param when the occasion in words
 * @param occasion where it is wanted
 * @param words that an occasion of words looks for
 * @param tag what sort of step
 * @param name of its subject where the occasion gives none
 * @param what is done; {@code {x}} stands for what was found
 * @param reason why, a sentence
 * @param source where it stands
 */
record AddedStep(
    String id,
    String when,
    Occasion occasion,
    List<String> words,
    StepTag tag,
    String name,
    String what,
    String reason,
    String source) {
  private static final String RESOURCE = "/rules/steps.yaml";

  private static final List<AddedStep> ALL = read();

  /** Those that come with the program, in the order of the file. */
  static List<AddedStep> all() {
    return ALL;
  }

  /** Adds the steps of every occasion that this weldment gives. */
  static void add(Steps all) {
    for (AddedStep added : ALL) {
      for (Occasion.Place place : added.occasion().places(all, added.words())) {
        String subject = place.subject().isEmpty() ? added.name() : place.subject();
        all.add(
            new Steps.Draft(
                    added.tag(), subject, added.what().replace("{x}", place.found()), place.where())
                .parts(place.parts())
                .subject(subject)
                .why(added.why(all, place.parts()))
                .cause(added.id()));
      }
    }
  }

  private List<String> why(Steps all, List<String> parts) {
    List<String> sentences = new ArrayList<>(List.of(reason));
    sentences.addAll(WithRule.texts(tag, all.weldment(), parts));
    return sentences;
  }

  private static List<AddedStep> read() {
    try (InputStream in = AddedStep.class.getResourceAsStream(RESOURCE)) {
      List<AddedStep> all = new ArrayList<>();
      for (JsonNode row : new YAMLMapper().readTree(in)) {
        List<String> words = new ArrayList<>();
        row.path("words").forEach(word -> words.add(word.asText()));
        all.add(
            new AddedStep(
                row.required("id").asText(),
                row.required("when").asText(),
                Occasion.of(row.required("occasion").asText()),
                List.copyOf(words),
                StepTag.of(row.required("step").asText()),
                row.path("name").asText(""),
                row.required("do").asText(),
                row.required("reason").asText(),
                row.required("source").asText()));
      }
      return List.copyOf(all);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + RESOURCE, e);
    }
  }
}
