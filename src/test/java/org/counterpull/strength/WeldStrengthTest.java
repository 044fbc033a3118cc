package org.counterpull.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tolerances: half a unit of the last printed digit. */
class WeldStrengthTest {
  private static final Vector3D ALONG = Vector3D.PLUS_I;
  private static final Vector3D OPENING = new Vector3D(0, 1, 1).normalize();

  // EN 1993-1-8: f_vw,d, a force straight across (sigma = tau), and N/mm of a 4 mm throat.
  @ParameterizedTest
  @CsvSource({
    "S235, 360, 207.8, 254.6, 831.4, 0.05",
    "S275, 430, 233.7, 286.2, 934.6, 0.05",
    "S355, 490, 251.5, 308.0, 1006, 0.5",
    "S355J2, 470, 241.2, 295.4, 964.8, 0.05"
  })
  void eurocodeStrengths(
      String grade, double fu, double shear, double across, double perMm, double tolerance) {
    double beta = CorrelationFactor.of(grade);
    double ours = EnShearStrength.of(fu, beta).value();
    assertThat(ours).isCloseTo(shear, within(0.05));
    assertThat(4 * ours).isCloseTo(perMm, within(tolerance));
    Vector3D force = new Vector3D(0, 0, 100);
    double used = EnDirectional.of(ThroatStress.of(force, ALONG, OPENING, 1), fu, beta).value();
    assertThat(100 / used).isCloseTo(across, within(0.05));
    assertThat(100 / used / ours).isCloseTo(1.225, within(5e-4));
  }

  // Two fillets a4, 100 long (92 count), S235: 153.0 kN, across by direction 187.4 kN; 60 kN at 45
  // degrees: 40.76 (twice), 57.64, equivalent 128.9 of 360: 0.3580; simplified 0.3922.
  @Test
  void twoFilletsOfTheWorkedExample() {
    double counted = 2 * EffectiveLength.en(100, 4, 2).value();
    assertThat(counted).isEqualTo(184);
    double shear = EnShearStrength.mPa(360, 0.8);
    assertThat(4 * counted * shear / 1000).isCloseTo(153.0, within(0.05));
    ThroatStress across = ThroatStress.of(new Vector3D(0, 0, 1000 / counted), ALONG, OPENING, 4);
    assertThat(1 / EnDirectional.utilisation(across, 360, 0.8)).isCloseTo(187.4, within(0.05));
    double part = 60_000 / Math.sqrt(2) / counted;
    ThroatStress slanted = ThroatStress.of(new Vector3D(part, 0, part), ALONG, OPENING, 4);
    assertThat(Math.abs(slanted.normalMPa())).isCloseTo(40.76, within(0.005));
    assertThat(slanted.acrossMPa()).isCloseTo(40.76, within(0.005));
    assertThat(slanted.alongMPa()).isCloseTo(57.64, within(0.005));
    assertThat(slanted.equivalentMPa()).isCloseTo(128.9, within(0.05));
    assertThat(EnDirectional.utilisation(slanted, 360, 0.8)).isCloseTo(0.3580, within(5e-5));
    assertThat(60_000 / (4 * counted * shear)).isCloseTo(0.3922, within(5e-5));
  }

