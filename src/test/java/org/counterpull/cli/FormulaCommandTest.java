package org.counterpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.Test;

class FormulaCommandTest {
  @Test
  void jsonHasTheAgreedKeys() throws Exception {
    CommandRun run =
        CommandRun.of("formula", "t85", "heat-input=1.0", "thickness=10", "preheat=20", "--json");
    JsonNode answer = new ObjectMapper().readTree(run.out());
    assertThat(run.code()).isZero();
    assertThat(answer.fieldNames())
        .toIterable()
        .containsExactly("formula", "value", "unit", "inRange", "warnings", "source");
    // EN 1011-2:2001 Annex D, two-dimensional flow: 11.36 s
    assertThat(answer.get("value").asDouble()).isBetween(11.355, 11.365);
    assertThat(answer.get("inRange").asBoolean()).isTrue();
  }

  @Test
  void unitsOfTheirOwnAreUnderstood() throws Exception {
    CommandRun plain =
        CommandRun.of("formula", "t85", "heat-input=1.0", "thickness=12.7", "preheat=20", "--json");
    CommandRun inches =
        CommandRun.of(
            "formula", "t85", "heat-input=1.0", "thickness=1/2 in", "preheat=68 F", "--json");
    ObjectMapper json = new ObjectMapper();
    assertThat(json.readTree(inches.out()).get("value").asDouble())
        .isCloseTo(
            json.readTree(plain.out()).get("value").asDouble(),
            org.assertj.core.api.Assertions.within(1e-9));
  }

  @Test
  void outOfRangeStillAnswers() throws Exception {
    CommandRun run =
        CommandRun.of(
            "formula",
            "preheat-cet",
            "cet=0.6",
            "thickness=5",
            "hydrogen=5",
            "heat-input=1",
            "--json");
    JsonNode answer = new ObjectMapper().readTree(run.out());
    assertThat(run.code()).isZero();
    assertThat(answer.get("inRange").asBoolean()).isFalse();
    assertThat(answer.get("warnings")).hasSize(2);
  }

  @Test
  void hardnessShowsItsMethodsAndTheirSpread() throws Exception {
    CommandRun run =
        CommandRun.of("formula", "haz-hardness", "C=0.15", "Si=0.30", "Mn=1.40", "t85=5", "--json");
    JsonNode answer = new ObjectMapper().readTree(run.out());
    assertThat(answer.get("methods")).hasSize(3);
    // Dueren 348.6, Yurioka 325.6, Suzuki 340.0 (from memory): median 340.0, spread 23.0
    assertThat(answer.get("value").asDouble()).isBetween(339.95, 340.05);
    assertThat(answer.get("spread").asDouble()).isBetween(22.9, 23.1);
  }

  @Test
  void aNameThatIsNearlyRightIsHelpedAlong() {
    CommandRun run = CommandRun.of("formula", "t58", "heat-input=1");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).startsWith("there is no formula 't58'").contains("did you mean t85?");
  }

  @Test
  void aWrongArgumentIsBadInput() {
    CommandRun run = CommandRun.of("formula", "t85", "heat-input=1", "thickness=ten", "preheat=20");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("thickness").contains("Try:").doesNotContain("Exception");
  }

  @Test
  void everyFormulaIsListedAndShown() {
    CommandRun list = CommandRun.of("formula", "list");
    for (String line : list.out().split("\n")) {
      String name = line.split(" ")[0].strip();
      assertThat(CommandRun.of("formula", "show", name).out()).contains("Source: ");
    }
  }
}
