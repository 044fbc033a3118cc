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

class ThickBracketPlanTest {
  @TempDir static Path folder;
  static PlannedExample plan;

  @BeforeAll
  static void planned() throws IOException {
    plan = PlannedExample.of("thick-bracket", folder);
  }

  @Test
  void itCanBeDone() {
    assertThat(plan.exitCode()).isZero();
    assertThat(plan.json().get("refusals")).isEmpty();
  }

  /**
   * Hand calculation, EN 1993-1-8 simplified: two lines of 100 - 2 x 5.657 = 88.69 mm; 20 kN along
   * them on a pin 110 mm above: bending 20000 x 110 / (88.69^2 / 3) = 839.1, direct 20000 / (2 x
   * 88.69) = 112.8, together 846.7 N/mm; at 1.5 times that, on 5.657 mm of 241.2 MPa (S355, fu
   * 470): 0.931. The ends of 15 mm are too short to count.
   */
  @Test
  void theEarsCarryTheirLoadByHandCalculation() {
    JsonNode load = plan.joint("ear-1").get("load");
    assertThat(load.get("utilisation").get("value").asDouble()).isCloseTo(0.931, within(0.0005));
    assertThat(load.get("ways").get(0).get("lineForce").get("value").asDouble())
        .isCloseTo(846.7, within(0.1));
  }

  @Test
  void theBenchMachineOnlyTacks() {
    for (String joint : new String[] {"ear-1", "ear-2", "web-base", "web-1", "web-2"}) {
      assertThat(plan.verdict("bench mag", joint)).isEqualTo("tack-only");
    }
  }

  @Test
  void thePlanSaysWhatTheSmallMachineWouldNeedAndHowTheWorkIsSplit() throws IOException {
    String text = Files.readString(folder.resolve("plan.md"));
    assertThat(text)
        .contains("bench mag (here) gives 140 A on its socket: one pass melts through 3.5 mm")
        .contains("bench mag on ear-1, ear-2: tack only: short-circuit transfer above 6.4 mm")
        .contains("and then still a preheat of 164")
        .contains("The split: cut, fit and tack at the bench with bench mag")
        .contains("big mag (neighbour's workshop) welds 14 runs");
  }

  @Test
  void theBiggerMachineWelds() {
    assertThat(plan.verdict("big mag", "ear-1")).isEqualTo("with-preparation");
    assertThat(plan.verdict("big mag", "web-base")).isEqualTo("one-pass");
    assertThat(plan.texts(plan.json().get("runs"), "machine")).containsOnly("big mag");
  }

  @Test
  void itIsTackedHereAndWeldedThere() {
    int moved = plan.step("move:");
    assertThat(plan.lastStep("tack:")).isLessThan(moved);
    assertThat(plan.step("weld:")).isGreaterThan(moved);
    assertThat(plan.steps("move:")).hasSize(1);
    JsonNode first = plan.json().get("operations").get(plan.step("weld:") - 1);
    assertThat(first.get("place").asText()).isEqualTo("neighbour's workshop");
  }

  @Test
  void theProcessGateNamesWhatStopsTheSmallMachine() {
    JsonNode bench = plan.json().get("machines").get(0);
    assertThat(bench.get("verdicts").toString()).contains("short-circuit transfer above 6.4 mm");
  }

  /** Hand calculation: z 8, 1.21 x 64 / 2 = 38.7 mm2 in two passes of 19.4. */
  @Test
  void anEightMillimetreFilletTakesTwoPasses() {
    JsonNode passes = plan.run("ear-1/left").get("passes");
    assertThat(passes).hasSize(2);
    assertThat(passes.get(0).get("area").get("value").asDouble()).isCloseTo(19.36, within(0.01));
  }

  /** Throat by hand: 8 / root 2 = 5.657. */
  @Test
  void legAndThroatAreBothNamed() {
    JsonNode size = plan.joint("ear-1").get("size");
    assertThat(size.get("leg").get("value").asDouble()).isEqualTo(8);
    assertThat(size.get("throat").get("value").asDouble()).isCloseTo(5.657, within(0.0005));
  }

  /**
   * EN 1011-2 C.8 by hand with the passes' 0.774 kJ/mm (two beads of 19.36 mm2, 0.968 kJ/mm of arc
   * energy, k 0.8); CET 0.3095 (typical S355J2), 20 mm, 5 ml/100 g: 215.7 + 82.6 + 108.9 - 12.1 -
   * 328 = 67.1 C. The order to heat is the next full 10 degrees.
   */
  @Test
  void twentyMillimetresArePreheated() {
    JsonNode ear = plan.joint("ear-1");
    JsonNode methodB = ear.get("steel").get("preheats").get(0);
    assertThat(methodB.get("answer").get("value").asDouble()).isCloseTo(67.1, within(0.1));
    assertThat(methodB.get("counts").asBoolean()).isTrue();
    assertThat(ear.get("preheat").get("value").asDouble()).isEqualTo(70);
    assertThat(plan.json().get("preheat").get("joints").toString()).contains("ear-1");
    assertThat(plan.step("preheat-for-tacks:ear-1")).isLessThan(plan.step("tack:ear-1"));
  }

  @Test
  void theSpacerGoesInBeforeTheEarsAreTackedAndComesOutWarmToTheHand() {
    assertThat(plan.step("fixture:ear spacer")).isLessThan(plan.step("tack:ear-1"));
    assertThat(plan.step("release:ear spacer")).isGreaterThan(plan.lastStep("weld:"));
  }

  @Test
  void earHolesAreFinishedAfterWelding() {
    assertThat(plan.step("drill:eye-1")).isLessThan(plan.step("fit:ear-1"));
    assertThat(plan.step("ream:eye-1")).isGreaterThan(plan.lastStep("weld:"));
  }

  @Test
  void uprightRunsAreBroughtFlat() {
    assertThat(plan.run("web-1/front").get("lies").asText()).startsWith("stood on its");
    assertThat(plan.run("web-1/front").get("position").asText()).isEqualTo("PB");
  }

  /** Neither ear is finished before the other has its first run. */
  @Test
  void theEarsAreWeldedByTurns() {
    assertThat(first("ear-1/")).isLessThan(plan.lastStep("weld:ear-2/"));
    assertThat(first("ear-2/")).isLessThan(plan.lastStep("weld:ear-1/"));
  }

  /** One ear after the other leaves them further from parallel than the order that is planned. */
  @Test
  void itsOrderKeepsTheChecksBetterThanTheOthersDo() {
    JsonNode orders = plan.json().get("shape").get("orders");
    assertThat(plan.texts(orders, "order"))
        .containsExactly("best", "rules", "one-side-first", "left-to-right");
    double planned = orders.get(0).get("worst").asDouble();
    for (int other = 1; other < orders.size(); other++) {
      assertThat(planned).isLessThan(orders.get(other).get("worst").asDouble());
    }
  }

  private int first(String run) {
    int first = Integer.MAX_VALUE;
    for (var operation : plan.json().get("operations")) {
      if (operation.get("id").asText().startsWith("weld:" + run)) {
        first = Math.min(first, operation.get("number").asInt());
      }
    }
    return first;
  }

  @Test
  void whoeverStandsUnderItIsThoughtOf() {
    assertThat(plan.texts(plan.json().get("cautions"), "id")).contains("K34", "K36");
  }
}
