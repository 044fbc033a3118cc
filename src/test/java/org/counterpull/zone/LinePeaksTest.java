package org.counterpull.zone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.counterpull.cooling.Conductor;
import org.counterpull.cooling.InstantSources;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Peaks of line sources against the closed forms that they are made of. */
class LinePeaksTest {
  private static LinePeaks line(Reach across, double h, Optional<LinePeaks.Ends> ends) {
    return new LinePeaks(720, 0.005, 0, across, new Reach.Between(-h, 0), ends);
  }

  // Thick plate 2 Q / (pi e c r2): 1349, 337.2, 149.9 K at 5, 10, 15 mm (4 digits).
  @ParameterizedTest
  @CsvSource({"5,1349,0.5", "10,337.2,0.05", "15,149.9,0.05"})
  void thickPlate(double r, double printed, double halfUnit) {
    LinePeaks thick = line(new Reach.Endless(), 400, Optional.empty());
    assertThat(thick.peakC(0, r, 0)).isCloseTo(printed, within(halfUnit));
    assertThat(thick.peakC(0, 0, -r)).isCloseTo(printed, within(halfUnit));
  }

  // Thin plate Q / (d c y sqrt(2 pi e)): 1394, 696.9, 464.6 K at 5, 10, 15 mm of a plate of 5 mm;
  // held where the heat has gone through the wall before the peak comes: from three thicknesses.
  @Test
  void throughTheWall() {
    LinePeaks thin = line(new Reach.Endless(), 5, Optional.empty());
    assertThat(thin.peakC(0, 15, -2.5)).isCloseTo(464.6, within(0.05));
    LinePeaks thinner =
        new LinePeaks(
            72, 0.005, 0, new Reach.Endless(), new Reach.Between(-0.5, 0), Optional.empty());
    assertThat(thinner.peakC(0, 5, 0)).isCloseTo(1394, within(0.5));
  }

  // A plate of any thickness: the highest of the image sum over time.
  @Test
  void finiteThickness() {
    Conductor steel = new Conductor(0.025, 0.005);
    double highest = 0;
    for (double t = 0.5; t < 60; t *= 1.002) {
      highest = Math.max(highest, InstantSources.lineOnPlateK(720, steel, 10, 8, 6, t));
    }
    assertThat(line(new Reach.Endless(), 10, Optional.empty()).peakC(0, 8, -6))
        .isCloseTo(highest, within(1e-4 * highest));
  }

  // At an edge the heat goes one way only: twice the rise. Around a tube of great girth there is no
  // difference; around a small one the far side gets no less than the mean.
  @Test
  void edgesAndTubes() {
    double plate = line(new Reach.Endless(), 5, Optional.empty()).peakC(0, 12, -2);
    assertThat(line(new Reach.Between(0, 500), 5, Optional.empty()).peakC(0, 12, -2))
        .isCloseTo(2 * plate, within(1e-5 * plate));
    assertThat(line(new Reach.Around(1000), 5, Optional.empty()).peakC(0, 12, -2))
        .isCloseTo(plate, within(1e-5 * plate));
    double mean = 720 / 0.005 / (150 * 5);
    assertThat(line(new Reach.Around(150), 5, Optional.empty()).peakC(0, 75, -2))
        .isCloseTo(mean, within(1e-3 * mean));
  }

  // A bead of 40 mm on thick plate: at each time the line's rise times the share that it reaches.
  @ParameterizedTest
  @ValueSource(doubles = {20, 40, 45})
  void shortRun(double t) {
    Conductor steel = new Conductor(0.025, 0.005);
    double highest = 0;
    for (double s = 0.05; s < 200; s *= 1.002) {
      highest = Math.max(highest, InstantSources.beadOnThickK(720, steel, 40, t, 6, s));
    }
    LinePeaks.Ends endless =
        new LinePeaks.Ends(40, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
    assertThat(line(new Reach.Endless(), 400, Optional.of(endless)).peakC(t, 6, 0))
        .isCloseTo(highest, within(1e-4 * highest));
  }

  // A run that stops at the end of the metal: there the image doubles what the open end halves.
  @Test
  void endOfTheMetal() {
    LinePeaks.Ends atEnd = new LinePeaks.Ends(400, Double.POSITIVE_INFINITY, 0);
    double inside = line(new Reach.Endless(), 10, Optional.empty()).peakC(0, 8, -3);
    assertThat(line(new Reach.Endless(), 10, Optional.of(atEnd)).peakC(400, 8, -3))
        .isCloseTo(inside, within(1e-5 * inside));
  }

  // The field of cells is worked out from tables: it must say what a single place says.
  @Test
  void cellsHaveThePeaksOfTheirPlaces() {
    LinePeaks bar =
        new LinePeaks(
            300,
            0.0049,
            20,
            new Reach.Between(-10, 30),
            new Reach.Between(-8, 0),
            Optional.of(new LinePeaks.Ends(50, 20, 30)));
    List<PeakCell> cells = bar.cells(20);
    for (int i = 0; i < cells.size(); i += 997) {
      PeakCell cell = cells.get(i);
      double rise = bar.peakC(cell.tMm(), cell.nMm(), cell.bMm()) - 20;
      assertThat(cell.peakC() - 20).isCloseTo(rise, within(1e-3 * rise));
    }
  }

  @Test
  void cellsFillTheMetalUpToItsEdges() {
    LinePeaks bar =
        new LinePeaks(
            300,
            0.0049,
            20,
            new Reach.Between(-10, 30),
            new Reach.Between(-8, 0),
            Optional.of(new LinePeaks.Ends(50, 20, 30)));
    double volume = bar.cells(20).stream().mapToDouble(PeakCell::volumeMm3).sum();
    assertThat(volume).isCloseTo(40 * 8 * 100, within(1e-6));
  }

  @Test
  void aSourceOutsideItsMetalIsRefused() {
    assertThatThrownBy(() -> new Reach.Between(1, 5))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("lies outside");
    assertThatThrownBy(() -> new LinePeaks.Ends(50, -1, 0))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
