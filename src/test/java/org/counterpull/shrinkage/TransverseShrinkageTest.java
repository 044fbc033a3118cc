package org.counterpull.shrinkage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Heat, sharing and transverse shrinkage against the reference tables, recomputed there. */
class TransverseShrinkageTest {
  private static final ShrinkageMaterial STEEL = ShrinkageMaterial.CARBON_STEEL;

  // Material table: alpha/c and 0.3354 E alpha/c, 4 digits printed.
  @ParameterizedTest
  @CsvSource({
    "carbon steel,2.449e-3,8.215e-4,169.2",
    "carbon steel (Farkas and Jarmai),2.516e-3,8.439e-4,173.8",
    "austenitic stainless steel,4.186e-3,1.404e-3,273.8",
    "aluminium-magnesium,9.600e-3,3.220e-3,225.4"
  })
  void materialSets(String name, String perHeat, String shrunken, String tendon) {
    ShrinkageMaterial material = ShrinkageMaterial.named(name);
    Printed.check(material.expansionPerHeatMm3PerJ(), perHeat);
    Printed.check(TendonForce.FACTOR * material.expansionPerHeatMm3PerJ(), shrunken);
    Printed.check(TendonForce.forceN(1, material), tendon);
  }

  // Heat sharing: tee 10/10, 12/9, 6/4; corner 12/9.
  @ParameterizedTest
  @CsvSource({
    "2,10,1,10,0.6667",
    "1,10,2,10,0.3333",
    "2,12,1,9,0.7273",
    "2,6,1,4,0.7500",
    "1,12,1,9,0.5714"
  })
  void heatShare(int n, double h, int otherN, double otherH, String share) {
    Printed.check(HeatShare.of(n, h, otherN, otherH).value(), share);
  }

  // Butt shrinkage by five forms: 60 degree V, gap 2, face 2, parabolic cap of 1.5, d = 2.
  @ParameterizedTest
  @CsvSource({
    "6,27.86,1.029,0.4643,0.8357,0.7732,0.6822,2.22",
    "8,45.71,1.243,0.5714,1.029,0.9516,0.8396,2.18",
    "10,68.19,1.464,0.6819,1.227,1.136,1.002,2.15",
    "12,95.28,1.688,0.7940,1.429,1.322,1.167,2.13",
    "16,163.3,2.142,1.021,1.837,1.700,1.500,2.10",
    "20,249.8,2.598,1.249,2.249,2.080,1.836,2.08",
    "25,384.0,3.172,1.536,2.765,2.558,2.257,2.07"
  })
  void buttForms(
      double h,
      String area,
      String high,
      String low,
      String middle,
      String malisius,
      String heat,
      String ratio) {
    double width = 2 + 2 * (h - 2) * Math.tan(Math.toRadians(30));
    double weld = 2 * h + (h - 2) * (h - 2) * Math.tan(Math.toRadians(30)) + 1.5 * width * 2 / 3;
    Printed.check(weld, area);
    Printed.check(ButtShrinkage.high(weld, h, 2).value(), high);
    Printed.check(ButtShrinkage.low(weld, h, 2).value(), low);
    Printed.check(ButtShrinkage.middle(weld, h, 2).value(), middle);
    Printed.check(MalisiusButtShrinkage.of(45, weld, h).value(), malisius);
    Printed.check(FreeShrinkage.shrinkageMm(1, 60 * weld, h, STEEL), heat);
    Printed.check(
        ButtShrinkage.high(weld, h, 2).value() / ButtShrinkage.low(weld, h, 2).value(), ratio);
  }

  // A kappa of 1 equals the low coefficient at 40.83 and the high one at 81.67 J/mm3.
  @Test
  void heatFormMeetsBothHandbooks() {
    Printed.check(0.10 / STEEL.expansionPerHeatMm3PerJ(), "40.83");
    Printed.check(0.20 / STEEL.expansionPerHeatMm3PerJ(), "81.67");
    assertThat(ButtShrinkage.low(95.28, 12, 0).value())
        .isCloseTo(
            FreeShrinkage.shrinkageMm(1, 0.10 / STEEL.expansionPerHeatMm3PerJ() * 95.28, 12, STEEL),
            within(1e-12));
  }

  // Fillet allowances: tee 6/10, 8/12; lap 6/10, 8/12.
  @Test
  void filletAllowances() {
    Printed.check(FilletShrinkage.tee(6, 10, 1).value(), "0.612");
    Printed.check(FilletShrinkage.tee(8, 12, 1).value(), "0.680");
    Printed.check(FilletShrinkage.lap(6, 10, 1).value(), "0.912");
    Printed.check(FilletShrinkage.lap(8, 12, 1).value(), "1.013");
    Printed.check(FilletShrinkage.tee(6, 10, 0.5).value(), "0.306");
    assertThat(FilletShrinkage.tee(9, 10, 1).inRange()).isFalse();
  }

  // Heat form under fillets, kappa 1, 60 J/mm3: leg 6 on 10/10, 8 on 12/12, 10 on 20/12.
  @ParameterizedTest
  @CsvSource({"6,10,10,0.1763", "8,12,12,0.2612", "10,20,12,0.2826"})
  void heatFormUnderFillets(double leg, double flange, double web, String printed) {
    double q = 60 * leg * leg / 2 * HeatShare.share(2, flange, 1, web);
    Printed.check(FreeShrinkage.shrinkageMm(1, q, flange, STEEL), printed);
  }

