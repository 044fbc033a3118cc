package org.counterpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MountCommandTest {
  @TempDir Path folder;

  // The cradle: the lug spoils the bore directly, a sleeve, a saddle or pins keep it; the cap may
  // be welded.
  @Test
  void theCradle() throws IOException {
    Path out = folder.resolve("mount");
    CommandRun run = CommandRun.of("mount", "examples/cradle.yaml", "--out", out.toString());
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isEqualTo(ExitCode.REFUSED);
    assertThat(run.out()).contains("Welded as drawn: don't", "sleeve", "Not known:");
    JsonNode mounts = new ObjectMapper().readTree(out.resolve("mount.json").toFile()).get("mounts");
    JsonNode cap = mounts.get(0);
    assertThat(cap.get("name").asText()).isEqualTo("cap");
    assertThat(cap.get("ways").get(0).get("outcome").asText()).isEqualTo("fits");
    JsonNode lug = mounts.get(1);
    assertThat(outcomes(lug))
        .containsExactly(
            "as-drawn dont",
            "small-passes dont",
            "stripped dont",
            "heat-sink dont",
            "sleeve fits-if",
            "sleeve-ring fits-if",
            "saddle fits-if",
            "clamp fits-if",
            "pinned fits");
    JsonNode drawn = lug.get("ways").get(0);
    assertThat(drawn.get("heat").get("cellsThroughWall").asInt()).isGreaterThanOrEqualTo(4);
    JsonNode change = drawn.get("bores").get(0).get("changeMm");
    assertThat(change.get("low").asDouble()).isGreaterThan(0.039);
    assertThat(Files.readString(out.resolve("mount.html")))
        .contains("<svg", "class=\"answer stop\"");
    assertThat(out.resolve("mount-lug.svg")).exists();
  }

  private static List<String> outcomes(JsonNode mount) {
    List<String> all = new ArrayList<>();
    mount
        .get("ways")
        .forEach(w -> all.add(w.get("way").asText() + " " + w.get("outcome").asText()));
    return all;
  }

  @Test
  void whatIsWrongIsSaidWithWhatToWrite() {
    assertFault("--tube is missing", "mount", "--lug", "40 x 10 x 60");
    assertFault("is not 2 sizes", shortForm("60", "H8", "mag"));
    assertFault("walls meet", shortForm("60 x 30", "H8", "mag"));
    assertFault("\"K7\" is not known", shortForm("60 x 5", "K7", "mag"));
    assertFault("no process \"glue\"", shortForm("60 x 5", "H8", "glue"));
    assertFault("neither a file nor a tube", "mount");
    assertFault("both given", "mount", "examples/cradle.yaml", "--tube", "60 x 5");
    assertFault("no feature \"rim\"", "mount", "examples/cradle.yaml", "--feature", "rim");
    assertFault("no weld lies on a round tube", "mount", "examples/thick-bracket.yaml");
  }

  private static String[] shortForm(String tube, String tolerance, String process) {
    return new String[] {
      "mount",
      "--tube",
      tube,
      "--tolerance",
      tolerance,
      "--lug",
      "40 x 10 x 60",
      "--weld",
      "leg 6",
      "--from-seal",
      "45 mm",
      "--process",
      process,
      "--current",
      "160"
    };
  }

  private static void assertFault(String says, String... words) {
    CommandRun run = CommandRun.of(words);
    assertThat(run.code()).as(run.out()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(run.err()).contains(says).contains("Try:");
  }
}
