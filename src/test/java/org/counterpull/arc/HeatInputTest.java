package org.counterpull.arc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HeatInputTest {

  /** EN 1011-1 / ISO/TR 17671-1: E and Q printed to four digits. */
  @ParameterizedTest
  @CsvSource({
    "0.8, 24, 200, 5.0, 0.9600, 0.7680",
    "0.8, 20, 150, 3.0, 1.000, 0.8000",
    "0.6, 12, 120, 1.5, 0.9600, 0.5760",
    "1.0, 32, 500, 8.0, 2.000, 2.000"
  })
  void isoTr17671(double k, double u, double i, double v, double arcEnergy, double heatInput) {
    assertThat(ArcEnergy.of(u, i, v).value()).isCloseTo(arcEnergy, within(5e-5));
    assertThat(HeatInput.of(k, u, i, v).value()).isCloseTo(heatInput, within(5e-5));
    assertThat(HeatInput.of(k, u, i, v).inRange()).isTrue();
  }

  /** ASME IX QW-409.1 (from memory): J/in and kJ/mm of arc energy, speed in in/min. */
  @ParameterizedTest
  @CsvSource({
    "24, 200, 12, 24000, 0.9449",
    "28, 250, 10, 42000, 1.654",
    "18, 90, 5, 19440, 0.7654"
  })
  void asmeQw409(double u, double i, double inPerMin, double joulePerIn, double kJPerMm) {
    double arcEnergy = ArcEnergy.kJPerMm(u, i, inPerMin * 25.4 / 60);
    assertThat(arcEnergy).isCloseTo(kJPerMm, within(kJPerMm < 1 ? 5e-5 : 5e-4));
    assertThat(arcEnergy * 25400).isCloseTo(joulePerIn, within(1e-6));
  }

  /** ISO/TR 18491:2015, methods B and C, printed to four digits. */
  @Test
  void isoTr18491() {
    double b = ArcEnergy.fromEnergyKJPerMm(36200, 120);
    assertThat(b).isCloseTo(0.3017, within(5e-5));
    assertThat(HeatInput.kJPerMm(WeldingProcess.MAG, b)).isCloseTo(0.2413, within(5e-5));
    double c = ArcEnergy.fromPowerKJPerMm(4150, 6);
    assertThat(c).isCloseTo(0.6917, within(5e-5));
    assertThat(HeatInput.kJPerMm(WeldingProcess.MAG, c)).isCloseTo(0.5533, within(5e-5));
  }

  /** By hand: 1 kJ/mm of TIG arc energy is 650, 750 or 820 J/mm net. */
  @Test
  void netHeatHasABand() {
    NetHeat.Band band = NetHeat.band(WeldingProcess.TIG, 1.0);
    assertThat(band.lowJPerMm()).isCloseTo(650, within(1e-9));
    assertThat(NetHeat.of(WeldingProcess.TIG, 1.0).value()).isCloseTo(750, within(1e-9));
    assertThat(band.highJPerMm()).isCloseTo(820, within(1e-9));
    assertThat(NetHeat.of(WeldingProcess.TIG, 1.0).unit()).isEqualTo("J/mm");
  }

  @Test
  void processesByWordAndNumber() {
    assertThat(WeldingProcess.parse("Stick")).contains(WeldingProcess.MMA);
    assertThat(WeldingProcess.parse("smaw")).contains(WeldingProcess.MMA);
    assertThat(WeldingProcess.parse("GMAW")).contains(WeldingProcess.MAG);
    assertThat(WeldingProcess.parse("mig")).contains(WeldingProcess.MIG);
    assertThat(WeldingProcess.parse("fcaw")).contains(WeldingProcess.FCAW);
    assertThat(WeldingProcess.parse("fcaw-s")).contains(WeldingProcess.FCAW_S);
    assertThat(WeldingProcess.parse("gtaw")).contains(WeldingProcess.TIG);
    assertThat(WeldingProcess.parse("136")).contains(WeldingProcess.FCAW);
    assertThat(WeldingProcess.parse("laser")).isEmpty();
    for (WeldingProcess process : WeldingProcess.values()) {
      assertThat(WeldingProcess.parse(process.word())).contains(process);
      assertThat(process.efficiencyLow()).isLessThan(process.efficiency());
      assertThat(process.efficiencyHigh()).isGreaterThan(process.efficiency());
    }
    assertThat(WeldingProcess.allWords()).doesNotHaveDuplicates();
  }

  @Test
  void outsideTheUsualItAnswersAndSaysSo() {
    assertThat(HeatInput.of(0.3, 24, 200, 5).warnings())
        .containsExactly("efficiency k 0.3 is outside 0.6 to 1");
    assertThat(ArcEnergy.of(80, 200, 5).inRange()).isFalse();
    assertThatThrownBy(() -> ArcEnergy.of(24, 200, 0))
        .hasMessage("travel speed is 0 mm/s: it must be a finite number above 0");
    assertThatThrownBy(() -> HeatInput.of(Double.NaN, 24, 200, 5))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
