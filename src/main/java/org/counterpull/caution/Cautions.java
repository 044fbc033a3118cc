package org.counterpull.caution;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.order.StepTag;
import org.counterpull.order.Timed;
import org.counterpull.plan.Plan;
import org.counterpull.weldment.Weldment;

/** The cautions that come with the program, {@code cautions/cautions.yaml}, and which apply. */
public final class Cautions {
  private static final String RESOURCE = "/cautions/cautions.yaml";

  /** A caution with what brings it up. */
  record Row(
      String id, Trigger trigger, List<String> words, List<String> at, String text, String basis) {}

  private static final List<Row> ROWS = read();

  private Cautions() {}

  /** The cautions that apply to a job, in the order of the file: the general ones first. */
  public static List<Plan.Caution> apply(Weldment weldment, List<JointPlan> joints) {
    List<Plan.Caution> cautions = new ArrayList<>();
    for (Row row : ROWS) {
      row.trigger()
          .because(weldment, joints, row.words())
          .map(because -> new Plan.Caution(row.id(), row.text(), because, row.basis()))
          .ifPresent(cautions::add);
    }
    return List.copyOf(cautions);
  }

  /**
   * The operations with each caution repeated where it bites: at the first step of the first of its
   * sorts that the job has.
   */
  public static List<Timed> whereTheyBite(List<Timed> operations, List<Plan.Caution> cautions) {
    Map<Integer, List<String>> texts = new TreeMap<>();
    for (Plan.Caution caution : cautions) {
      // A caution that isn't a row of the file (of a mount, say) has no step of its own.
      ROWS.stream()
          .filter(r -> r.id().equals(caution.id()))
          .findFirst()
          .flatMap(row -> bites(operations, row))
          .ifPresent(i -> texts.computeIfAbsent(i, k -> new ArrayList<>()).add(caution.text()));
    }
    List<Timed> with = new ArrayList<>();
    for (int i = 0; i < operations.size(); i++) {
      Timed timed = operations.get(i);
      with.add(
          texts.containsKey(i)
              ? new Timed(
                  timed.number(),
                  timed.operation().withCautions(texts.get(i)),
                  timed.startS(),
                  timed.endS())
              : timed);
    }
    return with;
  }

  private static Optional<Integer> bites(List<Timed> operations, Row row) {
    for (String sort : row.at()) {
      String begin = sort.replace(' ', '-');
      for (int i = 0; i < operations.size(); i++) {
        String id = operations.get(i).operation().id();
        if (id.equals(begin) || id.startsWith(begin + ":")) {
          return Optional.of(i);
        }
      }
    }
    return Optional.empty();
  }

  static List<Row> rows() {
    return ROWS;
  }

  private static List<Row> read() {
    try (InputStream in = Cautions.class.getResourceAsStream(RESOURCE)) {
      List<Row> rows = new ArrayList<>();
      for (JsonNode row : new YAMLMapper().readTree(in)) {
        List<String> words = new ArrayList<>();
        row.path("words").forEach(word -> words.add(word.asText()));
        List<String> at = new ArrayList<>();
        row.required("at").forEach(sort -> at.add(StepTag.of(sort.asText()).words()));
        rows.add(
            new Row(
                row.required("id").asText(),
                Trigger.of(row.required("trigger").asText()),
                List.copyOf(words),
                List.copyOf(at),
                row.required("text").asText(),
                row.required("basis").asText()));
      }
      return List.copyOf(rows);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + RESOURCE, e);
    }
  }
}
