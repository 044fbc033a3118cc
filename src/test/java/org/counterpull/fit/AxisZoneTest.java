package org.counterpull.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.counterpull.fit.AxisZone.Off;
import org.junit.jupiter.api.Test;

class AxisZoneTest {
  private static final double EXACT_MM = 1e-5;

  // By hand: the line through both ends moved half way towards the middle is as far from all three.
  @Test
  void threePointsInAPlaneTakeHalfOfWhatTheMiddleIsOff() {
    AxisZone zone = AxisZone.of(List.of(off(0, 0, 0), off(500, 0.4, 0), off(1000, 0, 0)));
    assertThat(zone.radiusMm()).isCloseTo(0.2, within(EXACT_MM));
    assertThat(zone.points().get(1).oneMm()).isCloseTo(0.2, within(1e-4));
    assertThat(zone.points().get(0).oneMm()).isCloseTo(-0.2, within(1e-4));
  }

  // By hand: a quarter of the way along, the chord's weights are 3/4 and 1/4; in a zone of radius R
  // the ends can lie R on one side and the middle one R on the other: 2 R = 0.4 again.
  @Test
  void whereTheMiddleOneStandsDoesNotMatter() {
    AxisZone zone = AxisZone.of(List.of(off(0, 0, 0), off(250, 0, 0.4), off(1000, 0, 0)));
    assertThat(zone.radiusMm()).isCloseTo(0.2, within(EXACT_MM));
  }

  // By hand: the four middles of a square screw, each 0.3 off in turn, at one place along: the
  // circle round them has radius 0.3.
  @Test
  void pointsAtOnePlaceTakeTheCircleRoundThem() {
    AxisZone zone =
        AxisZone.of(List.of(off(0, 0.3, 0), off(0, 0, 0.3), off(0, -0.3, 0), off(0, 0, -0.3)));
    assertThat(zone.radiusMm()).isCloseTo(0.3, within(EXACT_MM));
  }

  // The smallest circle round an acute triangle is the one through its corners, a b c/(4 A).
  @Test
  void threePointsAtOnePlaceTakeTheCircleThroughThem() {
    AxisZone zone = AxisZone.of(List.of(off(0, 0, 0), off(0, 0.6, 0), off(0, 0.3, 0.5)));
    double side = Math.hypot(0.3, 0.5);
    assertThat(zone.radiusMm()).isCloseTo(0.6 * side * side / (4 * 0.15), within(EXACT_MM));
  }

  @Test
  void aLineThatIsOnlyTiltedIsStraight() {
    AxisZone zone =
        AxisZone.of(List.of(off(0, 1, 2), off(100, 2, 1), off(300, 4, -1), off(1000, 11, -8)));
    assertThat(zone.radiusMm()).isLessThan(1e-6);
  }

  @Test
  void twoPointsAlwaysLieOnALine() {
    assertThat(AxisZone.of(List.of(off(0, 3, 1), off(60, -2, 4))).radiusMm()).isLessThan(1e-9);
  }

  // Weighted means never exceed the radius and farthest residuals never fall below it.
  @Test
  void theRadiusIsShownToBeTheLeast() {
    Random random = new Random(7);
    for (int row = 0; row < 30; row++) {
      List<Off> points = new ArrayList<>();
      for (int i = 0; i < 12; i++) {
        points.add(off(100 * i, random.nextGaussian(), random.nextGaussian()));
      }
      AxisZone zone = AxisZone.of(points);
      assertThat(zone.leastMm()).isLessThanOrEqualTo(zone.radiusMm());
      assertThat(zone.radiusMm() - zone.leastMm()).isLessThan(1e-3);
    }
  }

  @Test
  void turningTheRowAboutItsAxisChangesNothing() {
    List<Off> points =
        List.of(off(0, 0.1, 0), off(300, -0.2, 0.3), off(700, 0.4, 0.1), off(900, 0, 0));
    List<Off> turned =
        points.stream()
            .map(
                p ->
                    off(
                        p.alongMm(),
                        0.6 * p.oneMm() - 0.8 * p.otherMm(),
                        0.8 * p.oneMm() + 0.6 * p.otherMm()))
            .toList();
    assertThat(AxisZone.of(turned).radiusMm())
        .isCloseTo(AxisZone.of(points).radiusMm(), within(EXACT_MM));
  }

  @Test
  void nothingHasNoAxis() {
    assertThatThrownBy(() -> AxisZone.of(List.of())).hasMessageContaining("at least 1 point");
    assertThatThrownBy(() -> off(0, Double.NaN, 0)).isInstanceOf(IllegalArgumentException.class);
  }

  private static Off off(double along, double one, double other) {
    return new Off(along, one, other);
  }
}
