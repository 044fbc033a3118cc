package org.counterpull.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HeatCommandTest {
  @TempDir static Path folder;
  private static JsonNode heat;
  private static JsonNode plan;

  @BeforeAll
  static void planAndHeat() throws IOException {
    Path hot = folder.resolve("heat");
    CommandRun run =
        CommandRun.of(
            "heat", "examples/hinge-bar.yaml", "--resolution", "coarse", "--out", hot.toString());
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    heat = new ObjectMapper().readTree(hot.resolve("heat.json").toFile());
    CommandRun planned =
        CommandRun.of(
            "plan",
            "examples/hinge-bar.yaml",
            "--json",
            "--out",
            folder.resolve("plan").toString());
    plan = new ObjectMapper().readTree(planned.out());
  }

  @Test
  void whatGoesInIsStoredOrLost() {
    JsonNode balance = heat.get("balance");
    double in = balance.get("inJ").asDouble();
    assertThat(in).isEqualTo(balance.get("askedJ").asDouble());
    double out =
        balance.get("storedJ").asDouble()
            + balance.get("lostToAirJ").asDouble()
            + balance.get("lostToBodiesJ").asDouble();
    // The file has six digits.
    assertThat(out).isCloseTo(in, within(1e-5 * in));
  }

  @Test
  void theRunsOfThePlanAndTheTacksAreWhatGoesIn() {
    double runs = 0;
    for (JsonNode run : plan.get("runs")) {
      runs += run.get("netHeatJPerMm").asDouble() * run.get("weldedMm").asDouble();
    }
    double in = heat.get("balance").get("inJ").asDouble();
    assertThat(in).isBetween(runs, 1.5 * runs);
  }

  /**
   * Hand calculation: the heat stored at the end, over the mass at 460 J/kgK (carbon steel near
   * room temperature, EN 1993-1-2), is the mean rise; the places warm alike by then, within a
   * factor of 2.
   */
  @Test
  void itEndsAsWarmAsTheStoredHeatSays() {
    double rise = 0;
    for (JsonNode place : heat.get("places")) {
      rise += place.get("endC").asDouble() - heat.get("ambientC").asDouble();
    }
    rise /= heat.get("places").size();
    double kg = plan.get("consumables").get("massKg").get("value").asDouble();
    double byStoredHeat = heat.get("balance").get("storedJ").asDouble() / (kg * 460);
    assertThat(rise).isBetween(byStoredHeat / 2, byStoredHeat * 2);
  }

  @Test
  void aPassBeginsWarmerThanTheShopAndTheFirstRunOnlyByItsTacks() {
    JsonNode first = heat.get("starts").get(0);
    assertThat(first.get("run").asText()).isEqualTo(plan.get("runs").get(0).get("name").asText());
    assertThat(first.get("hottestC").asDouble()).isBetween(20.0, 150.0);
    assertThat(heat.get("starts").size()).isGreaterThan(plan.get("runs").size());
  }

  @Test
  void theTableHasOneColumnForEachPlaceAndRisingTimes() throws IOException {
    List<String> lines = Files.readAllLines(folder.resolve("heat/temps.csv"));
    int columns = heat.get("places").size() + 1;
    assertThat(lines.get(0)).startsWith("time_s,").contains("tab-hole_C");
    double before = -1;
    for (String line : lines.subList(1, lines.size())) {
      String[] cells = line.split(",");
      assertThat(cells).hasSize(columns);
      assertThat(Double.parseDouble(cells[0])).isGreaterThan(before);
      before = Double.parseDouble(cells[0]);
    }
  }

  @Test
  void theWrittenOrderNeedsOneInTheFile() {
    Path out = folder.resolve("none");
    CommandRun run =
        CommandRun.of(
            "heat", "examples/hinge-bar.yaml", "--order", "written", "--out", out.toString());
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("Try: ").doesNotContain("Exception");
    assertThat(out).doesNotExist();
  }
}
