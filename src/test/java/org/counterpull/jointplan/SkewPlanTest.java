package org.counterpull.jointplan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import org.counterpull.position.WeldingPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A flat that leans 30 degrees: 60 degrees between the faces on one side, 120 on the other. */
class SkewPlanTest {
  private static final double LEG_MM = 6;

  @TempDir Path folder;

  private JointPlan plan() {
    return PlannedJoints.of(
            folder,
            """
            weldment: leaning rib
            units: mm
            steel: S235JR
            parts:
              base: {stock: flat 200 x 10, length: 300, start: [0, 0, 0], along: x, up: z}
              rib: {stock: flat 60 x 10, axis from: [150, 100, 7.5], axis to: [150, 150, 94.1025], ends: {left: mitred 30 long top}}
            joints:
              rib: {between: [rib, base], weld: fillet, leg: 6, sides: [front, back]}
            machines:
              mag: {process: mag, current: 30..250 A, duty: 60% at 250 A, supply: 400 V 32 A three-phase, wire: 1.0 mm G3Si1, gas: Ar + 18 CO2}
            """)
        .get(0);
  }

  // Derived: a fillet of leg z between faces at psi has z^2 sin(psi)/2; a tenth over on the leg is
  // 1.21 of it. The throat is governed by the open side: 6 cos 60 = 3.000.
  @Test
  void bothSidesAreFilledByTheirAngle() {
    JointPlan plan = plan();
    assertThat(plan.runs())
        .map(run -> (double) Math.round(run.line().dihedralDeg()))
        .containsExactlyInAnyOrder(60.0, 120.0);
    assertThat(plan.size().throat().value()).isCloseTo(3.000, within(5e-4));
    for (RunPlan run : plan.runs()) {
      double plain = LEG_MM * LEG_MM * Math.sin(Math.toRadians(run.line().dihedralDeg())) / 2;
      double laid = run.passes().stream().mapToDouble(p -> p.area().value()).sum();
      assertThat(laid).isCloseTo(1.21 * plain, within(0.01));
      assertThat(run.position()).isEqualTo(WeldingPosition.PB);
    }
    assertThat(plan.refusals()).isEmpty();
  }
}