  // Zone rule: radius 0.3156 sqrt Q, area 0.1564 Q, shrunken 1.877e-3 Q (kappa 0.7664);
  // thin: width 0.2058 Q/h, shrunken 2.469e-3 Q (kappa 1.008); H = h at x = 10.04.
  @Test
  void shrinkZoneMurakami2021() {
    Printed.check(ShrinkZone.thickRadiusMm(1, STEEL), "0.3156");
    Printed.check(ShrinkZone.thickAreaMm2(1, STEEL), "0.1564");
    Printed.check(ShrinkZone.thickShrunkenAreaMm2(1, STEEL), "1.877e-3");
    Printed.check(ShrinkZone.thinWidthMm(1, 1, STEEL), "0.2058");
    Printed.check(ShrinkZone.thinShrunkenAreaMm2(1, STEEL), "2.469e-3");
    Printed.check(1 / Math.pow(ShrinkZone.thickRadiusMm(1, STEEL), 2), "10.04");
    double perHeat = STEEL.expansionPerHeatMm3PerJ();
    Printed.check(ShrinkZone.thickShrunkenAreaMm2(1, STEEL) / perHeat, "0.7664");
    Printed.check(ShrinkZone.thinShrunkenAreaMm2(1, STEEL) / perHeat, "1.008");
  }

  // Component table: S with kappa 0.766 at (600, 6), (1000, 10), (1500, 12), (2000, 20).
  @ParameterizedTest
  @CsvSource({"600,6,0.1876", "1000,10,0.1876", "1500,12,0.2345", "2000,20,0.1876"})
  void shrinkageByKappa(double q, double h, String printed) {
    Printed.check(FreeShrinkage.shrinkageMm(0.766, q, h, STEEL), printed);
  }

  @Test
  void kappaIsLinearBetweenSixAndTen() {
    assertThat(FreeShrinkage.kappa(0)).isEqualTo(0.7664);
    assertThat(FreeShrinkage.kappa(6)).isEqualTo(0.7664);
    assertThat(FreeShrinkage.kappa(8)).isCloseTo((0.7664 + 1.008) / 2, within(1e-12));
    assertThat(FreeShrinkage.kappa(10)).isCloseTo(1.008, within(1e-12));
    assertThat(FreeShrinkage.kappa(50)).isCloseTo(1.008, within(1e-12));
    assertThat(FreeShrinkage.of(800, 10).value())
        .isCloseTo(0.8872 * 12e-6 / 4.9e-3 * 800 / 10, within(1e-12));
  }

  // Single-V 12 mm, five passes of 1000 J/mm: 0.8163 + 0.2226 + 0.1493 + 0.1155 + 0.1020 = 1.406.
  @Test
  void layeredSingleV() {
    List<ButtPass> passes =
        List.of(
            new ButtPass(1000, 3, 1),
            new ButtPass(1000, 5.5, 1),
            new ButtPass(1000, 8.2, 1),
            new ButtPass(1000, 10.6, 1),
            new ButtPass(1000, 12, 1));
    Printed.check(LayeredShrinkage.of(passes, STEEL).value(), "1.406");
    Printed.check(LayeredShrinkage.of(passes.subList(0, 1), STEEL).value(), "0.8163");
  }

  // Equal layers: n = 1, 2, 3, 5, 10.
  @ParameterizedTest
  @CsvSource({"1,1", "2,1.500", "3,1.833", "5,2.283", "10,2.929"})
  void harmonicSums(int layers, String printed) {
    Printed.check(LayeredShrinkage.equalLayers(layers), printed);
  }

  // Restraint: published form, and a spring of 15 in series; within 8 % up to k = 20.
  @ParameterizedTest
  @CsvSource({
    "1,0.9208,0.9375",
    "5,0.7414,0.7500",
    "10,0.6107,0.6000",
    "20,0.4619,0.4286",
    "50,0.2789,0.2308"
  })
  void restraint(double k, String published, String spring) {
    Printed.check(RestrainedShrinkage.of(k).value(), published);
    Printed.check(RestrainedShrinkage.bySpring(k, 15), spring);
    if (k <= 20) {
      assertThat(RestrainedShrinkage.bySpring(k, 15) / RestrainedShrinkage.of(k).value())
          .isBetween(0.92, 1.08);
    }
    Printed.check(RestrainedShrinkage.PULL_STIFFNESS_MPA_PER_MM, "147.1");
  }

  @Test
  void outsideTheRangeSaysSoAndNonsenseIsRefused() {
    assertThat(ButtShrinkage.high(800, 40, 3).warnings())
        .containsExactly("thickness 40 mm is outside 6 to 25 mm");
    assertThat(RestrainedShrinkage.of(60).inRange()).isFalse();
    assertThatThrownBy(() -> FreeShrinkage.of(-1, 10))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("net heat is -1 J/mm: it must be a finite number, 0 or above");
    assertThatThrownBy(() -> FreeShrinkage.of(1000, 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("thickness is 0 mm: it must be a finite number above 0");
    assertThatThrownBy(() -> FreeShrinkage.of(Double.NaN, 10))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void everyBandNarrowsWithCalibration() {
    assertThat(ErrorBand.ALL).hasSize(8);
    assertThat(ErrorBand.of("transverse butt shrinkage").highFactor()).isEqualTo(2);
    assertThat(ErrorBand.of("tendon force").lowFactor()).isEqualTo(0.8);
  }
}
