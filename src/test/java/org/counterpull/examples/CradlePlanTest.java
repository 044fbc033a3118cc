package org.counterpull.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CradlePlanTest {
  @TempDir static Path folder;
  static PlannedExample plan;

  @BeforeAll
  static void planned() throws IOException {
    plan = PlannedExample.of("cradle", folder);
  }

  @Test
  void theSealComesOutBeforeAnyArcAndANewOneGoesInCold() {
    assertThat(plan.step("remove-sensitive:gland seal")).isLessThan(plan.step("tack:"));
    assertThat(plan.step("refit:gland seal")).isGreaterThan(plan.lastStep("cool"));
  }

  @Test
  void theBoreIsGaugedColdAfterTheLastWeld() {
    assertThat(plan.lastStep("ream:swept bore")).isGreaterThan(plan.lastStep("weld:"));
    assertThat(plan.lastStep("ream:swept bore")).isGreaterThan(plan.lastStep("cool"));
  }

  /** A swept bore of H8 is honed: a reamer leaves a surface that eats the piston's seal. */
  @Test
  void theBoreIsHonedAndNotReamed() {
    int number = plan.step("ream:swept bore");
    assertThat(plan.json().get("operations").get(number - 1).get("what").asText())
        .isEqualTo("Gauge swept bore in three planes; hone to 50 mm H8 where it is tight");
  }

  @Test
  void aLugIsWeldedAlongTheBarrelOnBothSides() {
    assertThat(plan.run("lug/front").get("lengthMm").asDouble()).isCloseTo(40, within(0.001));
    assertThat(plan.run("lug/back").get("lengthMm").asDouble()).isCloseTo(40, within(0.001));
  }

  /** Hand calculation: 60 mm round, pi x 60 = 188.50 mm all round. */
  @Test
  void theCapIsWeldedAllRoundStandingOnEnd() {
    JsonNode run = plan.run("cap/outside");
    assertThat(run.get("lengthMm").asDouble()).isCloseTo(188.496, within(0.01));
    assertThat(run.get("lies").asText()).isEqualTo("stood on its left edge");
    assertThat(run.get("position").asText()).isEqualTo("PB");
  }

  @Test
  void theInsideOfTheBarrelIsOutOfReach() {
    assertThat(plan.joint("cap").get("notes").toString()).contains("cap/inside is left unwelded");
  }

  /** Hand calculation: pi (30^2 - 25^2) = 863.9 mm2. */
  @Test
  void theBarrelStandsOnItsRing() {
    assertThat(plan.joint("cap").get("contactAreaMm2").asDouble()).isCloseTo(863.9, within(0.1));
  }

  /** CET by hand: 0.18 + 1.40 / 10 = 0.320 (EN 1011-2 C.3); no Cr, Mo, Ni, Cu are given. */
  @Test
  void theCertificateOfTheBarrelGoverns() {
    JsonNode equivalents = plan.joint("lug").get("carbonEquivalents");
    assertThat(equivalents.get(1).get("formula").asText()).isEqualTo("cet");
    assertThat(equivalents.get(1).get("value").asDouble()).isCloseTo(0.320, within(0.0005));
  }

  /**
   * EN 1011-2 C.8 by hand for the cap's 25 mm: 697 x 0.32 + 160 tanh(25/35) + 62 x 5^0.35 + (53 x
   * 0.32 - 32) Q - 328 with the least heat input of its passes; the order to heat is the next full
   * 10 degrees.
   */
  @Test
  void theThickCapIsPreheated() {
    JsonNode preheat = plan.joint("cap").get("preheat");
    assertThat(preheat.get("formula").asText()).isEqualTo("preheat-cet");
    double withoutHeat = 697 * 0.32 + 160 * Math.tanh(25 / 35.0) + 62 * Math.pow(5, 0.35) - 328;
    JsonNode methodB = plan.joint("cap").get("steel").get("preheats").get(0).get("answer");
    double heatInput = (withoutHeat - methodB.get("value").asDouble()) / (32 - 53 * 0.32);
    assertThat(heatInput).isBetween(0.3, 0.5);
    assertThat(preheat.get("value").asDouble())
        .isEqualTo(10 * Math.ceil(methodB.get("value").asDouble() / 10));
    assertThat(plan.step("preheat-for-tacks:cap")).isLessThan(plan.step("tack:cap"));
  }

  @Test
  void anOversizeLegIsPointedOut() {
    assertThat(plan.joint("lug").get("notes").toString()).contains("more than the thinner part");
  }

  @Test
  void hydraulicsBringTheirCautions() {
    assertThat(plan.texts(plan.json().get("cautions"), "id")).contains("K08", "K09", "K34");
  }

  @Test
  void theLoadIsSquareToTolerance() {
    assertThat(plan.json().get("checks").get(0).get("tolerance").get("value").asDouble())
        .isEqualTo(0.5);
  }
}
