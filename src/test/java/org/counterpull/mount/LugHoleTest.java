package org.counterpull.mount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.counterpull.strength.PinnedJoint;
import org.junit.jupiter.api.Test;

/** The hole of a lug against its pin. */
class LugHoleTest {
  // Lean of one side 0.010 leg/(t + leg/3) = 0.06/12 = 0.005 rad (derived); a quarter is left, half
  // at most. At 45 mm:
  // 0.056 mm off, up to 0.1125; over 10 mm 0.0125 mm out of parallel.
  @Test
  void whatTheSecondSideLeaves() {
    LugHole hole = LugHole.through(Cases.cradle(), 16);
    assertThat(hole.offsetMm().value()).isCloseTo(0.05625, within(1e-6));
    assertThat(hole.offsetMm().high()).isCloseTo(0.1125, within(1e-6));
    assertThat(hole.tiltMm().value()).isCloseTo(0.0125, within(1e-6));
    assertThat(hole.pilotMm()).isEmpty();
  }

  // A shape engine's lean goes before: 0.01 rad up to 0.02 puts the hole 0.9 mm off: drill 16.5 -
  // 1.8 - 0.5 = 14 mm.
  @Test
  void moreLeanWantsReaming() {
    PinnedJoint pin = new PinnedJoint(16, 16.5, 10, 8, 1, 600, 340, 355);
    LugHole hole = LugHole.of(Cases.cradle(), pin, Optional.of(new Span(0.005, 0.01, 0.02)));
    assertThat(hole.pilotMm()).contains(14.0);
    assertThat(hole.words().get(1)).contains("drill 14 mm before welding", "ream to 16.5 mm");
  }

  // 12 kN x 1.5 on a pin 16: shear 0.6 x 201.06 x 600/1.25 = 57 906 N a plane, 9000/57 906 =
  // 0.1554; the lug 60 high with
  // its hole at 45 leaves 15 - 8.25 = 6.75 mm beyond it, wanted 18 000/(2 x 10 x 355) + 2 x 16.5/3
  // = 13.5 mm: too little.
  @Test
  void tearOutIsSeen() {
    LugHole hole = LugHole.through(Cases.cradle(), 16);
    assertThat(hole.uses().get(0).use()).isCloseTo(0.1554, within(0.00005));
    StrengthUse beyond =
        hole.uses().stream().filter(u -> u.what().contains("beyond")).findFirst().orElseThrow();
    assertThat(beyond.use()).isCloseTo((2.5352 + 11) / 6.75, within(0.0005));
    assertThat(hole.tooWeak()).isTrue();
    assertThat(String.join(" ", hole.words())).contains("needs an engineer");
  }
}
