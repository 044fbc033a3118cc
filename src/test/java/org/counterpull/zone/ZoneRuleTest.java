package org.counterpull.zone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.counterpull.quantity.Computed;
import org.counterpull.shrinkage.ErrorBand;
import org.counterpull.shrinkage.FreeAngle;
import org.counterpull.shrinkage.FreeShrinkage;
import org.counterpull.shrinkage.ShrinkageMaterial;
import org.counterpull.shrinkage.TendonForce;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The zone rule by hand, in its limits, and against the closed forms within their bands. */
class ZoneRuleTest {
  private static final ShrinkageMaterial STEEL = ZoneCases.STEEL;

  // A layer of 2 mm of 10 mm, 20 mm wide, over 500 C: S = 0.012 x 40 / 10, phi = 12 x 0.012 x 40 x
  // 4 / 1000, and its metal at full yield strain: F = 355 x 40.
  @Test
  void byHand() {
    List<PeakCell> cells =
        List.of(
            new PeakCell(0.5, -5, -1, 20, 900),
            new PeakCell(0.5, 5, -1, 20, 1200),
            new PeakCell(0.5, 5, -6, 160, 20));
    ZoneShrinkage zone = ZoneRule.of(cells, 1, Wall.wide(10), 20, 355, STEEL);
    assertThat(zone.across().value()).isCloseTo(0.048, within(1e-12));
    assertThat(zone.angle().value()).isCloseTo(0.02304, within(1e-12));
    assertThat(zone.tendon().value()).isCloseTo(355 * 40, within(1e-6));
    assertThat(zone.tendonNMm()).isCloseTo(0, within(1e-12));
    assertThat(zone.tendonBMm()).isCloseTo(-1, within(1e-12));
    assertThat(zone.across().inRange()).isTrue();
  }

  // Fades between one and two times the rise of yield: halfway at 1.5.
  @Test
  void yieldFadesOut() {
    double rise = ZoneCases.YIELD_RISE_K;
    PeakCell half = new PeakCell(0, 0, 0, 100, 20 + 1.5 * rise);
    PeakCell none = new PeakCell(0, 0, 0, 100, 20 + 0.99 * rise);
    ZoneShrinkage zone = ZoneRule.of(List.of(half, none), 1, Wall.wide(10), 20, 355, STEEL);
    assertThat(zone.tendon().value()).isCloseTo(0.5 * 355 * 100, within(1e-6));
    assertThat(zone.across().warnings()).hasSize(1);
  }

  // A bar that is hot all over gives way as a whole and keeps no force; of a bar half of which is
  // hot, the cold half yields in tension first.
  @Test
  void aNarrowSectionHoldsLess() {
    PeakCell hot = new PeakCell(0, 0, 0, 50, 900);
    double wide = ZoneRule.of(List.of(hot), 1, Wall.wide(5), 20, 355, STEEL).tendon().value();
    assertThat(wide).isCloseTo(355 * 50, within(1e-6));
    Wall all = new Wall(5, -2.5, 50);
    assertThat(ZoneRule.of(List.of(hot), 1, all, 20, 355, STEEL).tendon().value())
        .isCloseTo(0, within(1e-6));
    PeakCell warm = new PeakCell(0, 0, 0, 50, 20 + 2.2 * ZoneCases.YIELD_RISE_K);
    Wall ample = new Wall(5, -2.5, 1000);
    // The section gives way by e with 950 e = 50 eY: e = eY / 19; 2.2 - 1/19 - 1 is still over 1.
    assertThat(ZoneRule.of(List.of(warm), 1, ample, 20, 355, STEEL).tendon().value())
        .isCloseTo(355 * 50, within(1e-3));
    Wall scant = new Wall(5, -2.5, 150);
    // 100 e = 50 eY: e = eY / 2, and 2.2 - 0.5 - 1 = 0.7 of the yield strain stays.
    assertThat(ZoneRule.of(List.of(warm), 1, scant, 20, 355, STEEL).tendon().value())
        .isCloseTo(0.7 * 355 * 50, within(1e-3));
  }

