package org.counterpull.fillet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.counterpull.fillet.FlareThroat.Flare;
import org.counterpull.fillet.PartialPenetrationThroat.Manner;
import org.counterpull.penetration.JacksonShrubsall;
import org.counterpull.penetration.PenetrationFactor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Fillet sizes of AWS D1.1 and EN 1993-1-8, and the energy that a leg takes. */
class AwsAndEnFilletSizesTest {

  // AWS D1.1 minimum legs (exact), their throats and sqrt(t) - 0.5 (derived, 4 digits).
  @ParameterizedTest
  @CsvSource({
    "6, 3, 2.12, 1.949", "10, 5, 3.54, 2.662", "12.7, 6, 4.24, 3.064", "15, 6, 4.24, 3.373",
    "20, 6, 4.24, 3.972", "25, 8, 5.66, 4.500", "30, 8, 5.66, 4.977", "40, 8, 5.66, 5.825"
  })
  void minimumSizes(double thicknessMm, double legMm, double throatMm, double enThroatMm) {
    assertThat(MinimumFillet.of(thicknessMm).value()).isEqualTo(legMm);
    assertThat(FilletThroat.of(legMm, 90).value()).isEqualTo(throatMm, within(0.005));
    assertThat(EnThroatBounds.least(thicknessMm).value()).isEqualTo(enThroatMm, within(0.0005));
  }

  // AWS D1.1: the class boundaries belong to the lower class.
  @Test
  void boundariesBelongBelow() {
    assertThat(MinimumFillet.legMm(6.01)).isEqualTo(5);
    assertThat(MinimumFillet.legMm(12)).isEqualTo(5);
    assertThat(MinimumFillet.legMm(20.01)).isEqualTo(8);
    assertThat(MinimumFillet.of(2).inRange()).isFalse();
  }

  // AISC J2.2b (from memory): 5 mm edge carries 5, 6 mm carries 4, 10 mm carries 8; toe 0.75 t.
  @Test
  void maximumSizes() {
    assertThat(MaximumFillet.of(5).value()).isEqualTo(5);
    assertThat(MaximumFillet.of(6).value()).isEqualTo(4);
    assertThat(MaximumFillet.of(10).value()).isEqualTo(8);
    assertThat(MaximumFillet.alongRolledToeMm(6)).isEqualTo(4.5);
    assertThat(EnThroatBounds.largest(10).value()).isEqualTo(7, within(1e-12));
  }

  // Throat over leg by angle (derived, 4 digits).
  @ParameterizedTest
  @CsvSource({"60, 0.8660", "75, 0.7934", "90, 0.7071", "105, 0.6088", "120, 0.5000"})
  void skewThroats(double degrees, double perLeg) {
    assertThat(FilletThroat.perLeg(degrees)).isEqualTo(perLeg, within(0.00005));
    assertThat(FilletThroat.legMm(FilletThroat.of(7, degrees).value(), degrees))
        .isEqualTo(7, within(1e-12));
  }

  // Unequal fillet 5 x 8: 20.00 mm2, throat 4.240; convex z6 k1.2: 18.00 + 6.788 by the parabola,
  // + 6.896 by the circular segment (derived, 4 digits).
  @Test
  void sections() {
    assertThat(FilletArea.unequalMm2(5, 8)).isEqualTo(20.00, within(0.005));
    assertThat(FilletThroat.unequalMm(5, 8)).isEqualTo(4.240, within(0.0005));
    assertThat(FilletArea.of(6, 90, 0).value()).isEqualTo(18.00, within(0.005));
    assertThat(FilletArea.of(6, 90, 1.2).value() - 18).isEqualTo(6.788, within(0.0005));
    assertThat(FilletArea.circularSegmentMm2(6 * Math.sqrt(2), 1.2))
        .isEqualTo(6.896, within(0.0005));
    assertThat(FilletArea.of(6, 130, 0).inRange()).isFalse();
  }

  // Flat fillets in kg/m, and with 10 % more leg (derived, 4 digits); 1 mm over on z5 is 44 % more.
  @ParameterizedTest
  @CsvSource({
    "3, 0.03532, 0.04274",
    "4, 0.06280, 0.07599",
    "5, 0.09812, 0.1187",
    "6, 0.1413, 0.1710",
    "8, 0.2512, 0.3040",
    "10, 0.3925, 0.4749",
    "12, 0.5652, 0.6839"
  })
  void filletMass(double legMm, double flat, double over) {
    double kgPerM = FilletArea.of(legMm, 90, 0).value() * 7.85e-3;
    assertThat(kgPerM).isEqualTo(flat, within(0.00005));
    assertThat(FilletArea.of(1.1 * legMm, 90, 0).value() * 7.85e-3)
        .isEqualTo(over, within(0.00005));
  }

