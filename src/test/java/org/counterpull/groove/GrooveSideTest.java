package org.counterpull.groove;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class GrooveSideTest {
  private static Groove groove(Preparation form) {
    return switch (form) {
      case SQUARE -> Groove.square(24, 2);
      case V, DOUBLE_V -> Groove.straight(form, 24, 2, 1.5, 60);
      case BEVEL, DOUBLE_BEVEL -> Groove.straight(form, 24, 2, 1.5, 45);
      case U, DOUBLE_U -> new Groove(form, 24, 2, 2, 10, 6);
      case J, DOUBLE_J -> new Groove(form, 24, 2, 2, 15, 6);
    };
  }

  // Derived: the area below the level that an area fills is that area.
  @ParameterizedTest
  @EnumSource(Preparation.class)
  void fillLevelsGiveTheirAreaBack(Preparation form) {
    GrooveSide side = groove(form).firstSide();
    double all = side.areaMm2();
    for (int percent = 1; percent <= 100; percent++) {
      double filled = all * percent / 100;
      assertThat(side.areaMm2(side.levelMm(filled))).isCloseTo(filled, within(1e-9));
    }
    assertThat(side.levelMm(2 * all)).isEqualTo(side.heightMm());
  }

  // Derived: the area is the width summed over 100 000 strips, root radius included.
  @ParameterizedTest
  @EnumSource(Preparation.class)
  void areaIsTheWidthSummedUp(Preparation form) {
    GrooveSide side = groove(form).firstSide();
    int strips = 100_000;
    double step = side.heightMm() / strips;
    double sum = 0;
    for (int i = 0; i < strips; i++) {
      sum += step * side.widthMm((i + 0.5) * step);
    }
    assertThat(side.areaMm2()).isCloseTo(sum, within(1e-4));
  }

  @ParameterizedTest
  @EnumSource(Preparation.class)
  void bothSidesTogetherAreTheGroove(Preparation form) {
    Groove groove = groove(form);
    double second = form.isDouble() ? groove.secondSide().areaMm2() : 0;
    assertThat(groove.firstSide().areaMm2() + second)
        .isCloseTo(GrooveArea.mm2(groove), within(1e-9));
  }

  // Derived: 60 degrees, t 20, gap 2, root face 0, thirds: (13.33^2 + 6.667^2) tan 30 + 40 = 168.3.
  @Test
  void unequalDoubleV() {
    Groove groove = Groove.straight(Preparation.DOUBLE_V, 20, 2, 0, 60).withSecondDepth(20 / 3.0);
    assertThat(groove.depthMm()).isCloseTo(40 / 3.0, within(1e-12));
    assertThat(GrooveArea.mm2(groove)).isCloseTo(168.3, within(0.05));
    assertThat(GrooveArea.mm2(groove))
        .isCloseTo(
            WeldSections.unequalDoubleVMm2(20, 2, 40 / 3.0 - 1e-12, 20 / 3.0, 60), within(1e-9));
  }
}
