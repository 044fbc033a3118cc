package org.counterpull.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PitCoverPlanTest {
  @TempDir static Path folder;
  static PlannedExample plan;

  @BeforeAll
  static void planned() throws IOException {
    plan = PlannedExample.of("pit-cover", folder);
  }

  @Test
  void itCanBeDoneOnTheOneMachine() {
    assertThat(plan.exitCode()).isZero();
    assertThat(plan.json().get("refusals")).isEmpty();
    assertThat(plan.texts(plan.json().get("runs"), "machine")).containsOnly("shop mag");
  }

  @Test
  void itHasFortyToSeventyRunsAndFifteenToTwentyFiveParts() {
    assertThat(plan.json().get("runs").size()).isBetween(40, 70);
    assertThat(plan.steps("fit:")).hasSizeBetween(15, 30);
  }

  @Test
  void everyJointIsTackedBeforeAnyRunIsWelded() {
    assertThat(plan.lastStep("tack:")).isLessThan(plan.step("weld:"));
  }

  @Test
  void theRodGoesInBeforeAHingeIsTackedAndComesOutCold() {
    int rodIn = plan.step("through-rod:hinge rod");
    for (int hinge = 1; hinge <= 6; hinge++) {
      assertThat(plan.step("tack:hinge-" + hinge)).isGreaterThan(rodIn);
    }
    assertThat(plan.step("remove-rod:hinge rod")).isGreaterThan(plan.lastStep("weld:"));
    assertThat(plan.step("remove-rod:hinge rod")).isGreaterThan(plan.step("cool"));
  }

  @Test
  void theTwoEndHingesAreTackedBeforeTheMiddleOnes() {
    int outer = Math.max(plan.step("tack:hinge-1"), plan.step("tack:hinge-6"));
    assertThat(plan.step("tack:hinge-2")).isGreaterThan(outer);
    assertThat(plan.step("tack:hinge-5")).isGreaterThan(outer);
  }

  @Test
  void lugHolesAreDrilledUndersizeAndFinishedAfterTheLastWeld() {
    assertThat(plan.step("drill:eye-1")).isLessThan(plan.step("fit:lug-1"));
    assertThat(plan.step("ream:eye-1")).isGreaterThan(plan.lastStep("weld:"));
  }

  /** Pins and grease go in after the paint, nothing else. */
  @Test
  void itIsMeasuredColdThenPaintedThenHungAndSwung() {
    assertThat(plan.lastStep("measure")).isGreaterThan(plan.lastStep("weld:"));
    assertThat(plan.step("paint")).isGreaterThan(plan.lastStep("measure"));
    assertThat(plan.step("fit-pin:bores")).isGreaterThan(plan.step("paint"));
    assertThat(plan.step("grease:bores")).isGreaterThan(plan.step("fit-pin:bores"));
    assertThat(plan.step("prop:cover")).isLessThan(plan.step("try-swing:cover"));
    assertThat(plan.step("unprop:cover")).isEqualTo(plan.json().get("operations").size());
  }

  /** The rules that a hinged cover with lugs, a rod and corners asks for, each with its reason. */
  @Test
  void everyRuleThatAppliesIsThereWithItsReason() {
    JsonNode rules = plan.json().get("practice").get("rules");
    assertThat(plan.texts(rules, "id"))
        .contains("R01", "R02", "R03", "R05d", "R10", "R11", "R14", "R17", "R18", "R18b", "R19")
        .contains("R20", "R21", "R21b", "R22", "R23", "R25", "R27", "R28", "R29", "R30", "R31")
        .contains("R38", "R39", "R41", "R44");
    for (JsonNode rule : rules) {
      assertThat(rule.get("reason").asText()).endsWith(".");
      assertThat(rule.get("source").asText()).isNotBlank();
    }
  }

  @Test
  void pinsGoInFromTheEndAndTheSwingIsFree() {
    assertThat(plan.texts(plan.json().get("practice").get("accessLost"), "tool"))
        .doesNotContain("pin", "rod");
    JsonNode swing = plan.json().get("practice").get("swings").get(0);
    assertThat(swing.get("clash").isNull()).isTrue();
    assertThat(swing.get("faults")).isEmpty();
    assertThat(swing.get("moving")).hasSize(14);
  }

  /**
   * By hand, seen along the hinge (Y 917, Z 44): pins at (-317, -844) and (-557, -67), so 813.22 mm
   * apart, and |(-317)(-67) - (-844)(-557)| / 813.22 = 551.96 mm of arm.
   */
  @Test
  void theCylindersArmAtTheStartIsThatOfTheTriangle() {
    JsonNode first =
        plan.json().get("practice").get("swings").get(0).get("positions").get(0).get("drive");
    assertThat(first.get("pinToPinMm").asDouble()).isCloseTo(813.22, within(0.005));
    assertThat(Math.abs(first.get("leverArm").get("value").asDouble()))
        .isCloseTo(551.96, within(0.005));
  }

  @Test
  void overheadRunsAreWeldedTurnedOver() {
    JsonNode run = plan.run("corner-fl/front");
    assertThat(run.get("lies").asText()).isEqualTo("turned over");
    assertThat(run.get("position").asText()).isEqualTo("PB");
    assertThat(plan.texts(plan.json().get("runs"), "position"))
        .allMatch(position -> List.of("PA", "PB", "PC").contains(position));
  }

  /**
   * Hand calculation, the worked fillet: leg 5, E = 0.03051 x 25 = 0.7628 kJ/mm by the leg-energy
   * relation (from memory: structural welding guides of the 1990s); heat input 0.8 times that
   * (ISO/TR 17671-1); throat 5 / root 2.
   */
  @Test
  void energiesOfAFiveMillimetreFilletAreThoseOfTheLegEnergyRelation() {
    JsonNode pass = plan.run("pad/top").get("passes").get(0);
    double arc = pass.get("arcEnergy").get("value").asDouble();
    assertThat(arc).isCloseTo(0.7628, within(0.01));
    assertThat(pass.get("heatInput").get("value").asDouble()).isCloseTo(0.8 * arc, within(1e-5));
    assertThat(pass.get("netHeat").get("value").asDouble()).isCloseTo(800 * arc, within(0.01));
    assertThat(plan.joint("pad").get("size").get("throat").get("value").asDouble())
        .isCloseTo(3.5355, within(0.0005));
  }

  /** Hand calculation: 564 mm2 = 50 x 6 + 44 x 6, the section of the angle without its radii. */
  @Test
  void theAngleStandsOnItsWholeSection() {
    assertThat(plan.joint("corner-fl").get("contactAreaMm2").asDouble())
        .isCloseTo(564, within(0.01));
  }

  /**
   * Hand calculation at 7.85 g/cm3: angles 2 x 1180 x 564, sides and bar 60 x 10 x (900 + 900 +
   * 1200), cross bars 3 x 40 x 10 x 888, pad 80 x 10 x 120, lugs 2 x 50 x 10 x 41, tab 40 x 8 x 50,
   * leaves 3 x 60 x 10 x 60, knuckles 6 x 60 x pi x 6.5 x 23.5: 36.34 kg, and the weld metal.
   */
  @Test
  void theMassIsThatOfTheStockAndTheWeldMetal() {
    double stock =
        7.85e-6
            * (2 * 1180 * 564
                + 60 * 10 * 3000
                + 3 * 40 * 10 * 888
                + 80 * 10 * 120
                + 2 * 50 * 10 * 41
                + 40 * 8 * 50
                + 3 * 60 * 10 * 60
                + 6 * 60 * Math.PI * 6.5 * 23.5);
    JsonNode used = plan.json().get("consumables");
    double metal = used.get("weldMetalKg").get("value").asDouble();
    assertThat(used.get("massKg").get("value").asDouble()).isCloseTo(stock + metal, within(0.01));
  }

  @Test
  void aFirstPassOnTenMillimetresIsWeldedInSpray() {
    assertThat(plan.verdict("shop mag", "pad")).isEqualTo("one-pass");
    assertThat(plan.run("pad/top").get("transfer").asText()).isEqualTo("spray");
  }

  @Test
  void theFirstFiveCautionsAreThereAndTheLiftingOne() {
    assertThat(plan.texts(plan.json().get("cautions"), "id"))
        .contains("K01", "K02", "K03", "K04", "K05", "K23", "K29");
  }

  @Test
  void toleranceByClassIsLookedUp() {
    // ISO 13920:1996 Table 3, class F, over 1000 to 2000 mm: 4.5 mm
    JsonNode check = plan.json().get("checks").get(1);
    assertThat(check.get("name").asText()).isEqualTo("rail straight");
    assertThat(check.get("tolerance").get("value").asDouble()).isEqualTo(4.5);
    double expected = check.get("expected").asDouble();
    assertThat(check.get("low").asDouble()).isLessThan(expected);
    assertThat(check.get("high").asDouble()).isGreaterThan(expected).isLessThan(4.5);
  }

  /**
   * The order found keeps the worst check nearer than that of the rules and than one side first.
   */
  @Test
  void theOrderIsTheOneThatKeepsTheChecksNearest() {
    JsonNode shape = plan.json().get("shape");
    assertThat(shape.get("order").asText()).isEqualTo("best");
    double worst = 0;
    double others = Double.MAX_VALUE;
    for (JsonNode order : shape.get("orders")) {
      double one = order.get("worst").asDouble();
      if (order.get("order").asText().equals("best")) {
        worst = one;
      } else {
        others = Math.min(others, one);
      }
    }
    assertThat(worst).isPositive().isLessThan(others);
    assertThat(plan.texts(plan.json().get("runs"), "name"))
        .isEqualTo(plan.texts(shape.get("sequence"), "run"));
  }

  /** The words of a step and the direction of its line say the same: the rails lie along x. */
  @Test
  void aRunStartsAtTheEndThatItsStepNames() {
    int compared = 0;
    for (JsonNode step : plan.json().get("operations")) {
      String name = step.get("run").asText();
      String what = step.get("what").asText();
      boolean fromLeft = what.endsWith("from the left");
      boolean along =
          step.get("id").asText().equals("weld:" + name)
              && name.startsWith("corner-f")
              && (fromLeft || what.endsWith("from the right"));
      if (along) {
        // The sides lie along y: their left end is the front of the weldment.
        JsonNode run = plan.run(name);
        double from = run.get("start").get(1).asDouble();
        double to = run.get("end").get(1).asDouble();
        assertThat(to > from).as(what).isEqualTo(fromLeft);
        compared++;
      }
    }
    assertThat(compared).isPositive();
  }
}