  // From memory, AWS D1.1: z5 over a gap of 2 mm is laid as z7.
  @Test
  void gaps() {
    assertThat(FitUpGap.of(5, 2).value()).isEqualTo(7);
    assertThat(FitUpGap.of(5, 1.6).value()).isEqualTo(5);
    assertThat(FitUpGap.of(5, 6).inRange()).isFalse();
    assertThat(FilletArea.withGapMm2(5, 2, 1)).isEqualTo(5 * 7 / 2.0 + 2);
  }

  // Nine published horizontal fillet settings: arc energy in, predicted leg out (derived, 4
  // digits).
  @ParameterizedTest
  @CsvSource({
    "0.1716, 2.371",
    "0.2176, 2.671",
    "0.2446, 2.832",
    "0.2836, 3.049",
    "0.3600, 3.435",
    "0.5796, 4.358",
    "0.9717, 5.643",
    "1.415, 6.810",
    "1.950, 7.994"
  })
  void legOfAnEnergy(double energy, double leg) {
    assertThat(LegEnergy.legMm(energy, LegEnergy.WIRE_KJ_PER_MM3)).isEqualTo(leg, within(0.0008));
  }

  // Energy of the AWS minimum legs 3, 5, 6, 8 (derived, 4 digits).
  @ParameterizedTest
  @CsvSource({"3, 0.2746", "5, 0.7628", "6, 1.098", "8, 1.953"})
  void energyOfALeg(double leg, double energy) {
    assertThat(LegEnergy.of(leg).value()).isEqualTo(energy, within(energy < 1 ? 0.00005 : 0.0005));
  }

  // From memory, AWS D1.1: bevel 45, depth 8, stick: 5.000; flare-bevel R6: 1.875 and 3.750.
  @Test
  void effectiveThroats() {
    assertThat(PartialPenetrationThroat.bevel45(8, Manner.STICK).value()).isEqualTo(5);
    assertThat(PartialPenetrationThroat.bevel45(8, Manner.WIRE_FLAT_OR_HORIZONTAL).value())
        .isEqualTo(8);
    assertThat(PartialPenetrationThroat.bevel45(2, Manner.STICK).inRange()).isFalse();
    assertThat(PartialPenetrationThroat.squareBothSidesMm(8)).isEqualTo(6);
    assertThat(PartialPenetrationThroat.leastSizeMm(6)).isEqualTo(3);
    assertThat(PartialPenetrationThroat.leastSizeMm(12.7)).isEqualTo(6);
    assertThat(FlareThroat.of(Flare.BEVEL, false, 6).value()).isEqualTo(1.875);
    assertThat(FlareThroat.of(Flare.BEVEL, true, 6).value()).isEqualTo(3.750);
    assertThat(FlareThroat.of(Flare.V, true, 10).value()).isEqualTo(7.5);
  }

  // Jackson and Shrubsall (form from memory), 250 A 25 V 7.5 mm/s: 2.155 and 3.200 mm with K 0.0229
  // and 0.034; the inch factor 0.0012 is 0.02289 (derived, 4 digits).
  @Test
  void penetration() {
    assertThat(JacksonShrubsall.of(PenetrationFactor.TIGHT, 250, 25, 7.5).value())
        .isEqualTo(2.155, within(0.0005));
    assertThat(JacksonShrubsall.of(PenetrationFactor.OVER_GAP, 250, 25, 7.5).value())
        .isEqualTo(3.200, within(0.0005));
    assertThat(PenetrationFactor.fromInch(0.0012)).isEqualTo(0.02289, within(0.000005));
    // Slower than 3 mm/s does not deepen it.
    assertThat(JacksonShrubsall.mm(0.023, 200, 24, 1))
        .isEqualTo(JacksonShrubsall.mm(0.023, 200, 24, 3));
    assertThat(JacksonShrubsall.of(0.023, 200, 24, 1).inRange()).isFalse();
  }

  @Test
  void refusesWhatMeansNothing() {
    assertThatThrownBy(() -> MinimumFillet.of(-3)).hasMessageContaining("thickness is -3 mm");
    assertThatThrownBy(() -> LegEnergy.of(Double.NaN)).hasMessageContaining("leg");
  }
}
