package org.counterpull.examples;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.counterpull.cli.CommandRun;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlanCommandTest {
  @TempDir Path folder;

  @Test
  void theSameFileAndSeedGiveTheSameBytes() throws IOException {
    Path one = folder.resolve("one");
    Path two = folder.resolve("two");
    CommandRun.of("plan", "examples/hinge-bar.yaml", "--out", one.toString(), "--seed", "7");
    CommandRun.of("plan", "examples/hinge-bar.yaml", "--out", two.toString(), "--seed", "7");
    for (String name : List.of("plan.json", "plan.md", "plan.html")) {
      assertThat(one.resolve(name)).hasSameBinaryContentAs(two.resolve(name));
    }
  }

  @Test
  void theSummarySaysWhereThePlanIs() {
    CommandRun run =
        CommandRun.of("plan", "examples/hinge-bar.yaml", "--out", folder.resolve("out").toString());
    assertThat(run.out()).contains(folder.resolve("out").resolve("plan.html").toString());
  }

  @Test
  void badInputWritesNothing() throws IOException {
    Path bad = folder.resolve("bad.yaml");
    Files.writeString(bad, "weldment: x\nparts: {}\n");
    Path out = folder.resolve("out");
    CommandRun run = CommandRun.of("plan", bad.toString(), "--out", out.toString());
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("bad.yaml:").contains("Try: ").doesNotContain("Exception");
    assertThat(out).doesNotExist();
  }

  @Test
  void aFolderThatCannotBeWrittenIsSaid() throws IOException {
    Path file = folder.resolve("a-file");
    Files.writeString(file, "in the way");
    CommandRun run = CommandRun.of("plan", "examples/hinge-bar.yaml", "--out", file.toString());
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).startsWith("--out: ");
    assertThat(file).hasContent("in the way");
  }

  @Test
  void aMachineThatIsTooSmallEndsWithOneAndStillWritesThePlan() throws IOException {
    String text = Files.readString(Path.of("examples/hinge-bar.yaml"));
    Path small = folder.resolve("small.yaml");
    Files.writeString(
        small,
        text.replace("current: 20..200 A", "current: 20..60 A").replace("at 200 A", "at 60 A"));
    Path out = folder.resolve("out");
    CommandRun run = CommandRun.of("plan", small.toString(), "--out", out.toString());
    assertThat(run.code()).isEqualTo(1);
    assertThat(out.resolve("plan.json")).exists();
    assertThat(run.out().lines().findFirst().orElseThrow())
        .isEqualTo("hinge bar: Not all of this can be done as it is asked for: read this first.");
    assertThat(run.out()).contains("NO  tab: no machine of this shop can weld it");
  }

  /**
   * AWS D1.1, from memory: a flush flare bevel is sure to give 5/16 of the radius with any process,
   * 5/16 x 15.875 = 4.961 mm. A throat of 12 mm can't be had there and isn't promised.
   */
  @Test
  void aFlareIsNotPromisedMoreThanAFlushFillGives() throws IOException {
    String text = Files.readString(Path.of("examples/hinge-bar.yaml"));
    Path deep = folder.resolve("deep.yaml");
    Files.writeString(
        deep, text.replace("weld: flare bevel, gap", "weld: flare bevel, throat: 12 mm, gap"));
    CommandRun run =
        CommandRun.of("plan", deep.toString(), "--json", "--out", folder.resolve("o").toString());
    JsonNode size = new ObjectMapper().readTree(run.out()).get("joints").get(0).get("size");
    assertThat(size.get("throat").get("value").asDouble()).isBetween(4.96, 4.962);
    assertThat(size.get("given").asBoolean()).isFalse();
    assertThat(size.get("reason").asText()).contains("asks for 12 mm");
  }

  @Test
  void partsApartAreSaidWithTheGapAndTheMove() throws IOException {
    String text = Files.readString(Path.of("examples/thick-bracket.yaml"));
    Path apart = folder.resolve("apart.yaml");
    Files.writeString(apart, text.replace("start: [67.5, 81.35, 20]", "start: [67.5, 81.35, 30]"));
    CommandRun run = CommandRun.of("check", apart.toString());
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("10.0 mm apart").contains("apart.yaml:").contains("down");
  }

  @Test
  void overlappingPartsAreSaid() throws IOException {
    String text = Files.readString(Path.of("examples/thick-bracket.yaml"));
    Path overlap = folder.resolve("overlap.yaml");
    Files.writeString(overlap, text.replace("length: 165", "length: 175"));
    CommandRun run = CommandRun.of("check", overlap.toString());
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("are in each other by");
  }
}
