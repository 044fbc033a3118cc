package org.counterpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MainTest {
  @TempDir Path folder;

  @Test
  void versionAndHelpAnswer() {
    assertThat(CommandRun.of("--version").out()).startsWith("counterpull 0.1.0");
    assertThat(CommandRun.of("--help").out())
        .contains(
            "plan", "check", "new", "procedures", "schema", "machine", "formula", "Exit codes");
    assertThat(CommandRun.of().out()).contains("Usage: counterpull");
  }

  @Test
  void aWordThatIsNearlyACommandIsHelpedAlong() {
    CommandRun run = CommandRun.of("plam", "x.yaml");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("plan").doesNotContain("Exception");
  }

  @Test
  void completionIsWritten() {
    assertThat(CommandRun.of("generate-completion").out()).contains("complete").contains("formula");
  }

  @ParameterizedTest
  @ValueSource(strings = {"mm", "in"})
  void theStartingFileCanBePlanned(String units) throws IOException {
    Path file = folder.resolve("new.yaml");
    Files.writeString(file, CommandRun.of("new", "--units", units).out());
    CommandRun run =
        CommandRun.of("plan", file.toString(), "--out", folder.resolve("out").toString());
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    assertThat(folder.resolve("out/plan.html")).isNotEmptyFile();
  }

  @ParameterizedTest
  @ValueSource(strings = {"hinge-bar", "pit-cover", "cradle", "thick-bracket"})
  void plansKeepToTheirSchema(String example) {
    String json =
        CommandRun.of("plan", "examples/" + example + ".yaml", "--json", "--out", folder.toString())
            .out();
    List<Error> errors =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(CommandRun.of("schema", "--plan").out())
            .validate(json, InputFormat.JSON);
    assertThat(errors).isEmpty();
  }

  @Test
  void theWeldmentSchemaIsPrinted() {
    assertThat(CommandRun.of("schema").out()).startsWith("{").contains("2020-12");
  }
}
