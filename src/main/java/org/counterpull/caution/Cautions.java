package org.counterpull.caution;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.plan.Plan;
import org.counterpull.weldment.Weldment;

/** The cautions that come with the program, {@code cautions/cautions.yaml}, and which apply. */
public final class Cautions {
  private static final String RESOURCE = "/cautions/cautions.yaml";

  /** A caution with what brings it up. */
  record Row(String id, Trigger trigger, List<String> words, String text, String basis) {}

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

  static List<Row> rows() {
    return ROWS;
  }

  private static List<Row> read() {
    try (InputStream in = Cautions.class.getResourceAsStream(RESOURCE)) {
      List<Row> rows = new ArrayList<>();
      for (JsonNode row : new YAMLMapper().readTree(in)) {
        List<String> words = new ArrayList<>();
        row.path("words").forEach(word -> words.add(word.asText()));
        rows.add(
            new Row(
                row.required("id").asText(),
                Trigger.of(row.required("trigger").asText()),
                List.copyOf(words),
                row.required("text").asText(),
                row.required("basis").asText()));
      }
      return List.copyOf(rows);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + RESOURCE, e);
    }
  }
}
