package org.counterpull.preheat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.counterpull.preheat.HydrogenControlPreheat.Hydrogen;
import org.counterpull.preheat.HydrogenControlPreheat.Restraint;
import org.counterpull.preheat.MethodATable.Answer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PreheatTest {

  /** EN 1011-2, formula C.8, to four digits. */
  @ParameterizedTest
  @CsvSource({
    "0.26, 15, 10, 1.0, 38.46",
    "0.30, 20, 5, 1.0, 56.53",
    "0.34, 30, 5, 1.5, 108.1",
    "0.40, 40, 3, 2.0, 150.7",
    "0.38, 50, 2, 1.6, 139.5",
    "0.45, 25, 4, 1.2, 174.7",
    "0.309, 20, 5, 1.0, 63.28"
  })
  void en1011MethodB(double cet, double d, double hd, double q, double preheatC) {
    assertThat(MethodBPreheat.of(cet, d, hd, q).value())
        .isCloseTo(preheatC, within(preheatC < 100 ? 0.00501 : 0.0501));
    assertThat(MethodBPreheat.of(cet, d, hd, q).inRange()).isTrue();
  }

  /** The partial terms add up to 697 CET + 160 tanh + 62 HD^0.35 + (53 CET - 32) Q - 328. */
  @Test
  void termsAddUp() {
    double sum =
        697 * 0.3 + 160 * Math.tanh(20 / 35.0) + 62 * Math.pow(5, 0.35) + (53 * 0.3 - 32) - 328;
    assertThat(MethodBPreheat.terms(0.3, 20, 5, 1).sumC()).isCloseTo(sum, within(1e-9));
  }

  @Test
  void outsideItsBoxMethodBSaysSo() {
    assertThat(MethodBPreheat.of(0.56, 6, 5, 0.4).warnings())
        .containsExactly(
            "CET 0.56 % is outside 0.2 to 0.5 %",
            "thickness 6 mm is outside 10 to 90 mm",
            "heat input 0.4 kJ/mm is outside 0.5 to 4 kJ/mm");
    assertThatThrownBy(() -> MethodBPreheat.of(0.3, -20, 5, 1))
        .hasMessage("thickness is -20 mm: it must be a finite number above 0");
  }

  /** EN 1011-2 table C.1 at its own points, and half way between 1 and 2 kJ/mm. */
  @ParameterizedTest
  @CsvSource({
    "0.49, 1.0, 25, A, NO_PREHEAT_NEEDED",
    "0.49, 1.0, 26, A, PREHEAT_NEEDED",
    "0.49, 2.0, 65, C, NO_PREHEAT_NEEDED",
    "0.43, 1.0, 60, C, NO_PREHEAT_NEEDED",
    "0.44, 1.0, 60, C, PREHEAT_NEEDED",
    "0.40, 1.5, 70, B, NO_PREHEAT_NEEDED",
    "0.40, 1.5, 71, B, PREHEAT_NEEDED",
    "0.43, 3.0, 101, E, PREHEAT_NEEDED",
    "0.50, 1.0, 10, E, OUTSIDE",
    "0.40, 0.8, 10, E, OUTSIDE"
  })
  void en1011TableC1(double ce, double q, double combined, HydrogenScale scale, Answer answer) {
    assertThat(MethodATable.answer(ce, q, combined, scale)).isEqualTo(answer);
  }

  /** EN 1011-2: bands of ml/100 g. */
  @Test
  void hydrogenScales() {
    assertThat(HydrogenScale.of(16)).isEqualTo(HydrogenScale.A);
    assertThat(HydrogenScale.of(15)).isEqualTo(HydrogenScale.B);
    assertThat(HydrogenScale.of(10)).isEqualTo(HydrogenScale.C);
    assertThat(HydrogenScale.of(5)).isEqualTo(HydrogenScale.D);
    assertThat(HydrogenScale.of(3)).isEqualTo(HydrogenScale.E);
  }

  /** EN 1011-2, C.2.4: sums over the paths. */
  @Test
  void combinedThickness() {
    assertThat(CombinedThickness.buttMm(10, 12)).isEqualTo(22);
    assertThat(CombinedThickness.filletMm(10, 10, 8)).isEqualTo(28);
    assertThat(CombinedThickness.twinFilletMm(10, 10, 8)).isEqualTo(14);
  }

  /** AWS D1.1:2015 table 3.3. */
  @ParameterizedTest
  @CsvSource({
    "A, 12, 0",
    "A, 25, 65",
    "A, 50, 110",
    "A, 80, 150",
    "B, 25, 10",
    "B, 50, 65",
    "C, 20, 10",
    "C, 38, 65",
    "D, 80, 0"
  })
  void awsTable(AwsPreheatTable.Category category, double thicknessMm, double preheatC) {
    assertThat(AwsPreheatTable.of(category, thicknessMm).value()).isEqualTo(preheatC);
  }

  @Test
  void thinnerThanTheAwsTableIsSaid() {
    assertThat(AwsPreheatTable.of(AwsPreheatTable.Category.B, 2).warnings())
        .containsExactly("thickness 2 mm is outside 3 mm and more");
  }

  /** AWS D1.1 hydrogen control (from memory): index and group. */
  @ParameterizedTest
  @CsvSource({
    "0.18, H1, 2.859, A",
    "0.23, H2, 3.760, C",
    "0.28, H2, 4.360, D",
    "0.28, H3, 4.837, E",
    "0.251, H1, 3.711, C"
  })
  void awsIndex(double pcm, Hydrogen hydrogen, double index, char group) {
    assertThat(HydrogenControlPreheat.index(pcm, hydrogen)).isCloseTo(index, within(0.000501));
    assertThat(HydrogenControlPreheat.group(index)).isEqualTo(group);
  }

  /** AWS D1.1 hydrogen control (from memory): 165 F, and 300 F at 2 in, high, group D. */
  @Test
  void awsHydrogenControl() {
    assertThat(HydrogenControlPreheat.of(0.251, Hydrogen.H1, Restraint.MEDIUM, 20).value())
        .isCloseTo(73.9, within(0.05));
    assertThat(HydrogenControlPreheat.of(0.28, Hydrogen.H2, Restraint.HIGH, 50.8).value())
        .isCloseTo(148.9, within(0.05));
    assertThat(HydrogenControlPreheat.of(0.15, Hydrogen.H1, Restraint.LOW, 6).value())
        .isCloseTo(0, within(1e-9));
    assertThat(HydrogenControlPreheat.of(0.60, Hydrogen.H3, Restraint.LOW, 100).inRange())
        .isFalse();
  }

  /** Property: more restraint, hydrogen, Pcm or thickness never asks for less preheat. */
  @Test
  void hydrogenControlIsMonotone() {
    double[] thicknessMm = {6, 12, 25, 50, 90};
    for (Restraint restraint : Restraint.values()) {
      double before = 0;
      for (double mm : thicknessMm) {
        double now = HydrogenControlPreheat.of(0.30, Hydrogen.H2, restraint, mm).value();
        assertThat(now).isGreaterThanOrEqualTo(before);
        before = now;
      }
      for (double pcm = 0.15; pcm < 0.45; pcm += 0.01) {
        assertThat(HydrogenControlPreheat.of(pcm + 0.01, Hydrogen.H2, restraint, 25).value())
            .isGreaterThanOrEqualTo(
                HydrogenControlPreheat.of(pcm, Hydrogen.H2, restraint, 25).value());
      }
    }
  }

  @Test
  void interpassLimits() {
    assertThat(MaxInterpass.CARBON_MANGANESE.maxC()).isEqualTo(250);
    assertThat(MaxInterpass.quenchedAndTempered(12).maxC()).isEqualTo(200);
    assertThat(MaxInterpass.quenchedAndTempered(40).maxC()).isEqualTo(230);
    for (MaxInterpass limit : MaxInterpass.values()) {
      assertThat(limit.source()).isNotBlank();
    }
  }
}
