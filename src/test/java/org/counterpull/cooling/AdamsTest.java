package org.counterpull.cooling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.counterpull.cooling.FourDigits.assertPrinted;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AdamsTest {

  /** AWS Welding Handbook vol. 1 (from memory): 720 J/mm, 5 mm, 25 C, 1510 C; 1184 and 975.6 C. */
  @Test
  void handbookPeak() {
    assertPrinted(AdamsPeakTemperature.of(720, 5, 1.5, 25, 1510, 0.0044).value(), 1184);
    assertPrinted(AdamsPeakTemperature.of(720, 5, 3.0, 25, 1510, 0.0044).value(), 975.6);
    assertPrinted(AdamsPeakTemperature.of(720, 5, 0, 25, 1510, 0.0044).value(), 1510);
  }

  /** The same example solved for the distance: 5.904, 14.23, 28.40 (at 200 C), 2.952 (360 J/mm). */
  @Test
  void handbookZoneWidths() {
    assertPrinted(AdamsPeakTemperature.distanceMm(720, 5, 730, 25, 1510, 0.0044), 5.904);
    assertPrinted(AdamsPeakTemperature.distanceMm(720, 5, 430, 25, 1510, 0.0044), 14.23);
    assertPrinted(AdamsPeakTemperature.distanceMm(720, 5, 430, 200, 1510, 0.0044), 28.40);
    assertPrinted(AdamsPeakTemperature.distanceMm(360, 5, 730, 25, 1510, 0.0044), 2.952);
  }

  /** Derived: fused radius 5.080 mm, radius of 730 C 7.373 mm on thick plate. */
  @Test
  void thickPlate() {
    assertPrinted(ThickPlatePeak.radiusMm(720, 1510 - 25, 0.0044), 5.080);
    assertPrinted(ThickPlatePeak.radiusMm(720, 730 - 25, 0.0044), 7.373);
  }

  @Test
  void thickPlateIsSaid() {
    assertThat(AdamsPeakTemperature.of(720, 30, 3, 25, 1510, 0.0044).inRange()).isFalse();
    assertThatThrownBy(() -> AdamsPeakTemperature.of(720, 5, 3, 25, 20, 0.0044))
        .hasMessage("melting over preheat is -5 K: it must be a finite number above 0");
  }

  /** AWS Welding Handbook vol. 1 (from memory): 6 mm, 25 C, at 550 C; tau and K/s. */
  @ParameterizedTest
  @CsvSource({
    "1125, 0.2719, 3.186",
    "964.2857142857, 0.2937, 4.337",
    "843.75, 0.3139, 5.664",
    "750.0, 0.3330, 7.169",
    "675.0, 0.3510, 8.850"
  })
  void handbookCoolingRate(double net, double tau, double rate) {
    assertPrinted(AdamsCoolingRate.relativeThickness(net, 6, 25, 550, 0.0044), tau);
    assertPrinted(AdamsCoolingRate.of(net, 6, 25, 550, Conductor.HANDBOOK_STEEL).value(), rate);
  }

  /** The same critical rate on other plates, 803.57 J/mm: 162.2, 229.9, 353.7 thin, 389.2 thick. */
  @Test
  void handbookPreheat() {
    Conductor steel = Conductor.HANDBOOK_STEEL;
    double rate = AdamsCoolingRate.of(843.75, 6, 25, 550, steel).value();
    double net = 0.9 * 25 * 250 / 7;
    assertPrinted(AdamsCoolingRate.thinPreheatC(rate, net, 9, 550, steel), 162.2);
    assertPrinted(AdamsCoolingRate.thinPreheatC(rate, net, 12, 550, steel), 229.9);
    assertPrinted(AdamsCoolingRate.thinPreheatC(rate, net, 25, 550, steel), 353.7);
    assertPrinted(AdamsCoolingRate.thickPreheatC(rate, net, 550, steel), 389.2);
    assertThat(AdamsCoolingRate.of(net, 25, 353.7, 550, steel).warnings())
        .containsExactly("the plate is neither thin nor thick for its heat: up to 25 % off");
  }
}