  // Long runs on wide plates: both published ways, within the bands of the closed forms, which
  // depend on the heat parameter alone. From x = 5.5 on the zone goes through the wall and leaves
  // the angle's band; below x = 2 the force leaves its own (thick plate: ln 2 / e = 0.760 of it).
  @ParameterizedTest
  @CsvSource({"2,6", "2,20", "3,10", "3,25", "4,6", "4,12", "5,8", "5,16"})
  void closedFormsAgreeWithinTheirBands(double x, double h) {
    double q = x * h * h;
    ZoneShrinkage zone = ZoneCases.plate(q, h);
    inBand(zone.across(), FreeShrinkage.of(q, h), "transverse butt shrinkage");
    inBand(zone.angle(), FreeAngle.of(q, h), "angle of a fillet or bead");
    inBand(zone.tendon(), TendonForce.of(q), "tendon force");
  }

  // Across and along agree on over the peak of the angle too.
  @ParameterizedTest
  @ValueSource(doubles = {6, 8, 10, 20})
  void throughTheWallTheAngleAloneParts(double x) {
    double q = x * 100;
    ZoneShrinkage zone = ZoneCases.plate(q, 10);
    inBand(zone.across(), FreeShrinkage.of(q, 10), "transverse butt shrinkage");
    inBand(zone.tendon(), TendonForce.of(q), "tendon force");
    assertThat(zone.angle().value()).isLessThan(FreeAngle.of(q, 10).value() / 2);
    assertThat(zone.angle().warnings())
        .containsExactly("the zone goes through the wall: its angle is a lower bound");
    assertThat(ZoneCases.plate(400, 10).angle().inRange()).isTrue();
  }

  private static void inBand(Computed zone, Computed closed, String quantity) {
    ErrorBand band = ErrorBand.of(quantity);
    assertThat(zone.value() / closed.value())
        .as(quantity)
        .isBetween(band.lowFactor(), band.highFactor());
  }

  // On the edge of a bar all heat goes one way; the same field in a bar of 30 x 10 pulls less than
  // in a plate that would not give way.
  @Test
  void onTheEdgeOfABar() {
    LinePeaks onEdge =
        new LinePeaks(
            200,
            STEEL.heatCapacityJPerMm3K(),
            20,
            new Reach.Between(-30, 0),
            new Reach.Between(-10, 0),
            Optional.empty());
    List<PeakCell> cells = onEdge.cells(ZoneCases.YIELD_RISE_K);
    ZoneShrinkage bar = ZoneRule.of(cells, 1, new Wall(10, -5, 300), 20, 355, STEEL);
    ZoneShrinkage held = ZoneRule.of(cells, 1, Wall.wide(10), 20, 355, STEEL);
    assertThat(bar.tendon().value() / held.tendon().value()).isBetween(0.3, 0.95);
    assertThat(bar.tendonNMm()).isBetween(-30.0, -2.0);
    assertThat(bar.angle().value()).isPositive().isEqualTo(held.angle().value());
  }

  // A short run heats less metal per length than a long one.
  @Test
  void aShortRunShrinksLess() {
    LinePeaks shortRun =
        new LinePeaks(
            400,
            STEEL.heatCapacityJPerMm3K(),
            20,
            new Reach.Endless(),
            new Reach.Between(-10, 0),
            Optional.of(
                new LinePeaks.Ends(20, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY)));
    ZoneShrinkage zone =
        ZoneRule.of(shortRun.cells(ZoneCases.YIELD_RISE_K), 20, Wall.wide(10), 20, 355, STEEL);
    double longRun = ZoneCases.plate(400, 10).across().value();
    assertThat(zone.across().value()).isBetween(0.5 * longRun, 1.3 * longRun);
    assertThat(zone.tendon().value()).isLessThan(ZoneCases.plate(400, 10).tendon().value());
  }

  @Test
  void nonsenseIsRefused() {
    assertThatThrownBy(() -> new PeakCell(0, 0, 0, 0, 20))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Wall(10, -5, Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> ZoneRule.of(List.of(), 0, Wall.wide(10), 20, 355, STEEL))
        .hasMessageContaining("length is 0 mm");
  }
}
