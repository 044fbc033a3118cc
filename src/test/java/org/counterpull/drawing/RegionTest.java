package org.counterpull.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Areas and levels of figures, against elementary geometry. */
class RegionTest {
  @Test
  void halfTheAreaOfARightTriangleLiesBelowOneOverRootTwoOfItsHeight() {
    Region fillet = Region.of(0, 0, 6, 0, 0, 6);
    assertThat(fillet.areaMm2()).isEqualTo(18);
    Point outwards = new Point(1, 1).unit();
    double height = 6 / Math.sqrt(2);
    assertThat(fillet.levelOf(outwards, 9)).isCloseTo(height / Math.sqrt(2), within(1e-9));
    assertThat(fillet.centroid().x()).isCloseTo(2, within(1e-12));
  }

  @Test
  void aCutLeavesTwoPartsThatAddUp() {
    Region groove = Region.of(-1, 0, -6, 10, 6, 10, 1, 0);
    Point up = new Point(0, 1);
    for (double level : new double[] {1, 4, 9}) {
      double both = groove.below(up, level).areaMm2() + groove.above(up, level).areaMm2();
      assertThat(both).isCloseTo(groove.areaMm2(), within(1e-9));
    }
    // Trapezoid: width 2 + h at height h, area 2 h + h * h / 2
    assertThat(groove.below(up, 4).areaMm2()).isCloseTo(16, within(1e-9));
  }
}
