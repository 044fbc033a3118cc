package org.counterpull.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.counterpull.cli.CommandRun;
import org.counterpull.verification.MeasuredWaits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Waits of examples, and of examples with one thing changed, as the full model finds them. */
class VerifiedWaitsTest {
  @TempDir static Path folder;
  private static final Map<String, JsonNode> HEAT = new HashMap<>();

  private static JsonNode heat(String name, UnaryOperator<String> changed) throws IOException {
    String text = changed.apply(Files.readString(Path.of("examples", name + ".yaml")));
    if (HEAT.containsKey(text)) {
      return HEAT.get(text);
    }
    Path file = folder.resolve(name + "-" + HEAT.size() + ".yaml");
    Files.writeString(file, text);
    Path out = folder.resolve("plan-" + HEAT.size());
    CommandRun run =
        CommandRun.of("plan", file.toString(), "--mount", "none", "--out", out.toString());
    assertThat(run.err()).isEmpty();
    JsonNode heat = new ObjectMapper().readTree(out.resolve("plan.json").toFile()).get("heat");
    HEAT.put(text, heat);
    return heat;
  }

  private static double metalWaitsS(JsonNode heat) {
    double sum = 0;
    for (JsonNode start : heat.get("starts")) {
      sum += start.get("metalWaitS").asDouble();
    }
    return sum;
  }

  @ParameterizedTest
  @ValueSource(strings = {"hinge-bar", "cradle", "thick-bracket"})
  void everyPassBeginsWithinItsLimitsAndTheHeatIsInBalance(String name) throws IOException {
    JsonNode heat = heat(name, text -> text);
    for (JsonNode start : heat.get("starts")) {
      String pass = start.get("run").asText() + " " + start.get("pass").asInt();
      double most = start.get("interpassMaxC").asDouble();
      assertThat(start.get("hottestC").asDouble()).as(pass).isLessThanOrEqualTo(most);
      double least = start.get("preheatC").isNull() ? 0 : start.get("preheatC").asDouble();
      assertThat(start.get("coolestC").asDouble()).as(pass).isGreaterThanOrEqualTo(least);
    }
    assertThat(heat.get("imbalance").asDouble()).isLessThan(1e-3);
  }

  // The bar of the superposed model: 10 % of the full model's wait, or 5 s. The book of
  // verification shows the rows; they are what is measured here.
  @ParameterizedTest
  @ValueSource(strings = {"hinge-bar", "cradle", "thick-bracket"})
  void superposedWaitsAreNearTheFullModels(String name) throws IOException {
    for (JsonNode start : heat(name, text -> text).get("starts")) {
      String pass = start.get("run").asText() + " pass " + start.get("pass").asInt();
      double full = start.get("metalWaitS").asDouble();
      double superposed = start.get("superposedWaitS").asDouble();
      assertThat(superposed).as(pass).isCloseTo(full, within(Math.max(5, 0.1 * full)));
      if (full > 0 || superposed > 0) {
        MeasuredWaits.Row row = MeasuredWaits.row(name, pass);
        // Half a unit of the last digit that the book prints.
        assertThat(full).as(pass).isCloseTo(row.fullS(), within(0.051));
        assertThat(superposed).as(pass).isCloseTo(row.superposedS(), within(0.051));
      }
    }
  }

  @Test
  void inHotAirTheWorkWaitsLongerThanInTheCold() throws IOException {
    double cold = metalWaitsS(heat("hinge-bar", t -> t.replace("68 F", "5 C")));
    double usual = metalWaitsS(heat("hinge-bar", t -> t));
    double hot = metalWaitsS(heat("hinge-bar", t -> t.replace("68 F", "40 C")));
    assertThat(cold).isLessThan(usual);
    assertThat(usual).isLessThan(hot);
  }

  @Test
  void aLowerInterpassLimitMakesLongerWaits() throws IOException {
    // Quenched and tempered steel to 25 mm: 200 C instead of the 250 C of A36.
    JsonNode strict = heat("hinge-bar", t -> t.replace("steel: A36", "steel: S690QL"));
    assertThat(strict.at("/starts/0/interpassMaxC").asDouble()).isEqualTo(200);
    assertThat(metalWaitsS(strict)).isGreaterThan(metalWaitsS(heat("hinge-bar", t -> t)));
    for (JsonNode start : strict.get("starts")) {
      assertThat(start.get("hottestC").asDouble()).isLessThanOrEqualTo(200);
    }
  }

  @Test
  void aSealThatStaysInIsWaitedForAndStaysBelowItsLimit() throws IOException {
    JsonNode stays = heat("cradle", t -> t.replace("nbr, removable: true", "nbr, limit: 108 C"));
    JsonNode seal = place(stays, "gland seal");
    assertThat(seal.get("peakC").asDouble()).isBetween(106.0, 108.0);
    assertThat(metalWaitsS(stays)).isGreaterThan(metalWaitsS(heat("cradle", t -> t)) + 60);
  }

  @Test
  void aSealThatNoWaitSavesIsSaidToBeTooHotWithWaysOut() throws IOException {
    JsonNode hopeless = heat("cradle", t -> t.replace("nbr, removable: true", "nbr, limit: 45 C"));
    JsonNode seal = place(hopeless, "gland seal");
    assertThat(seal.get("aboveLimitS").asDouble()).isPositive();
    String advice = seal.get("advice").toString();
    assertThat(advice)
        .contains("Waiting does not help")
        .contains("smaller passes")
        .contains("copper block")
        .contains("take it out");
  }

  @Test
  void aSealThatIsOutIsNotWaitedForButItsSeatIsWatched() throws IOException {
    JsonNode seal = place(heat("cradle", t -> t), "gland seal");
    assertThat(seal.get("takenOut").asBoolean()).isTrue();
    assertThat(seal.get("peakC").asDouble()).isGreaterThan(seal.get("limitC").asDouble());
    assertThat(seal.get("advice").toString()).contains("put it back when its seat is below 100");
  }

  private static JsonNode place(JsonNode heat, String name) {
    for (JsonNode place : heat.get("places")) {
      if (place.get("name").asText().equals(name)) {
        return place;
      }
    }
    throw new AssertionError("no " + name);
  }
}