  // AISC and AWS, E70: 144.8 MPa; 0.9281 kip/in per 1/16 in of leg, 1.392 LRFD; 102.4 N/mm per mm
  // of
  // leg; gains 1.177, 1.297, 1.500; two legs of 6, 100 long: 122.8 kN.
  @Test
  void americanAllowables() {
    double e70 = AwsFilletStress.of(AwsFilletStress.E70_MPA, 0).value();
    assertThat(e70).isCloseTo(144.8, within(0.05));
    double kipPerInch = 0.30 * 70 * Math.sqrt(0.5) / 16;
    assertThat(AwsFilletStress.mPa(70, 0) * Math.sqrt(0.5) / 16)
        .isCloseTo(kipPerInch, within(1e-12));
    assertThat(AwsFilletStress.mPa(70, 0) * Math.sqrt(0.5) / 16).isCloseTo(0.9281, within(5e-5));
    assertThat(1.5 * kipPerInch).isCloseTo(1.392, within(5e-4));
    assertThat(e70 * Math.sqrt(0.5)).isCloseTo(102.4, within(0.05));
    assertThat(AwsFilletStress.gain(30)).isCloseTo(1.177, within(5e-4));
    assertThat(AwsFilletStress.gain(45)).isCloseTo(1.297, within(5e-4));
    assertThat(AwsFilletStress.gain(90)).isCloseTo(1.500, within(1e-12));
    double two = 2 * 6 * Math.sqrt(0.5) * 100 * e70 / 1000;
    assertThat(two).isCloseTo(122.8, within(0.05));
  }

  // Plate that matches two legs of 6 in shear rupture, F_u 400: 10.24 mm; one side 5.119.
  @Test
  void metalBesideTheWeld() {
    double one = 6 * Math.sqrt(0.5) * AwsFilletStress.mPa(AwsFilletStress.E70_MPA, 0);
    assertThat(BaseMetalShear.matchingThicknessMm(400, 2 * one)).isCloseTo(10.24, within(0.005));
    assertThat(BaseMetalShear.matchingThicknessMm(400, one)).isCloseTo(5.119, within(5e-4));
    // 0.40 f_y governs A36 (100 against 120 MPa), 0.30 f_u S690 (276 against 231).
    assertThat(BaseMetalShear.of(250, 400, 10).value()).isCloseTo(1000, within(1e-9));
    assertThat(BaseMetalShear.of(690, 770, 10).value()).isCloseTo(2310, within(1e-9));
  }

  // EN 1993-1-8 4.5.1: less a throat at each end; nothing under max(30, 6a). AISC: 4 legs or a
  // quarter of the length.
  @Test
  void lengthsThatCount() {
    assertThat(EffectiveLength.en(100, 4, 0).value()).isEqualTo(100);
    assertThat(EffectiveLength.en(38, 4, 2).value()).isEqualTo(30);
    assertThat(EffectiveLength.en(37, 4, 2).value()).isZero();
    assertThat(EffectiveLength.en(63, 8, 2).value()).isZero();
    assertThat(EffectiveLength.en(64, 8, 2).value()).isEqualTo(48);
    assertThat(EffectiveLength.aiscLeg(20, 6).value()).isEqualTo(5);
    assertThat(EffectiveLength.aiscLeg(24, 6).value()).isEqualTo(6);
  }

  // Long laps: 1 at 150 throats, 1.0 at 100 legs, 0.6 at 300 (AISC) and at 450 throats (EN).
  @Test
  void longLaps() {
    assertThat(LongLap.en(600, 4).value()).isCloseTo(1, within(1e-12));
    assertThat(LongLap.en(1800, 4).value()).isCloseTo(0.6, within(1e-12));
    assertThat(LongLap.aisc(600, 6).value()).isCloseTo(1, within(1e-12));
    assertThat(LongLap.aisc(1800, 6).value()).isCloseTo(0.6, within(1e-12));
    assertThat(LongLap.aisc(2400, 6).inRange()).isFalse();
  }

  @Test
  void unlistedSteelsGetTheSafeFactor() {
    assertThat(CorrelationFactor.of("S460M")).isEqualTo(1.0);
    assertThat(CorrelationFactor.of("A36")).isEqualTo(CorrelationFactor.UNLISTED);
    assertThat(EnShearStrength.of(770, 1).inRange()).isFalse();
    assertThatThrownBy(() -> EnShearStrength.of(-1, 1)).hasMessageContaining("-1 MPa");
    assertThatThrownBy(() -> AwsFilletStress.of(480, 120)).hasMessageContaining("120 degrees");
  }
}
