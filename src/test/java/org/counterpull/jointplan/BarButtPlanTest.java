package org.counterpull.jointplan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import org.counterpull.groove.WeldSections;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BarButtPlanTest {
  @TempDir Path folder;

  private JointPlan plan(double diameterMm) {
    return PlannedJoints.of(
            folder,
            """
            weldment: bars
            units: mm
            steel: S235JR
            parts:
              two: {stock: round bar %1$s, length: 200, start: [0, 0, 0], along: x, up: z}
              one: {stock: round bar %1$s, length: 200, start: [200, 0, 0], along: x, up: z}
            joints:
              seam: {between: [one, two], penetration: full}
            machines:
              mag: {process: mag, current: 30..200 A, duty: 60%% at 200 A, supply: 400 V 32 A three-phase, wire: 1.0 mm G3Si1, gas: Ar + 18 CO2}
            """
                .formatted(diameterMm))
        .get(0);
  }

  // Derived: cones of 45 degrees on bars of 12.7 mm leave 4/3 pi 6.35^3 = 1073 mm3; the cap comes
  // on
  // top, 1 mm over a face of 12.7 mm, 2/3 x 12.7 mm2 round the bar.
  @Test
  void conesAreFilledByTheirVolume() {
    JointPlan plan = plan(12.7);
    assertThat(plan.preparation().how()).contains("cones of 45 deg", "6.35 mm");
    RunPlan run = plan.runs().get(0);
    double cap = 2.0 / 3 * 12.7 * Math.PI * 12.7;
    assertThat(run.weldMetalMm3() - cap).isCloseTo(1073, within(0.5));
    assertThat(WeldSections.barConesMm3(12.7)).isCloseTo(1073, within(0.5));
    assertThat(plan.preparation().backing()).isEmpty();
    assertThat(run.passes()).hasSizeGreaterThan(1);
  }

  @Test
  void thickerBarsTakeMorePasses() {
    assertThat(plan(30).runs().get(0).passes().size())
        .isGreaterThan(plan(16).runs().get(0).passes().size());
  }
}
