package org.counterpull.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SectionAreaTest {

  /** EN 10056-1 (from memory), L 50 x 50 x 6, r1 7, r2 3.5: 5.69 cm2, 4.47 kg/m. */
  @Test
  void en10056EqualAngle() {
    double areaMm2 = SectionArea.angleMm2(50, 50, 6, 7, 3.5);
    assertThat(areaMm2 / 100).isCloseTo(5.69, within(0.005));
    assertThat(SectionMass.steelKgPerM(areaMm2)).isCloseTo(4.47, within(0.005));
  }

  /** EN 10219-2 (from memory), 50 x 50 x 3, outside radius 2 t: 5.41 cm2, 4.25 kg/m. */
  @Test
  void en10219SquareTube() {
    double areaMm2 = SectionArea.rectangularTubeMm2(50, 50, 3, 6);
    assertThat(areaMm2 / 100).isCloseTo(5.41, within(0.005));
    assertThat(SectionMass.steelKgPerM(areaMm2)).isCloseTo(4.25, within(0.005));
  }

  /** EN 10210-2 (from memory), 48.3 x 3.2: 4.53 cm2, 3.56 kg/m. */
  @Test
  void en10210RoundTube() {
    double areaMm2 = SectionArea.roundTubeMm2(48.3, 3.2);
    assertThat(areaMm2 / 100).isCloseTo(4.53, within(0.005));
    assertThat(SectionMass.steelKgPerM(areaMm2)).isCloseTo(3.56, within(0.005));
  }

  /** EN 10365 (from memory), IPE 100, r 7: 10.3 cm2, 8.1 kg/m. */
  @Test
  void en10365ISection() {
    double areaMm2 = SectionArea.iSectionMm2(100, 55, 4.1, 5.7, 7);
    assertThat(areaMm2 / 100).isCloseTo(10.3, within(0.05));
    assertThat(SectionMass.steelKgPerM(areaMm2)).isCloseTo(8.1, within(0.05));
  }

  /** By hand: 100 x 50, web 5, flange 8: 2 * 400 + 84 * 5 = 1220 mm2. */
  @Test
  void sharpChannelByHand() {
    assertThat(SectionArea.channelMm2(100, 50, 5, 8, 0)).isEqualTo(1220);
  }

  /** By hand: 60 x 10 flat 1 m long: 600 * 1000 * 7.85e-6 = 4.71 kg. */
  @Test
  void massOfAFlat() {
    double areaMm2 = SectionArea.rectangleMm2(60, 10);
    assertThat(SectionMass.of(areaMm2, 1000, SectionMass.STEEL_KG_PER_M3).value())
        .isCloseTo(4.71, within(1e-9));
    assertThat(SectionMass.of(areaMm2, 1000, 50).warnings())
        .containsExactly("density 50 kg/m3 is outside 1000 to 20000 kg/m3");
  }

  @Test
  void roundBarIsATubeWithoutABore() {
    assertThat(SectionArea.roundTubeMm2(20, 10)).isCloseTo(SectionArea.roundMm2(20), within(1e-9));
  }

  @Test
  void impossibleSectionsAreRefused() {
    assertThatThrownBy(() -> SectionArea.roundTubeMm2(20, 11))
        .hasMessage("wall 11.0 mm must be at most half the outside dimension");
    assertThatThrownBy(() -> SectionArea.rectangleMm2(-1, 10))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> SectionMass.kg(100, Double.NaN, 7850))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
