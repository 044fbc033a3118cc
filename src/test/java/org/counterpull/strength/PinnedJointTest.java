package org.counterpull.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Pins by EN 1993-1-8:2005, 3.13, on a case worked by hand.
 *
 * <p>A lug 10 thick between two ears of 8, 1 mm apart on either side, S355 (f_y 355); pin 20 in
 * holes of 21, f_up 600, f_yp 355. Working load 12 kN, times 1.5 (EN 1990): F = 18 000 N.
 *
 * <pre>
 * A = pi 20^2/4 = 314.16 mm2      one plane 0.6 x 314.16 x 600/1.25 = 90 478 N      9000/90 478 = 0.0995
 * bearing lug 1.5 x 10 x 20 x 355 = 106 500 N      ear 1.5 x 8 x 20 x 355 = 85 200 N
 * M = 18 000/8 (10 + 4 x 1 + 2 x 8) = 67 500 N mm
 * W = pi 20^3/32 = 785.40 mm3     M_R = 1.5 x 785.40 x 355 = 418 225 N mm           67 500/418 225 = 0.1614
 * both 0.1614^2 + 0.0995^2 = 0.03594
 * lug a = 18 000/(2 x 10 x 355) + 2 x 21/3 = 2.535 + 14 = 16.54 mm, c = 2.535 + 7 = 9.535 mm
 * </pre>
 */
class PinnedJointTest {
  private static final PinnedJoint PIN = new PinnedJoint(20, 21, 10, 8, 1, 600, 355, 355);
  private static final double FORCE = 18_000;

  @Test
  void EN1993_1_8_2005_Table3_10_workedByHand() {
    assertThat(PIN.shear().value()).isCloseTo(90_478, within(0.5));
    assertThat(PIN.bearing(10).value()).isCloseTo(106_500, within(0.5));
    assertThat(PIN.bearing(8).value()).isCloseTo(85_200, within(0.5));
    assertThat(PIN.momentNmm(FORCE)).isCloseTo(67_500, within(0.5));
    assertThat(PIN.bending().value()).isCloseTo(418_225, within(0.5));
    assertThat(PIN.combined(FORCE).value()).isCloseTo(0.03594, within(0.000005));
    // The lug's bearing governs: 18 000/106 500.
    assertThat(PIN.use(FORCE)).isCloseTo(0.1690, within(0.00005));
  }

  @Test
  void EN1993_1_8_2005_Table3_9_metalAroundTheHole() {
    assertThat(PIN.beyondHole(FORCE, 10).value()).isCloseTo(16.54, within(0.005));
    assertThat(PIN.besideHole(FORCE, 10).value()).isCloseTo(9.535, within(0.0005));
  }

  @Test
  void aLooseHoleIsSaidAndATightOneRefused() {
    assertThat(new PinnedJoint(20, 24, 10, 8, 1, 600, 355, 355).combined(FORCE).warnings())
        .hasSize(1);
    assertThatThrownBy(() -> new PinnedJoint(20, 19, 10, 8, 1, 600, 355, 355))
        .hasMessageContaining("19.0 mm");
  }

  // Table 7.3: the wall's share. 5 x 355 x 25 (1 + 0.25 x 40/60) = 51 771 N; times 40 mm as a
  // moment.
  @Test
  void EN1993_1_8_2005_Table7_3_plateAlongATube() {
    assertThat(PlateOnTube.pull(60, 5, 40, 355).value()).isCloseTo(51_770.8, within(0.05));
    assertThat(PlateOnTube.moment(60, 5, 40, 355).value()).isCloseTo(40 * 51_770.8, within(2.0));
    assertThat(PlateOnTube.pull(60, 10, 40, 355).warnings()).hasSize(1);
  }
}
