package org.counterpull.reading;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.counterpull.quantity.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class WeldmentSchemaTest {
  private static final Schema SCHEMA =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(WeldmentSchema.text(), InputFormat.JSON);

  static List<Path> goodFiles() throws IOException {
    List<Path> files = new ArrayList<>();
    for (String folder :
        List.of("examples", "src/test/resources/good", "src/main/resources/starting")) {
      try (Stream<Path> found = Files.list(Path.of(folder))) {
        found.filter(f -> f.toString().matches(".*\\.(yaml|json)")).sorted().forEach(files::add);
      }
    }
    return files;
  }

  /** Whoever changes a key table writes the schema anew from it: {@code -Dschema=write} does so. */
  @Test
  void schemaIsWhatTheKeyTablesSay() throws Exception {
    if ("write".equals(System.getProperty("schema"))) {
      Files.writeString(
          Path.of("src/main/resources/schema/weldment.schema.json"), SchemaFromKeyTables.text());
      return;
    }
    assertThat(WeldmentSchema.text()).isEqualTo(SchemaFromKeyTables.text());
  }

  @ParameterizedTest
  @MethodSource("goodFiles")
  void goodFilesAreGoodForTheSchema(Path file) throws IOException {
    InputFormat format = file.toString().endsWith(".json") ? InputFormat.JSON : InputFormat.YAML;
    assertThat(SCHEMA.validate(Files.readString(file), format)).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("goodFiles")
  void goodFilesAreReadWithoutProblems(Path file) {
    assertThat(WeldmentReader.read(file)).isInstanceOf(ReadResult.Read.class);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "parts: {a: {stok: flat 60 x 10}}",
        "parts: {a: {stock: wood 60 x 10}}",
        "parts: {a: {stock: flat 60 x 10, face: upper}}",
        "parts: {a: {length: 10}}",
        "parts: {a/b: {stock: flat 60 x 10}}",
        "weldment: x",
        "parts: {a: {stock: flat 60 x 10, start: [1, 2]}}",
        "parts: {a: {stock: flat 60 x 10}}\njonts: {}"
      })
  void slipsAreFaultsForTheSchema(String yaml) {
    assertThat(SCHEMA.validate(yaml, InputFormat.YAML)).isNotEmpty();
  }

  @Test
  void everyTableAndKeyIsNamedOnce() {
    Set<String> tables = new HashSet<>();
    for (KeyTable table : FileKeys.ALL) {
      assertThat(tables.add(table.name())).as(table.name()).isTrue();
      assertThat(table.names()).as(table.name()).doesNotHaveDuplicates();
    }
  }

  @Test
  void startingFilesAreReadAndAreTheSameJobInBothUnits() {
    assertThat(StartingFile.text(LengthUnit.IN)).contains("units: in").doesNotContain("units: mm");
    assertThat(StartingFile.text(LengthUnit.MM)).contains("units: mm").doesNotContain("units: in");
    assertThat(StartingFile.text(LengthUnit.FT)).isEqualTo(StartingFile.text(LengthUnit.IN));
  }

  /** Whoever changes a key table changes the manual's table too. */
  @Test
  void manualHasEveryKeyTable() throws IOException {
    String manual = Files.readString(Path.of("docs/manual/file-format.md"));
    for (KeyTable table : FileKeys.ALL) {
      assertThat(manual).as(table.name()).contains(ManualTables.of(table));
    }
  }
}
