package org.counterpull.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.counterpull.quantity.LengthUnit;
import org.junit.jupiter.api.Test;

/** What the terminal says. */
class PlanSummaryTest {
  @Test
  void theMostImportantComesFirst() {
    String text =
        new PlanReport(SamplePlan.refused(), LengthUnit.MM).summary(List.of("out/plan.html"));
    assertThat(text)
        .startsWith("sample: Not all of this can be done")
        .containsSubsequence(
            "  NO  splice: no machine fuses its root",
            "joints\n",
            "rib-0: one pass (shop mag), fillet, leg z 6 mm, throat a 4.2 mm, W1 W2",
            "order of welding\n  W1 rib-0/right, W2 rib-0/left,",
            "time\n",
            "written\n  out/plan.html");
  }

  @Test
  void noLineIsWiderThanTheTerminal() {
    String text = new PlanReport(SamplePlan.hostile(), LengthUnit.MM).summary(List.of());
    assertThat(text.lines()).isNotEmpty().allMatch(line -> line.length() <= 100);
    assertThat(text.replace("\n", "")).doesNotContainPattern("\\p{Cntrl}");
  }
}
