package org.counterpull.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.counterpull.cli.CommandRun;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Weldments that are wrong on purpose, one for each classic mistake. The head of each file says
 * which rule catches it and words that must be said.
 */
class MistakesTest {
  private static final Path FOLDER = Path.of("src/test/resources/mistakes");
  private static final String RULE = "# rule ";
  private static final String SAYS = "# says ";

  @TempDir Path folder;

  static List<Path> files() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files.sorted().toList();
    }
  }

  private static List<String> marked(Path file, String mark) throws IOException {
    return Files.readAllLines(file).stream()
        .filter(line -> line.startsWith(mark))
        .map(line -> line.substring(mark.length()))
        .toList();
  }

  @Test
  void thereAreTenOrMore() throws IOException {
    assertThat(files()).hasSizeGreaterThanOrEqualTo(10);
  }

  @ParameterizedTest
  @MethodSource("files")
  void isCaughtWithTheRuleInWords(Path file) throws IOException {
    PlannedFile planned = PlannedFile.of(file);
    String refusals =
        planned.plan().refusals().stream()
            .map(r -> r.where() + ": " + r.why() + " " + r.wayForward())
            .collect(Collectors.joining("\n"));
    List<String> rule = marked(file, RULE);
    assertThat(rule).hasSize(1);
    if (!rule.get(0).equals("swing")) {
      assertThat(refusals).contains("(" + rule.get(0));
    }
    assertThat(marked(file, SAYS)).isNotEmpty();
    assertThat(refusals).contains(marked(file, SAYS));
  }

  /** A refused plan ends with 1 and still says why on all its pages. */
  @Test
  void aCycleEndsWithOneAndTheRulesOfTheCycleInWords() throws IOException {
    Path out = folder.resolve("out");
    CommandRun run =
        CommandRun.of(
            "plan", FOLDER.resolve("captive-pin.yaml").toString(), "--out", out.toString());
    assertThat(run.code()).isEqualTo(1);
    String said = run.out().replaceAll("\\s+", " ");
    assertThat(said)
        .contains("these rules go round in a circle, which is a fault of the design")
        .contains("cool before fit pin eyes (R05d): A pin that is put in warm seizes")
        .contains("fit pin eyes before fit wall-a (R05): The pin does not go in any more")
        .contains("fit wall-a before tack wall-a (P06): Both parts lie in place")
        .contains("Use a removable pin")
        .contains("a bolted bearing or a split bush");
    for (String page : List.of("plan.html", "plan.md", "plan.json")) {
      assertThat(Files.readString(out.resolve(page))).contains("go round in a circle");
    }
  }
}
