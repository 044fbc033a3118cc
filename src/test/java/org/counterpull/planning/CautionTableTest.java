package org.counterpull.planning;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.counterpull.plan.Plan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every caution has a weldment that brings it up and one that does not: rules/cautions.yaml. */
class CautionTableTest {
  private static final Path FOLDER = Path.of("src/test/resources/rules");
  private static final int CAUTIONS_OF_PRACTICE = 36;

  @TempDir Path folder;

  record Row(String id, JsonNode json) {
    @Override
    public String toString() {
      return id;
    }

    boolean always() {
      return json.path("always").asBoolean(false);
    }
  }

  static List<Row> rows() throws IOException {
    List<Row> rows = new ArrayList<>();
    for (JsonNode row : new YAMLMapper().readTree(FOLDER.resolve("cautions.yaml").toFile())) {
      rows.add(new Row(row.required("id").asText(), row));
    }
    return rows;
  }

  private Plan holds(Row row) throws IOException {
    String text = Files.readString(FOLDER.resolve(row.json().required("holds").asText() + ".yaml"));
    if (row.json().has("steel")) {
      text = text.replace("steel: S275JR", "steel: " + row.json().get("steel").asText());
    }
    Path file = folder.resolve("job.yaml");
    Files.writeString(file, text);
    return PlannedFile.of(file, row.json().path("add").asText(""), folder).plan();
  }

  private static List<String> ids(Plan plan) {
    return plan.cautions().stream().map(Plan.Caution::id).toList();
  }

  /** On the first page, and at the step where it bites when the job comes so far. */
  @ParameterizedTest
  @MethodSource("rows")
  void isSaidOnTheFirstPageAndWhereItBites(Row row) throws IOException {
    Plan plan = holds(row);
    assertThat(ids(plan)).contains(row.id());
    String text =
        plan.cautions().stream()
            .filter(c -> c.id().equals(row.id()))
            .findFirst()
            .orElseThrow()
            .text();
    boolean welded = !plan.runs().isEmpty();
    if (welded) {
      assertThat(plan.operations())
          .filteredOn(timed -> timed.operation().cautions().contains(text))
          .as("steps that repeat %s", row.id())
          .hasSize(1);
    }
  }

  @ParameterizedTest
  @MethodSource("rows")
  void staysAway(Row row) {
    if (row.always()) {
      assertThat(row.json().has("not")).isFalse();
      return;
    }
    Path file = FOLDER.resolve(row.json().required("not").asText() + ".yaml");
    assertThat(ids(PlannedFile.of(file).plan())).doesNotContain(row.id());
  }

  @Test
  void everyCautionOfPracticeHasARow() throws IOException {
    List<String> wanted =
        IntStream.rangeClosed(1, CAUTIONS_OF_PRACTICE).mapToObj("K%02d"::formatted).toList();
    assertThat(rows().stream().map(Row::id).toList()).containsAll(wanted).doesNotHaveDuplicates();
  }

  @Test
  void everyCautionOfTheDataHasARow() throws IOException {
    List<String> data = new ArrayList<>();
    Path file = Path.of("src/main/resources/cautions/cautions.yaml");
    new YAMLMapper().readTree(file.toFile()).forEach(row -> data.add(row.get("id").asText()));
    assertThat(rows().stream().map(Row::id).toList()).containsAll(data);
  }
}
