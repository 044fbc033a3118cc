package org.counterpull.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.counterpull.quantity.LengthUnit;
import org.junit.jupiter.api.Test;

/** plan.md: the important first, nothing lost, names without power. */
class PlanMarkdownTest {
  @Test
  void comesInTheOrderOfTheBench() {
    String text = new PlanReport(SamplePlan.refused(), LengthUnit.MM).markdown();
    assertThat(text)
        .containsSubsequence(
            "# sample",
            "## What can't or mustn't be done",
            "## Cautions",
            "## Welds",
            "## Steps",
            "## Joints rib-0",
            "## Checks",
            "## What is used up",
            "## Assumptions",
            "## Where the numbers come from");
    assertThat(text.lines().filter(line -> line.startsWith("- [ ] ")))
        .hasSize(SamplePlan.refused().operations().size());
    assertThat(text.lines().filter(line -> line.startsWith("| W"))).hasSize(40);
  }

  @Test
  void everyRowOfATableHasItsCells() {
    String text = new PlanReport(SamplePlan.hostile(), LengthUnit.MM).markdown();
    int cells = 0;
    for (String line : text.lines().toList()) {
      if (!line.startsWith("|")) {
        cells = 0;
      } else {
        int here = line.split("(?<!\\\\)\\|", -1).length;
        assertThat(here).as(line).isEqualTo(cells == 0 ? here : cells);
        cells = here;
      }
    }
  }

  @Test
  void namesStayNames() {
    String text = new PlanReport(SamplePlan.hostile(), LengthUnit.MM).markdown();
    assertThat(text)
        .doesNotContain("<script>")
        .doesNotContain("[a](b)")
        .doesNotContain("\u0007")
        .contains("&lt;script&gt;");
  }
}
