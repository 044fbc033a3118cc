package org.counterpull.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HingeBarPlanTest {
  @TempDir static Path folder;
  static PlannedExample plan;

  @BeforeAll
  static void planned() throws IOException {
    plan = PlannedExample.of("hinge-bar", folder);
  }

  @Test
  void theFileIsShort() throws IOException {
    long lines =
        Files.readAllLines(Path.of("examples/hinge-bar.yaml")).stream()
            .map(line -> line.replaceFirst("#.*", "").strip())
            .filter(line -> !line.isEmpty())
            .count();
    assertThat(lines).isLessThanOrEqualTo(60);
  }

  @Test
  void itCanBeDone() {
    assertThat(plan.exitCode()).isZero();
    assertThat(plan.json().get("runs")).hasSize(6);
  }

  @Test
  void inchesAreCarriedAsMillimetres() {
    // 3 in = 76.2 mm, 2 in = 50.8 mm
    assertThat(plan.run("left/top").get("lengthMm").asDouble()).isCloseTo(76.2, within(0.001));
    assertThat(plan.run("tab/front").get("lengthMm").asDouble()).isCloseTo(50.8, within(0.001));
  }

  @Test
  void theHingesAreFlaresWithTheirGap() {
    JsonNode preparation = plan.joint("left").get("preparation");
    assertThat(preparation.get("kind").asText()).isEqualTo("flare bevel");
    assertThat(preparation.get("rootGapMm").asDouble()).isCloseTo(1.5875, within(0.0005));
  }

  /** Hand calculation: 0.7 of the 6.35 mm wall is 4.445 mm, less than 5/16 of R 15.875 = 4.961. */
  @Test
  void theFlareThroatIsSevenTenthsOfTheWall() {
    assertThat(plan.joint("left").get("size").get("throat").get("value").asDouble())
        .isCloseTo(4.445, within(0.001));
  }

  @Test
  void stickElectrodesAreCountedInPieces() {
    JsonNode filler = plan.json().get("consumables").get("fillers").get(0);
    assertThat(filler.get("pieces").asInt()).isPositive();
    assertThat(filler.get("designation").asText()).isEqualTo("E7018");
    assertThat(plan.json().get("consumables").get("fillers")).hasSize(1);
    assertThat(plan.json().get("consumables").get("gasLitres").get("value").asDouble()).isZero();
    assertThat(plan.texts(plan.json().get("runs"), "process")).containsOnly("mma");
  }

  @Test
  void theTabHoleIsDrilledBeforeTheTabIsFitted() {
    assertThat(plan.step("drill:tab-hole")).isLessThan(plan.step("fit:tab"));
  }

  @Test
  void sidesOfAHingeTakeTurnsWithTheOtherHinge() {
    assertThat(plan.run("left/top").get("number").asInt())
        .isLessThan(plan.run("left/bottom").get("number").asInt());
    assertThat(plan.run("right/top").get("number").asInt())
        .isLessThan(plan.run("left/bottom").get("number").asInt());
  }

  @Test
  void theUnderSideIsWeldedTurnedOverOnceForAll() {
    assertThat(plan.steps("turn-over:")).hasSize(1);
    assertThat(plan.run("left/bottom").get("lies").asText()).isEqualTo("turned over");
  }

  @Test
  void slagIsCleanedBetweenPasses() {
    JsonNode first = plan.json().get("operations").get(plan.step("weld:left/top") - 1);
    assertThat(first.get("why").toString() + first.get("cautions")).contains("slag");
  }

  @Test
  void theBoresAreTriedColdAndReamed() {
    assertThat(plan.lastStep("ream:bores")).isGreaterThan(plan.lastStep("cool"));
  }

  /** ISO/TR 17671-1: k = 0.8 for covered electrodes. */
  @Test
  void heatInputIsFourFifthsOfTheArcEnergy() {
    JsonNode pass = plan.run("tab/front").get("passes").get(0);
    assertThat(pass.get("heatInput").get("value").asDouble())
        .isCloseTo(0.8 * pass.get("arcEnergy").get("value").asDouble(), within(1e-5));
  }

  @Test
  void theToleranceKeepsItsOwnUnit() {
    // 0.020 in = 0.508 mm
    assertThat(plan.json().get("checks").get(0).get("tolerance").get("value").asDouble())
        .isCloseTo(0.508, within(1e-6));
  }
}
