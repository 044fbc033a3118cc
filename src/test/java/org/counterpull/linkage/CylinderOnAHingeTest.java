package org.counterpull.linkage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Hand-worked cases; tolerances are half a unit of the last digit that is written out. */
class CylinderOnAHingeTest {
  /**
   * 16 MPa on 50 mm: 16 x 1963.50 mm2 = 31 415.9 N; less the rod of 28 mm, 615.75 mm2: 21 563.9 N.
   */
  @Test
  void forceIsPressureTimesArea() {
    assertThat(CylinderForce.push(16, 50).value()).isCloseTo(31415.9, within(0.05));
    assertThat(CylinderForce.pull(16, 50, 28).value()).isCloseTo(21563.9, within(0.05));
  }

  @Test
  void aRodAsThickAsThePistonIsNoCylinder() {
    assertThatThrownBy(() -> CylinderForce.pull(16, 50, 50))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("50.0 mm");
  }

  /** Pins at (300, 0) and (0, 400) from the axis: 500 mm apart, arm 300 x 400 / 500 = 240 mm. */
  @Test
  void theArmIsTheHeightOfTheTriangle() {
    assertThat(LeverArm.of(300, 0, 0, 400).value()).isCloseTo(240, within(1e-9));
    assertThat(LeverArm.of(0, 400, 300, 0).value()).isCloseTo(-240, within(1e-9));
  }

  /** On one line with the axis there is no arm: dead centre. */
  @Test
  void pinsInLineWithTheAxisHaveNoArm() {
    assertThat(LeverArm.of(-100, -50, 200, 100).value()).isCloseTo(0, within(1e-9));
  }

  /** Virtual work: the pin distance grows by the arm per radian. */
  @Test
  void theArmIsTheSlopeOfThePinDistance() {
    double h = 1e-5;
    for (int deg = 0; deg < 170; deg += 10) {
      double rad = Math.toRadians(deg);
      double slope = (distance(rad + h) - distance(rad - h)) / (2 * h);
      double arm = LeverArm.of(200, -350, 300 * Math.cos(rad), 300 * Math.sin(rad)).value();
      assertThat(arm).as("%d degrees", deg).isCloseTo(slope, within(1e-4));
    }
  }

  private static double distance(double rad) {
    return Math.hypot(300 * Math.cos(rad) - 200, 300 * Math.sin(rad) + 350);
  }

  /** 480 N m against the way of the push, at an arm of 240 mm: 480 000 / 240 = 2000 N of push. */
  @Test
  void theHoldingForceIsMomentOverArm() {
    assertThat(HoldingForce.of(-480_000, 240).value()).isCloseTo(2000, within(1e-9));
    assertThat(HoldingForce.of(480_000, 240).value()).isCloseTo(-2000, within(1e-9));
  }
}
