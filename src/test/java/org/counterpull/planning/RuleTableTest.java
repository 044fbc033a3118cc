package org.counterpull.planning;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every rule of practice has a weldment that brings it up and one that does not: {@code
 * rules/table.yaml}.
 */
class RuleTableTest {
  private static final Path FOLDER = Path.of("src/test/resources/rules");
  private static final int RULES_OF_PRACTICE = 46;

  /** Many rows share a weldment. */
  private static final Map<String, Set<String>> PLANNED = new HashMap<>();

  @TempDir Path folder;

  record Row(String id, String holds, String holdsAdds, String not, String notAdds) {
    @Override
    public String toString() {
      return id;
    }
  }

  static List<Row> rows() throws IOException {
    List<Row> rows = new ArrayList<>();
    for (JsonNode row : new YAMLMapper().readTree(FOLDER.resolve("table.yaml").toFile())) {
      rows.add(
          new Row(
              row.required("id").asText(),
              row.required("holds").required("file").asText(),
              row.required("holds").path("add").asText(""),
              row.required("not").required("file").asText(),
              row.required("not").path("add").asText("")));
    }
    return rows;
  }

  private Set<String> rules(String file, String added) throws IOException {
    String key = file + added;
    if (!PLANNED.containsKey(key)) {
      PLANNED.put(key, PlannedFile.of(FOLDER.resolve(file + ".yaml"), added, folder).rules());
    }
    return PLANNED.get(key);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void isBroughtUp(Row row) throws IOException {
    assertThat(rules(row.holds(), row.holdsAdds())).contains(row.id());
  }

  @ParameterizedTest
  @MethodSource("rows")
  void staysAway(Row row) throws IOException {
    assertThat(rules(row.not(), row.notAdds())).doesNotContain(row.id());
  }

  /** The list of practice has rules 1 to 46; each has a row under its own number. */
  @Test
  void everyRuleOfPracticeHasARow() throws IOException {
    Set<String> numbers = new TreeSet<>();
    for (Row row : rows()) {
      numbers.add(row.id());
    }
    List<String> wanted =
        IntStream.rangeClosed(1, RULES_OF_PRACTICE).mapToObj("R%02d"::formatted).toList();
    assertThat(numbers).containsAll(wanted);
  }

  /** A rule that is added to the data wants a row here. */
  @Test
  void everyRuleOfTheDataHasARow() throws IOException {
    Set<String> data = new TreeSet<>();
    for (String file : List.of("order", "steps", "with", "never")) {
      for (JsonNode row :
          new YAMLMapper().readTree(Path.of("src/main/resources/rules", file + ".yaml").toFile())) {
        data.add(row.required("id").asText());
      }
    }
    data.removeIf(id -> id.startsWith("P"));
    assertThat(rows().stream().map(Row::id).toList()).containsAll(data);
  }

  @Test
  void noRuleHasTwoRows() throws IOException {
    assertThat(rows().stream().map(Row::id).toList()).doesNotHaveDuplicates();
  }
}
