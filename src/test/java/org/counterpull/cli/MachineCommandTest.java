package org.counterpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class MachineCommandTest {
  private static final List<String> SMALL =
      List.of(
          "machine",
          "--process",
          "mag",
          "--max-current",
          "140",
          "--duty",
          "20% at 90 A",
          "--supply",
          "120 V 20 A");

  private static CommandRun small(String... more) {
    List<String> words = new ArrayList<>(SMALL);
    words.addAll(List.of(more));
    return CommandRun.of(words.toArray(String[]::new));
  }

  @Test
  void halfAnInchIsTackedOnly() throws Exception {
    CommandRun run = small("--thickness", "1/2 in", "--json");
    JsonNode answer = new ObjectMapper().readTree(run.out());
    assertThat(run.code()).isEqualTo(1);
    assertThat(answer.get("verdict").asText()).isEqualTo("tack-only");
    assertThat(answer.get("gates")).hasSize(5);
    assertThat(answer.get("table")).hasSize(25);
  }

  @Test
  void threeMillimetresAreWelded() {
    CommandRun run = small("--thickness", "3");
    assertThat(run.code()).isZero();
    assertThat(run.out()).startsWith("140 A mag, tee in 3 mm: one-pass");
  }

  @Test
  void aBarIsAskedForByItsSides() {
    CommandRun run = small("--bar", "1/2 x 2 in", "--joint", "butt");
    assertThat(run.out()).contains("butt in 12.7 mm");
  }

  @Test
  void whatIsMissingOrUnreadableIsSaid() {
    assertThat(small().err()).startsWith("--thickness is missing").contains("Try: --thickness");
    assertThat(small("--thickness", "thick").err()).startsWith("--thickness: ").contains("Try: ");
    assertThat(small("--thickness", "3", "--joint", "knot").err())
        .isEqualToNormalizingNewlines(
            "--joint: there is no \"knot\"\nTry: tee, butt, corner or lap\n");
    assertThat(small("--thickness", "3", "--gas", "helium").code()).isEqualTo(2);
    assertThat(CommandRun.of("machine", "--process", "mog").err())
        .contains("there is no process \"mog\"");
  }
}
