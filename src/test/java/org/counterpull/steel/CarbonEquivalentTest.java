package org.counterpull.steel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CarbonEquivalentTest {

  /**
   * CE (IIW IX-535-67), CET (Uwer and Hohne 1991), Pcm (Ito and Bessyo 1968), CEN (Yurioka 1983) of
   * common steels, to three decimals.
   */
  @ParameterizedTest
  @CsvSource({
    "C .16 Si .20 Mn .80 Cu .20 Ni .08 Cr .08 Mo .02, 0.332, 0.258, 0.223, 0.324",
    "C .25 Si .40 Mn 1.0 Cu .20, 0.430, 0.360, 0.323, 0.446",
    "C .13 Si .18 Mn .70 Cu .15 Ni .06 Cr .06, 0.273, 0.212, 0.182, 0.249",
    "C .17 Mn 1.40, 0.403, 0.310, 0.240, 0.389",
    "C .15 Si .20 Mn .90 Cu .15 Ni .06 Cr .06, 0.326, 0.252, 0.213, 0.312",
    "C .21 Mn 1.50, 0.460, 0.360, 0.285, 0.457",
    "C .16 Si .35 Mn 1.40 Cu .10 Ni .06 Cr .06 Nb .02, 0.416, 0.309, 0.251, 0.411",
    "C .20 Si .55 Mn 1.60, 0.467, 0.360, 0.298, 0.484",
    "C .19 Si .03 Mn .75 Cu .05 Ni .03 Cr .04, 0.328, 0.270, 0.234, 0.325",
    "C .26 Mn 1.35, 0.485, 0.395, 0.328, 0.485",
    "C .175 Si .20 Mn .75, 0.300, 0.250, 0.219, 0.302",
    "C .205 Si .20 Mn .45, 0.280, 0.250, 0.234, 0.287",
    "C .25 Si .20 Mn .75, 0.375, 0.325, 0.294, 0.383",
    "C .28 Si .35 Mn .90, 0.430, 0.370, 0.337, 0.444",
    "C .465 Si .20 Mn .75, 0.590, 0.540, 0.509, 0.598",
    "C .305 Si .25 Mn .50 Cr .95 Mo .20, 0.618, 0.422, 0.399, 0.629",
    "C .33 Si .35 Mn .60 Cr 1.10 Mo .25, 0.700, 0.470, 0.443, 0.715",
    "C .405 Si .25 Mn .875 Cr .95 Mo .20, 0.781, 0.560, 0.518, 0.791"
  })
  void commonSteels(String composition, double ce, double cet, double pcm, double cen) {
    Composition steel = Composition.parse(composition);
    // 0.000501: a printed third decimal may stand on a tie (0.3025 is printed 0.302)
    assertThat(CarbonEquivalent.ceIIW(steel).value()).isCloseTo(ce, within(0.000501));
    assertThat(CarbonEquivalent.cet(steel).value()).isCloseTo(cet, within(0.000501));
    assertThat(CarbonEquivalent.pcm(steel).value()).isCloseTo(pcm, within(0.000501));
    assertThat(CarbonEquivalent.cen(steel).value()).isCloseTo(cen, within(0.000501));
  }

  /** CSA Z662 worksheet: bracket 0.2578; C + bracket 0.5077833; with the factor A, CEN 0.5071. */
  @Test
  void csaZ662Worksheet() {
    Composition steel =
        Composition.parse("C .25 Si .29 Mn 1.28 Cu .109 Ni .06 Cr .05 Mo .034 V .004 B .0009");
    double bracket = CarbonEquivalent.cenBracket(steel);
    assertThat(bracket).isCloseTo(0.2578, within(5e-5));
    assertThat(steel.c() + bracket).isCloseTo(0.5077833, within(5e-7));
    assertThat(CarbonEquivalent.cen(steel).value()).isCloseTo(0.5071, within(5e-5));
  }

  /** Andrews 1965, martensite start of the middle of the limits, to four digits. */
  @ParameterizedTest
  @CsvSource({"1045, 319.5", "4130, 381.8", "4140, 328.1"})
  void andrewsMartensiteStart(String grade, double startC) {
    Composition steel = Grades.find(grade).orElseThrow().typical().orElseThrow();
    assertThat(MartensiteStart.of(steel).value()).isCloseTo(startC, within(0.05));
  }

  /** By hand: 0.2 + (1.2 + 0.3)/6 + 0.1/5 + 0.3/15 = 0.49. */
  @Test
  void awsByHand() {
    Composition steel = Composition.parse("C 0.2 Mn 1.2 Si 0.3 Cr 0.1 Cu 0.3");
    assertThat(CarbonEquivalent.ceAws(steel).value()).isCloseTo(0.49, within(1e-12));
  }

  @Test
  void outsideTheFittedCompositionIsSaid() {
    Composition steel = Composition.parse("C 0.465 Mn 0.75");
    assertThat(CarbonEquivalent.cet(steel).warnings())
        .containsExactly("C 0.465 % is outside 0.05 to 0.32 %");
    assertThat(CarbonEquivalent.pcm(steel).inRange()).isFalse();
  }

  @Test
  void impossibleCompositionsAreRefused() {
    assertThatThrownBy(() -> new Composition(Map.of(Element.C, -0.1)))
        .hasMessage("C -0.1 % must lie from 0 to 100 %");
    assertThatThrownBy(() -> new Composition(Map.of(Element.CR, 60.0, Element.NI, 60.0)))
        .hasMessage("the elements add up to 120.0 %, more than 100 %");
    assertThatThrownBy(() -> Composition.parse("C 0.1 Zz 3"))
        .hasMessage("\"Zz\" is none of C Si Mn Cr Mo V Ni Cu Nb B N");
    assertThatThrownBy(() -> Composition.parse("C"))
        .hasMessageContaining("write symbol and percent in turn");
    assertThatThrownBy(() -> Composition.parse("C x")).hasMessage("\"x\" is no percentage");
  }
}
