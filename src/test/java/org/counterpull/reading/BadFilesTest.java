package org.counterpull.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Each bad file says in its head, or in a file beside it, what is to be found: {@code line:column
 * path: what | mend}, one line a problem, and no others.
 */
class BadFilesTest {
  private static final Path FOLDER = Path.of("src/test/resources/bad");
  private static final String MARK = "# expect ";

  private record Expected(String place, String path, String what, String mend) {
    static Expected of(String line) {
      int space = line.indexOf(' ');
      String[] halves = line.substring(space + 1).split(" \\| ", 2);
      int colon = halves[0].indexOf(": ");
      boolean hasPath = colon > 0 && halves[0].substring(0, colon).matches("\\S+( \\S+)?");
      return new Expected(
          line.substring(0, space),
          hasPath ? halves[0].substring(0, colon) : "",
          hasPath ? halves[0].substring(colon + 2) : halves[0],
          halves[1]);
    }
  }

  static List<Path> badFiles() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files.filter(f -> !f.toString().endsWith(".expect")).sorted().toList();
    }
  }

  @Test
  void thereAreManyBadFiles() throws IOException {
    assertThat(badFiles()).hasSizeGreaterThan(100);
  }

  @ParameterizedTest
  @MethodSource("badFiles")
  void problemsAreFoundWhereTheyAreWithTheirMend(Path file) throws IOException {
    List<Expected> expected = expected(file);
    ReadResult result = WeldmentReader.read(file);
    assertThat(result).isInstanceOf(ReadResult.Faulty.class);
    List<Problem> problems = ((ReadResult.Faulty) result).problems();
    assertThat(problems).as("%s", problems).hasSameSizeAs(expected);
    for (int i = 0; i < problems.size(); i++) {
      Problem problem = problems.get(i);
      Expected wanted = expected.get(i);
      assertThat(problem.line() + ":" + problem.column()).isEqualTo(wanted.place());
      assertThat(problem.path()).isEqualTo(wanted.path());
      assertThat(problem.what()).contains(wanted.what());
      assertThat(problem.tryThis()).contains(wanted.mend());
      assertThat(problem.file()).isEqualTo(file.toString());
      assertThat(problem.text())
          .startsWith(file + ":" + wanted.place() + ": ")
          .contains("\n    Try: ");
    }
  }

  private static List<Expected> expected(Path file) throws IOException {
    List<String> lines = new ArrayList<>();
    if (file.toString().endsWith(".json")) {
      lines.addAll(Files.readAllLines(Path.of(file.toString().replace(".json", ".expect"))));
    } else {
      for (String line : Files.readAllLines(file)) {
        if (line.startsWith(MARK)) {
          lines.add(line.substring(MARK.length()));
        }
      }
    }
    return lines.stream().map(Expected::of).toList();
  }

  @Test
  void theTextOfAProblemIsStable() {
    assertThat(
            new Problem("a.yaml", 7, 12, "parts.heel.stock", "\"flet\" is no shape", "flat").text())
        .isEqualTo("a.yaml:7:12: parts.heel.stock: \"flet\" is no shape\n    Try: flat");
    assertThat(new Problem("a.yaml", 1, 1, "", "the file is empty", "weldment: NAME").text())
        .isEqualTo("a.yaml:1:1: the file is empty\n    Try: weldment: NAME");
  }
}
