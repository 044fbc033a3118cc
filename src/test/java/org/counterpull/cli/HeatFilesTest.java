package org.counterpull.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Experiments written as files: no joints, no machine, no plan. */
class HeatFilesTest {
  private static final String PLATE = "src/test/resources/heat/fe-plate.yaml";
  private static final String STRIP =
      """
      units: mm
      steel: S275JR
      parts:
        strip: {stock: %s, length: 120, start: [0, 0, 0], loose: true}
      runs:
        one: {on: strip, from: [20, %s], to: [100, %s], heat: {%s}}
        two: {on: strip, from: [20, %s], to: [60, %s], heat: {net: 200, travel: 8}}
      %s
      """;

  @TempDir Path folder;

  private JsonNode heat(String file, String... options) throws IOException {
    List<String> words = new java.util.ArrayList<>(List.of("heat", file, "--out"));
    words.add(folder.resolve("out").toString());
    words.addAll(List.of(options));
    CommandRun run = CommandRun.of(words.toArray(String[]::new));
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    return new ObjectMapper().readTree(folder.resolve("out/heat.json").toFile());
  }

  private String strip(String stock, String place, String heatOfOne, String more)
      throws IOException {
    Path file = folder.resolve("strip.yaml");
    Files.writeString(
        file, String.format(STRIP, stock, place, place, heatOfOne, place, place, more));
    return file.toString();
  }

  /**
   * The plate of an independent finite-element solution (extrapolated to zero mesh size and step),
   * as a file, at normal: peaks and temperatures at 600 s within 2 % of the rise; balance within 1
   * % of what is lost: in 120.0 kJ, stored 88.19, lost 31.81.
   */
  @Test
  void thePlateOfTheIndependentSolutionAsAFile() throws IOException {
    Map<String, double[]> expected = new HashMap<>();
    expected.put("P2", new double[] {380.8, 56.097});
    expected.put("P3", new double[] {283.2, 56.085});
    expected.put("P4", new double[] {136.3, 56.049});
    expected.put("P5", new double[] {77.6, 55.913});
    expected.put("P6", new double[] {67.6, 55.521});
    expected.put("P7", new double[] {137.1, 49.781});
    expected.put("P8", new double[] {48.5, 48.428});
    JsonNode heat = heat(PLATE, "--until", "600 s");
    int seen = 0;
    for (JsonNode place : heat.get("places")) {
      double[] wanted = expected.get(place.get("name").asText());
      if (wanted != null) {
        seen++;
        String name = place.get("name").asText();
        assertThat(place.get("peakC").asDouble())
            .as("peak at " + name)
            .isCloseTo(wanted[0], within(0.02 * (wanted[0] - 20)));
        assertThat(place.get("endC").asDouble())
            .as("600 s at " + name)
            .isCloseTo(wanted[1], within(0.02 * (wanted[1] - 20)));
      }
    }
    assertThat(seen).isEqualTo(7);
    JsonNode balance = heat.get("balance");
    assertThat(balance.get("inJ").asDouble()).isEqualTo(120_000);
    assertThat(balance.get("storedJ").asDouble()).isCloseTo(88_190, within(318.0));
    assertThat(balance.get("lostToAirJ").asDouble()).isCloseTo(31_810, within(318.0));
  }

  /** 20 V x 100 A x 0.8 at 4 mm/s is 400 J/mm net; 80 mm of it and 40 mm of 200 J/mm: 40 kJ. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "net: 400, travel: 4",
        "power: 1.6 kW, travel: 4",
        "volts: 20, amps: 100, efficiency: 0.8, travel: 4",
        "arc: 500, efficiency: 0.8, travel: 4"
      })
  void theHeatIsGivenInAnyOfFourWays(String words) throws IOException {
    String file = strip("flat 40 x 8", "20, 8", words, "");
    JsonNode heat = heat(file, "--resolution", "coarse", "--until", "40 s");
    assertThat(heat.get("balance").get("askedJ").asDouble()).isCloseTo(40_000, within(1e-6));
    assertThat(heat.get("balance").get("inJ").asDouble()).isCloseTo(40_000, within(1e-6));
  }

  /** One starts at 0 and takes 80 mm / 4 mm/s = 20 s; two starts where the order says. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "''; one; 0; two; 20",
        "order: [{run: one}, {run: two, pause: 15 s}]; one; 0; two; 35",
        "order: [{run: two}, {run: one, start: 30 s}]; two; 0; one; 30"
      })
  void theOrderOfTheFileIsObeyed(String order, String first, double at, String then, double thenAt)
      throws IOException {
    String file = strip("flat 40 x 8", "20, 8", "net: 400, travel: 4", order);
    JsonNode starts = heat(file, "--resolution", "coarse", "--until", "60 s").get("starts");
    assertThat(starts.get(0).get("run").asText()).isEqualTo(first);
    assertThat(starts.get(0).get("startS").asDouble()).isEqualTo(at);
    assertThat(starts.get(1).get("run").asText()).isEqualTo(then);
    assertThat(starts.get(1).get("startS").asDouble()).isEqualTo(thenAt);
  }

  /** On the top of a tube, with the box of the section as the measure of places. */
  @ParameterizedTest
  @CsvSource({"round tube 40 x 4", "rectangular tube 40 x 40 x 4"})
  void aBeadLiesOnATube(String stock) throws IOException {
    String file = strip(stock, "20, 40", "net: 150, travel: 4", "");
    JsonNode heat = heat(file, "--resolution", "coarse", "--until", "60 s");
    assertThat(heat.get("balance").get("inJ").asDouble()).isCloseTo(20_000, within(1e-6));
  }

  @Test
  void aBeadInTheHollowOfATubeIsRefused() throws IOException {
    String file = strip("rectangular tube 60 x 60 x 4", "30, 30", "net: 150, travel: 4", "");
    CommandRun run = CommandRun.of("heat", file, "--out", folder.resolve("none").toString());
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("one runs beside the metal").contains("Try: ");
    assertThat(folder.resolve("none")).doesNotExist();
  }
}
