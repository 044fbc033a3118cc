package org.counterpull.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** IEC 60974-1 facts, supply currents and the NEC table, each against its printed value. */
class Iec60974PowerTest {
  private static Offset<Double> digits(double halfUnit) {
    return within(halfUnit);
  }

  // IEC 60974-1 load lines (from memory), printed to 0.01 V; tolerance half a unit.
  @ParameterizedTest
  @CsvSource({
    "MMA, 90, 23.60", "MMA, 125, 25.00", "MMA, 140, 25.60", "MMA, 180, 27.20", "MMA, 250, 30.00",
    "MAG, 90, 18.50", "MAG, 125, 20.25", "MAG, 140, 21.00", "MAG, 200, 24.00", "MAG, 250, 26.50",
    "TIG, 90, 13.60", "TIG, 125, 15.00", "TIG, 140, 15.60", "TIG, 200, 18.00", "TIG, 250, 20.00",
    "MMA, 700, 44", "MAG, 650, 44", "TIG, 650, 34"
  })
  void loadVoltages(LoadLine line, double currentA, double volts) {
    assertThat(LoadVoltage.of(line, currentA).value()).isEqualTo(volts, digits(0.005));
  }

  // Square law of duty (derived; 180 A 30 % and 140 A 20 % worked by hand): 4 digits.
  @Test
  void dutyAtOtherCurrents() {
    assertThat(DutyCycle.of(180, 30, 140).value()).isEqualTo(49.59, digits(0.005));
    assertThat(DutyCycle.continuousCurrentA(180, 30)).isEqualTo(98.59, digits(0.005));
    assertThat(DutyCycle.of(140, 20, 100).value()).isEqualTo(39.20, digits(0.005));
    assertThat(DutyCycle.continuousCurrentA(140, 20)).isEqualTo(62.61, digits(0.005));
    // A handbook's 400 A at 25 % gives 282.8 A at 50 %.
    assertThat(DutyCycle.of(400, 25, 282.8).value()).isEqualTo(50, digits(0.05));
    assertThat(DutyCycle.of(180, 30, 50).value()).isEqualTo(100);
    assertThat(DutyCycle.of(180, 30, 200).inRange()).isFalse();
  }

  // log-log between two points: at the geometric mean current, the geometric mean duty (exact).
  @Test
  void plateWithSeveralPoints() {
    PlateDuty plate = new PlateDuty(List.of(new DutyPoint(200, 20), new DutyPoint(100, 60)));
    assertThat(plate.percentAt(Math.sqrt(200 * 100))).isEqualTo(Math.sqrt(20 * 60), digits(1e-9));
    assertThat(plate.percentAt(200)).isEqualTo(20, digits(1e-9));
    assertThat(plate.percentAt(100)).isEqualTo(60, digits(1e-9));
    assertThat(plate.percentAt(80)).isEqualTo(93.75, digits(1e-9));
    assertThat(plate.percentAt(70)).isEqualTo(100);
    assertThatThrownBy(() -> new PlateDuty(List.of(new DutyPoint(200, 20), new DutyPoint(100, 10))))
        .hasMessageContaining("fall with rising current");
  }

  // 1 m of z6 at 2 kg/h: 5.130 min of arc at 30 %: 11.97 min of pauses (derived, 4 digits).
  @Test
  void waits() {
    assertThat(DutyWait.seconds(5.130 * 60, 30) / 60).isEqualTo(11.97, digits(0.005));
    assertThat(DutyWait.longestArcS(20)).isEqualTo(120);
  }

  // Supply currents, worked cases (derived from IEC 60974-1), 4 digits. The second row is often
  // given as 16.88: 1665 W / (0.83 x 0.99 x 120 V) is 16.886, cut off instead of rounded.
  @ParameterizedTest
  @CsvSource({
    "MAG, 90, 20, 120, 0.80, 0.70, 24.78, 11.08",
    "MAG, 90, 20, 120, 0.83, 0.99, 16.89, 7.55",
    "MAG, 140, 20, 120, 0.83, 0.99, 29.82, 13.33",
    "MAG, 180, 30, 230, 0.82, 0.70, 31.36, 17.18",
    "MAG, 180, 30, 230, 0.85, 0.99, 21.39, 11.72",
    "MMA, 160, 30, 230, 0.82, 0.70, 32.00, 17.52",
    "MAG, 250, 40, 240, 0.85, 0.75, 43.30, 27.39"
  })
  void supplyCurrents(
      LoadLine line,
      double currentA,
      double duty,
      double voltageV,
      double efficiency,
      double powerFactor,
      double peakA,
      double effectiveA) {
    Conversion conversion = new Conversion(efficiency, powerFactor);
    SupplyGate gate = SupplyGate.at(line, conversion, new Supply(voltageV, 16, 1), currentA, duty);
    assertThat(gate.peakA()).isEqualTo(peakA, digits(0.005));
    assertThat(gate.effectiveA()).isEqualTo(effectiveA, digits(0.005));
  }

  // AC stick set, transformer, U2 29 V given (derived): 70.62 and 31.58 A.
  @Test
  void transformerSet() {
    double peakA =
        SupplyCurrent.of(29, 225, new Conversion(0.70, 0.55), new Supply(240, 50, 1)).value();
    assertThat(peakA).isEqualTo(70.62, digits(0.005));
    assertThat(SupplyCurrent.effectiveA(peakA, 0, 20)).isEqualTo(31.58, digits(0.005));
  }

