package org.counterpull.jointplan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import org.counterpull.contact.WeldLine;
import org.counterpull.jointplan.EdgePreparation.Kind;
import org.counterpull.position.WeldingPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlugPlanTest {
  @TempDir Path folder;

  private JointPlan plan(String weld) {
    return PlannedJoints.of(
            folder,
            """
            weldment: strap
            units: mm
            steel: S235JR
            parts:
              plate: {stock: flat 120 x 12, length: 400, start: [0, 0, 0]}
              strap: {stock: flat 60 x 8, length: 240, onto: plate, face: top, at: middle}
            joints:
              strap: {between: [strap, plate], %s}
            machines:
              mag: {process: mag, current: 30..250 A, duty: 60%% at 250 A, supply: 400 V 32 A three-phase, wire: 1.0 mm G3Si1, gas: Ar + 18 CO2}
            """
                .formatted(weld))
        .get(0);
  }

  // Derived: a plug of 16 through 8 mm is 1608 mm3; its cap of 1 mm is a parabola over each radius.
  @Test
  void plugsFillTheirHoles() {
    JointPlan plan = plan("weld: plug, holes: {diameter: 16, count: 3}");
    assertThat(plan.preparation().kind()).isEqualTo(Kind.PLUG);
    assertThat(plan.preparation().how()).contains("drill 3 holes of 16 mm").contains("64 mm");
    assertThat(plan.runs()).hasSize(3);
    RunPlan run = plan.runs().get(0);
    assertThat(run.line().shape()).isEqualTo(WeldLine.Shape.PLUG);
    assertThat(run.position()).isEqualTo(WeldingPosition.PA);
    double cap = 2.0 / 3 * 8 * run.weldedMm();
    assertThat(run.weldMetalMm3() - cap).isCloseTo(1608, within(0.5));
    assertThat(plan.refusals()).isEmpty();
  }

  // Derived: a slot of 40 x 16 through 8 mm is 4680 mm3.
  @Test
  void slotsFillTheirLength() {
    JointPlan plan = plan("weld: slot, holes: {diameter: 16, length: 40}");
    assertThat(plan.preparation().kind()).isEqualTo(Kind.SLOT);
    RunPlan run = plan.runs().get(0);
    assertThat(run.line().path().lengthMm()).isCloseTo(24, within(1e-9));
    double wide = plan.size().throat().value();
    assertThat(run.weldMetalMm3() - 2.0 / 3 * wide * 24).isCloseTo(4680, within(0.5));
  }

  // EN 1993-1-8: design shear of S235 207.8 MPa; three plugs of 201.1 mm2, 20 kN x 1.5 along:
  // 30000 / (3 x 201.1 x 207.8) = 0.2393.
  @Test
  void plugsCarryByTheirArea() {
    JointPlan plan = plan("weld: plug, holes: {diameter: 16, count: 3}, load: 20 kN");
    LoadCheck check = plan.loadCheck().orElseThrow();
    assertThat(check.ways().get(0).simplified().value()).isCloseTo(0.2393, within(5e-4));
  }

  @Test
  void whatDoesNotFitIsSaid() {
    assertThat(plan("weld: plug, holes: {diameter: 16, count: 9}").refusals())
        .anyMatch(r -> r.contains("9 holes are asked for") && r.contains("4 fit"));
    assertThat(plan("weld: plug, holes: {diameter: 10, count: 1}").notes())
        .anyMatch(n -> n.contains("outside 16 mm to 19 mm"));
  }
}
