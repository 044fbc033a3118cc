package org.counterpull.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** All files or none. */
class OutputFolderTest {
  @TempDir private Path folder;

  private static Map<String, String> texts(String text) {
    Map<String, String> texts = new LinkedHashMap<>();
    texts.put("a.txt", text);
    texts.put("b.txt", text);
    texts.put("c.txt", text);
    return texts;
  }

  private List<String> names(Path where) throws IOException {
    try (Stream<Path> files = Files.list(where)) {
      return files.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void writesAllAndLeavesNothingElse() throws IOException {
    Path made = folder.resolve("new/deep");
    new OutputFolder(made).write(texts("old"));
    List<Path> files = new OutputFolder(made).write(texts("gr\u00fcn\n"));
    assertThat(files)
        .containsExactly(made.resolve("a.txt"), made.resolve("b.txt"), made.resolve("c.txt"));
    assertThat(names(made)).containsExactly("a.txt", "b.txt", "c.txt");
    assertThat(Files.readString(made.resolve("b.txt"))).isEqualTo("gr\u00fcn\n");
  }

  @Test
  void changesNothingWhenOneCannotBeWritten() throws IOException {
    new OutputFolder(folder).write(Map.of("a.txt", "old"));
    Files.createDirectories(folder.resolve("c.txt/full"));
    assertThatThrownBy(() -> new OutputFolder(folder).write(texts("new")))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("c.txt");
    assertThat(names(folder)).containsExactly("a.txt", "c.txt");
    assertThat(Files.readString(folder.resolve("a.txt"))).isEqualTo("old");
  }

  @Test
  void staysInItsFolder() {
    assertThatThrownBy(() -> new OutputFolder(folder).write(Map.of("../a.txt", "x")))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
