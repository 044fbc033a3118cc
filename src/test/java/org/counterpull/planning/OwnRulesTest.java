package org.counterpull.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.counterpull.order.AppliedRule;
import org.counterpull.plan.Plan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Rules of a file's or a shop's own stand beside those of the program. */
class OwnRulesTest {
  private static final Path TEE = Path.of("src/test/resources/rules/tee.yaml");
  private static final String WORK =
      "features: {m12: {on: plate, kind: thread, at: [70, 30, 4], axis: z, diameter: 12},"
          + " eye: {on: plate, kind: hole, at: [50, 30, 4], axis: z, diameter: 10.5, turns on: pin 10}}\n";

  @TempDir Path folder;

  private Plan plan(String added) throws IOException {
    return PlannedFile.of(TEE, WORK + added, folder).plan();
  }

  private static int place(Plan plan, String id) {
    return plan.operations().stream()
        .filter(timed -> timed.operation().id().equals(id))
        .findFirst()
        .orElseThrow()
        .number();
  }

  /** Without a rule the plug comes out before the reamer; with one it stays in. */
  @Test
  void aRuleOfTheFileChangesTheOrderAndIsListedWithItsReason() throws IOException {
    assertThat(place(plan(""), "unmask:m12")).isLessThan(place(plan(""), "ream:eye"));
    Plan plan =
        plan("rules: {chips: {first: ream, then: unmask, because: chips get under the plug}}");
    assertThat(place(plan, "ream:eye")).isLessThan(place(plan, "unmask:m12"));
    AppliedRule rule =
        plan.practice().rules().stream()
            .filter(r -> r.id().equals("chips"))
            .findFirst()
            .orElseThrow();
    assertThat(rule.relation()).isEqualTo("ream before unmask");
    assertThat(rule.reason()).isEqualTo("chips get under the plug.");
    assertThat(rule.hardness()).isEqualTo(AppliedRule.Hardness.MUST);
    assertThat(rule.source()).isEqualTo("the shop's own");
  }

  @Test
  void aRuleOfTheShopFileCountsAlike() throws IOException {
    Files.writeString(
        folder.resolve("shop.yaml"),
        "rules: {chips: {first: ream, then: unmask, because: chips get under the plug}}\n");
    Plan plan = plan("include: shop.yaml");
    assertThat(place(plan, "ream:eye")).isLessThan(place(plan, "unmask:m12"));
  }

  @Test
  void aPreferenceGivesWayToAHardRule() throws IOException {
    Plan plan =
        plan("rules: {late: {first: ream, then: cool, because: it is quicker, hard: false}}");
    assertThat(plan.refusals()).isEmpty();
    assertThat(place(plan, "cool")).isLessThan(place(plan, "ream:eye"));
  }

  @Test
  void aHardRuleThatClosesACircleIsSaidWithAllOfIt() throws IOException {
    Plan plan = plan("rules: {hot: {first: ream, then: weld, because: it is quicker}}");
    assertThat(plan.refusals()).hasSize(1);
    assertThat(plan.refusals().get(0).why())
        .contains("(hot): it is quicker.")
        .contains("cool before ream eye (R02)");
    assertThat(plan.refusals().get(0).wayForward()).contains("Leave out the file's rule \"hot\".");
  }
}