  // Three phases carry root 3 more: 26.5 V 250 A, 0.85/0.99, 400 V: 11.364 A by hand.
  @Test
  void threePhases() {
    double threePhaseA =
        SupplyCurrent.of(26.5, 250, Conversion.CORRECTED, new Supply(400, 16, 3)).value();
    assertThat(threePhaseA).isEqualTo(11.36, digits(0.005));
  }

  // Largest welding current at a sustained circuit current (derived), printed to 1 A.
  @ParameterizedTest
  @CsvSource({
    "120, 15, 59, 83, 46, 67, 77, 106",
    "120, 20, 76, 105, 60, 86, 97, 132",
    "230, 13, 90, 124, 73, 104, 115, 155",
    "230, 16, 107, 146, 88, 124, 134, 180",
    "240, 30, 177, 235, 154, 213, 216, 284",
    "240, 50, 252, 331, 230, 311, 304, 393"
  })
  void largestWeldingCurrents(
      double voltageV,
      double circuitA,
      double magPlain,
      double mag,
      double mmaPlain,
      double mma,
      double tigPlain,
      double tig) {
    Supply supply = new Supply(voltageV, circuitA, 1);
    assertThat(limit(LoadLine.MAG, Conversion.PLAIN, supply)).isEqualTo(magPlain, digits(0.5));
    assertThat(limit(LoadLine.MAG, Conversion.CORRECTED, supply)).isEqualTo(mag, digits(0.5));
    assertThat(limit(LoadLine.MMA, Conversion.PLAIN, supply)).isEqualTo(mmaPlain, digits(0.5));
    assertThat(limit(LoadLine.MMA, Conversion.CORRECTED, supply)).isEqualTo(mma, digits(0.5));
    assertThat(limit(LoadLine.TIG, Conversion.PLAIN, supply)).isEqualTo(tigPlain, digits(0.5));
    assertThat(limit(LoadLine.TIG, Conversion.CORRECTED, supply)).isEqualTo(tig, digits(0.5));
  }

  private static double limit(LoadLine line, Conversion conversion, Supply supply) {
    return WeldingCurrentLimit.of(line, conversion, supply, supply.breakerA()).value();
  }

  @Test
  void largestCurrentInvertsTheLoadLineOnItsLevelPartToo() {
    Supply supply = new Supply(400, 60, 3);
    double currentA = limit(LoadLine.TIG, Conversion.CORRECTED, supply);
    assertThat(currentA).isGreaterThan(LoadLine.TIG.levelFromA());
    assertThat(SupplyCurrent.amperes(34, currentA, Conversion.CORRECTED, supply))
        .isEqualTo(60, digits(1e-9));
  }

  // Gate of effective and peak current: the largest current found is on the gate's edge.
  @Test
  void gateEdge() {
    Supply supply = new Supply(230, 16, 1);
    PlateDuty light = new PlateDuty(List.of(new DutyPoint(200, 20)));
    double byPeak = SupplyGate.largestCurrentA(LoadLine.MAG, Conversion.CORRECTED, supply, light);
    assertThat(SupplyGate.at(LoadLine.MAG, Conversion.CORRECTED, supply, byPeak, 20).peakA())
        .isEqualTo(1.45 * 16, digits(1e-9));
    PlateDuty heavy = new PlateDuty(List.of(new DutyPoint(250, 100)));
    double byHeat = SupplyGate.largestCurrentA(LoadLine.MAG, Conversion.CORRECTED, supply, heavy);
    assertThat(byHeat).isEqualTo(146, digits(0.5));
  }

  // Resistivity of copper, 200 A, 25 m in all, 35 mm2: 2.543 V (derived, 4 digits).
  @Test
  void leadDrop() {
    assertThat(LeadDrop.of(200, 25, 35).value()).isEqualTo(2.543, digits(0.0005));
  }

  // NEC 2008 table 630.11(A): 40 A at 50 % needs 28.40 A; at 15 % the lowest row counts.
  @Test
  void necMultipliers() {
    assertThat(40 * NecDutyMultiplier.of(50).value()).isEqualTo(28.40, digits(0.005));
    assertThat(NecDutyMultiplier.of(15).value()).isEqualTo(0.45);
    assertThat(NecDutyMultiplier.of(41).value()).isEqualTo(0.71);
    // The rows are the square root of the duty; the table rounds to two digits, 60 % upwards.
    for (int duty = 20; duty <= 100; duty += 10) {
      assertThat(NecDutyMultiplier.of(duty).value() - Math.sqrt(duty / 100.0))
          .isBetween(-0.005, 0.01);
    }
  }

  @Test
  void refusesWhatMeansNothing() {
    assertThatThrownBy(() -> DutyCycle.of(-1, 20, 100)).hasMessageContaining("-1 A");
    assertThatThrownBy(() -> DutyCycle.of(100, 20, Double.NaN)).hasMessageContaining("NaN");
    assertThatThrownBy(() -> LoadLine.of("saw")).hasMessageContaining("mma, mag or tig");
  }
}
