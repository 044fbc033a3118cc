package org.counterpull.cooling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.counterpull.cooling.FourDigits.assertPrinted;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SourcesTest {
  private static final Conductor STEEL = Conductor.STEEL;

  /** Abramowitz and Stegun, table 9.8: e^x K0(x), and K0 itself by hand. */
  @ParameterizedTest
  @CsvSource({"0.1, 2.4270690247", "1, 0.4210244382", "2, 0.1138938727", "10, 1.778006232e-5"})
  void besselK0(double x, double k0) {
    assertThat(ScaledBesselK0.of(x) * Math.exp(-x)).isCloseTo(k0, within(k0 * 1e-9 + 1e-15));
  }

  /** Both branches of K0 agree where they meet, and far out it follows its asymptote. */
  @Test
  void besselK0IsContinuous() {
    assertThat(ScaledBesselK0.of(1 + 1e-12)).isCloseTo(ScaledBesselK0.of(1), within(1e-11));
    assertThat(ScaledBesselK0.of(1e6)).isCloseTo(Math.sqrt(Math.PI / 2e6), within(2e-10));
  }

  /** Rosenthal thick and thin plate; 3600 W, 5 mm/s, 0.025, 0.005; to four digits. */
  @ParameterizedTest
  @CsvSource({
    "-10, 0, 0, 2292, 2511, 2502",
    "-20, 0, 0, 1146, 1795, 1783",
    "0, 5, 0, 376.2, 285.8, 285.2",
    "-10, 8, 0, 439.9, 548.0, 545.6"
  })
  void rosenthal(double x, double y, double z, double thick, double thin, double lossy) {
    assertPrinted(MovingPointSource.of(3600, 5, STEEL, x, y, z).value(), thick);
    assertPrinted(MovingLineSource.of(3600, 5, STEEL, 5, x, y).value(), thin);
    assertPrinted(MovingLineSource.riseK(3600, 5, STEEL, 5, x, y, 40), lossy);
  }

  /** The same, at depth: 1151 K. */
  @Test
  void rosenthalAtDepth() {
    assertPrinted(MovingPointSource.of(3600, 5, STEEL, -5, 0, 5).value(), 1151);
    assertThat(MovingPointSource.of(3600, 5, STEEL, -5, 0, 5).inRange()).isTrue();
    assertThat(MovingPointSource.of(3600, 5, STEEL, -5, 0, 1).inRange()).isFalse();
  }

  /** Grong 1.10.4, image sum; plate 10 mm; to four digits. */
  @ParameterizedTest
  @CsvSource({
    "-10, 0, 0, 2296",
    "-30, 0, 0, 825.5",
    "-30, 10, 0, 352.0",
    "-30, 10, 10, 285.0",
    "-100, 0, 0, 405.3",
    "0, 5, 0, 376.3"
  })
  void finiteThickness(double x, double y, double z, double rise) {
    assertPrinted(FiniteThicknessSource.riseK(3600, 5, STEEL, 10, x, y, z), rise);
  }

  @Test
  void theSourceItselfIsRefused() {
    assertThatThrownBy(() -> MovingPointSource.of(3600, 5, STEEL, 0, 0, 0))
        .hasMessage("distance from the source is 0 mm: it must be a finite number above 0");
    assertThat(MovingLineSource.riseK(3600, 5, STEEL, 5, -1e5, 0, 0)).isFinite();
  }

  /** Rykalin, instantaneous sources, 720 J/mm; to four digits. */
  @Test
  void instantaneousLines() {
    assertPrinted(InstantSources.lineOnThickK(720, STEEL, 0, 5), 916.7);
    assertPrinted(InstantSources.lineOnThickK(720, STEEL, 5, 2), 1227);
    assertPrinted(InstantSources.lineOnThickK(720, STEEL, 5, 10), 404.5);
    assertPrinted(InstantSources.lineThroughThinK(720, STEEL, 5, 0, 5, 0), 1625);
    assertPrinted(InstantSources.lineThroughThinK(720, STEEL, 5, 5, 2, 0), 1375);
    assertPrinted(InstantSources.lineThroughThinK(720, STEEL, 5, 5, 10, 0), 1014);
    assertPrinted(InstantSources.lineOnPlateK(720, STEEL, 10, 0, 0, 1), 4584);
    assertPrinted(InstantSources.lineOnPlateK(720, STEEL, 10, 0, 0, 3), 1532);
    assertPrinted(InstantSources.lineOnPlateK(720, STEEL, 10, 0, 0, 10), 582.7);
    assertPrinted(InstantSources.lineOnPlateK(720, STEEL, 10, 0, 0, 30), 331.7);
  }

  /** Rykalin, spot of 20 kJ on thick plate. */
  @Test
  void instantaneousPoint() {
    assertPrinted(InstantSources.pointOnThickK(20e3, STEEL, 0, 10), 507.9);
    assertPrinted(InstantSources.pointOnThickK(20e3, STEEL, 10, 10), 308.1);
    assertPrinted(InstantSources.pointOnThickK(20e3, STEEL, 10, 60), 31.80);
  }

  /** Rykalin, bead of 40 mm: middle, end, and at 60 s. */
  @Test
  void finiteBead() {
    assertPrinted(InstantSources.beadOnThickK(720, STEEL, 40, 20, 0, 5), 912.4);
    assertPrinted(InstantSources.beadOnThickK(720, STEEL, 40, 0, 0, 5), 458.4);
    assertPrinted(InstantSources.beadOnThickK(720, STEEL, 40, 20, 0, 60), 44.75);
    assertPrinted(InstantSources.beadOnThickK(720, STEEL, 40, 0, 0, 60), 34.28);
  }

  /** Peaks that follow from the sources; to four digits. */
  @ParameterizedTest
  @CsvSource({"5, 1349, 1394", "10, 337.2, 696.9", "15, 149.9, 464.6"})
  void peaks(double mm, double thick, double thin) {
    assertPrinted(InstantSources.peakOnThickK(720, STEEL, mm), thick);
    assertPrinted(InstantSources.peakOnThinK(720, STEEL, 5, mm), thin);
  }

  /** Property: a plane source in a bar keeps its heat, summed over the bar. */
  @Test
  void heatIsKept() {
    double sum = 0;
    for (double x = -400; x <= 400; x += 0.5) {
      sum += InstantSources.planeInBarK(3000, STEEL, 150, x, 60, 0) * 0.5 * 150 * 0.005;
    }
    assertThat(sum).isCloseTo(3000, within(1e-6));
  }

  /** Property: the spot on thin plate keeps its heat, summed over rings. */
  @Test
  void heatOfASpotIsKept() {
    double sum = 0;
    for (double r = 0.25; r <= 400; r += 0.5) {
      double ringMm3 = 2 * Math.PI * r * 0.5 * 6;
      sum += InstantSources.pointOnThinK(3000, STEEL, 6, r, 60, 0) * ringMm3 * 0.005;
    }
    assertThat(sum).isCloseTo(3000, within(0.1));
  }

  /** Rykalin, bead of 40 mm in 8 s, point at x 20, y 5: 809.4 K at 8 s, 236.1 K at 20 s. */
  @Test
  void movingSourceOfFiniteLength() {
    assertPrinted(FiniteBeadSource.riseK(3600, 5, STEEL, 40, 20, 5, 8), 809.4);
    assertPrinted(FiniteBeadSource.riseK(3600, 5, STEEL, 40, 20, 5, 20), 236.1);
  }

  /** Derived: t8/5 of 720 J/mm from 20 C over thickness, finite plate; to four digits. */
  @ParameterizedTest
  @CsvSource({"6, 24.72", "8, 13.86", "10, 7.981", "12, 4.943", "15, 3.855", "20, 3.677"})
  void coolingTimeOverThickness(double thicknessMm, double seconds) {
    assertPrinted(FiniteThicknessCooling.t85S(720, STEEL, thicknessMm, 20), seconds);
  }
}
