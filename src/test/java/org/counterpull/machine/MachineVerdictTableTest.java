package org.counterpull.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.feeding.ShieldingGas;
import org.counterpull.feeding.TransferMode;
import org.counterpull.position.WeldingPosition;
import org.counterpull.power.Conversion;
import org.counterpull.power.DutyPoint;
import org.counterpull.power.PlateDuty;
import org.counterpull.power.Supply;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The worked verdicts: mag, 0.8 mm wire, Ar + 18 % CO2, tee fillet, plate at 20 C. */
class MachineVerdictTableTest {
  private static Machine mag(
      String name, double largestA, DutyPoint duty, Supply supply, double wireMm) {
    return new Machine(
        name,
        List.of(WeldingProcess.MAG),
        30,
        largestA,
        new PlateDuty(List.of(duty)),
        supply,
        Conversion.CORRECTED,
        List.of(wireMm),
        List.of(),
        ShieldingGas.ARGON_18_CO2);
  }

  static Machine small() {
    return mag("140 A", 140, new DutyPoint(90, 20), new Supply(120, 20, 1), 0.8);
  }

  static Machine middle() {
    return mag("200 A", 200, new DutyPoint(200, 20), new Supply(230, 16, 1), 0.8);
  }

  static Machine large() {
    return mag("250 A", 250, new DutyPoint(250, 40), new Supply(400, 16, 3), 1.0);
  }

  private static Machine named(String name) {
    return List.of(small(), middle(), large()).stream()
        .filter(machine -> machine.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  // Worked cases (derived from the five gates), leg the least for the thickness.
  @ParameterizedTest
  @CsvSource({
    "140 A, 3, ONE_PASS",
    "140 A, 6, TEST_FIRST",
    "140 A, 10, TACK_ONLY",
    "140 A, 12.7, TACK_ONLY",
    "200 A, 3, ONE_PASS",
    "200 A, 6, ONE_PASS",
    "200 A, 10, ONE_PASS",
    "200 A, 12.7, WITH_PREPARATION",
    "250 A, 3, ONE_PASS",
    "250 A, 6, ONE_PASS",
    "250 A, 10, ONE_PASS",
    "250 A, 12.7, ONE_PASS"
  })
  void twelveCells(String machine, double thicknessMm, Verdict verdict) {
    MachineVerdict answer =
        MachineAssessor.assess(named(machine), WeldTask.plates(JointKind.TEE, thicknessMm));
    assertThat(answer.verdict()).as(answer.toString()).isEqualTo(verdict);
  }

  // The 200 A machine: the socket holds it at 190.8 A (1.45 x 16 A at 230 V, 0.85/0.99), above the
  // 178.8 A from which 0.8 mm wire sprays in 18 % CO2.
  @Test
  void spraysWithinTheSupplyGate() {
    MachineVerdict answer = MachineAssessor.assess(middle(), WeldTask.plates(JointKind.TEE, 12.7));
    assertThat(answer.point().currentA()).isEqualTo(190.8, within(0.05));
    assertThat(answer.point().transfer()).isEqualTo(TransferMode.SPRAY);
    assertThat(answer.gate("electrical").figure("supply current")).isEqualTo(23.2, within(1e-9));
    assertThat(answer.gate("electrical").figure("effective supply current")).isLessThan(16);
    assertThat(answer.gate("chill").figure("arc energy needed")).isEqualTo(1.098, within(0.0005));
    assertThat(answer.preheatC().getAsDouble()).isBetween(25.0, 40.0);
    assertThat(answer.preparation().passes()).isEqualTo(2);
  }

  // The grounds that the small machine is refused on at 10 mm, each gate with its figures.
  @Test
  void refusalsShowTheirGrounds() {
    MachineVerdict answer = MachineAssessor.assess(small(), WeldTask.plates(JointKind.TEE, 10));
    assertThat(answer.gates())
        .extracting(GateResult::name)
        .containsExactly("electrical", "fusion", "chill", "process", "layering");
    assertThat(answer.gate("process").outcome()).isEqualTo(GateResult.Outcome.SHUT);
    assertThat(answer.gate("process").why()).contains("short-circuit");
    assertThat(answer.gate("process").figure("spray current")).isEqualTo(178.8, within(1e-9));
    assertThat(answer.gate("chill").figure("arc energy needed")).isEqualTo(0.7628, within(0.00005));
    assertThat(answer.whatWouldChangeIt()).anyMatch(change -> change.startsWith("process: spray"));
    assertThat(answer.fusedInOnePassMm()).isEqualTo(3.55, within(0.02));
    assertThat(answer.notChilledUpToMm()).isEqualTo(6);
  }

  // At full output and 25 cm/min (derived): 90 A on 6 mm lacks fusion, needs 127.5 A.
  @Test
  void ninetyAmperesLackFusionAtSix() {
    Machine ninety = mag("90 A", 90, new DutyPoint(90, 20), new Supply(230, 16, 1), 0.8);
    MachineVerdict answer = MachineAssessor.assess(ninety, WeldTask.plates(JointKind.TEE, 6));
    assertThat(answer.gate("fusion").figure("current needed")).isEqualTo(127.5, within(1e-9));
    assertThat(answer.gate("fusion").passed()).isFalse();
    assertThat(answer.gate("chill").passed()).isTrue();
    assertThat(answer.verdict()).isEqualTo(Verdict.TEST_FIRST);
  }

  // Energy, leg and penetration at 4.2 mm/s, U = 14 + 0.05 I (derived, 4 and 3 digits).
  @ParameterizedTest
  @CsvSource({
    "90, 0.3964, 3.60, 0.82, 1.22", "125, 0.6027, 4.44, 1.19, 1.77",
        "140, 0.7000, 4.79, 1.36, 2.01",
    "180, 0.9857, 5.68, 1.78, 2.65", "210, 1.225, 6.34, 2.10, 3.12", "250, 1.577, 7.19, 2.51, 3.73",
    "300, 2.071, 8.24, 3.02, 4.48"
  })
  void outputTable(double currentA, double energy, double leg, double tight, double gapped) {
    WorkingPoint point =
        new WorkingPoint(
            WeldingProcess.MAG, 1.0, currentA, 14 + 0.05 * currentA, 4.2, 100, TransferMode.SPRAY);
    assertThat(point.largestArcEnergyKJPerMm())
        .isEqualTo(energy, within(energy < 1 ? 0.00005 : 0.0005));
    assertThat(point.largestLegMm()).isEqualTo(leg, within(0.005));
    assertThat(FusionGate.penetrationMm(point, 0)).isEqualTo(tight, within(0.005));
    assertThat(FusionGate.penetrationMm(point, 1.2)).isEqualTo(gapped, within(0.005));
  }

  // Preheat that lets a weak pass cool like the needed one (derived, 4 digits), from 20 C.
  @ParameterizedTest
  @CsvSource({"1.10, 55.2", "1.25, 98.4", "1.50, 153.1", "1.57, 165.6", "2.0, 225.0"})
  void weakPassPreheats(double ratio, double preheatC) {
    assertThat(WeakPassPreheat.celsius(ratio, 20).getAsDouble()).isEqualTo(preheatC, within(0.05));
  }

  // 2.5 times the energy would take 270.8 C: solved, but refused above 250.
  @Test
  void refusesPreheatAbove250() {
    assertThat(WeakPassPreheat.solvedC(2.5, 20)).isEqualTo(270.8, within(0.05));
    assertThat(WeakPassPreheat.celsius(2.5, 20)).isEmpty();
    assertThat(WeakPassPreheat.celsius(1.098 / 0.700, 20).getAsDouble())
        .isEqualTo(165.4, within(0.1));
    assertThat(WeakPassPreheat.celsius(0.8, 20)).hasValue(20);
  }

  // A 25 x 6 bar, 30 kJ at one section, 30 and 120 s (derived, 4 digits): 715.2 and 298.0 K; a free
  // end twice as much.
  @Test
  void planeInABar() {
    BarSection bar = new BarSection(6, 25);
    assertThat(BarWarming.lossPerS(bar)).isEqualTo(0.002025, within(0.0000005));
    assertThat(BarWarming.afterPassesK(bar, 1, 30_000, 30, 1)).isEqualTo(715.2, within(0.05));
    assertThat(BarWarming.afterPassesK(bar, 2, 30_000, 120, 1)).isEqualTo(596.0, within(0.05));
  }

  // A knowing welder's case: half-inch by two-inch bar, butt, small machine. Plate would be
  // refused;
  // the bar warms from pass to pass, so a test piece decides.
  @Test
  void aNarrowBarIsNoPlate() {
    WeldTask plate = WeldTask.plates(JointKind.BUTT, 12.7);
    assertThat(MachineAssessor.assess(small(), plate).verdict()).isEqualTo(Verdict.TACK_ONLY);
    MachineVerdict bar = MachineAssessor.assess(small(), plate.inBars(new BarSection(12.7, 50.8)));
    assertThat(bar.verdict()).isEqualTo(Verdict.TEST_FIRST);
    assertThat(bar.preparation().words()).startsWith("double-v, 60 degrees");
    assertThat(bar.preheatC().getAsDouble()).isBetween(150.0, 175.0);
    MachineVerdict wide = MachineAssessor.assess(small(), plate.inBars(new BarSection(12.7, 300)));
    assertThat(wide.verdict()).isEqualTo(Verdict.TACK_ONLY);
  }

  // Known steel: where its cooling time is long enough the chill gate opens without the energy.
  @Test
  void aSoftSteelOpensTheChillGate() {
    WeldTask task = WeldTask.plates(JointKind.TEE, 12.7);
    WeldTask soft =
        new WeldTask(
            task.joint(),
            task.thinnerMm(),
            task.thickerMm(),
            task.legMm(),
            task.position(),
            task.ambientC(),
            OptionalDouble.of(2.5),
            task.bar());
    assertThat(MachineAssessor.assess(middle(), soft).gate("chill").passed()).isTrue();
    assertThat(MachineAssessor.assess(middle(), task).gate("chill").passed()).isFalse();
  }

  // Over 1 to 25 mm a verdict never gets better as the plate gets thicker, once it is thick enough
  // not to be burnt through.
  @ParameterizedTest
  @EnumSource(WeldingProcess.class)
  void tablesAreMonotone(WeldingProcess process) {
    for (Machine machine : List.of(small(), middle(), large())) {
      for (JointKind joint : JointKind.values()) {
        for (WeldingPosition position : WeldingPosition.values()) {
          List<MachineVerdict> rows =
              MachineAssessor.table(machine, process, in(position, WeldTask.plates(joint, 5)));
          assertThat(rows).hasSize(25);
          List<Integer> ranks =
              rows.stream()
                  .map(row -> row.verdict().ordinal())
                  .dropWhile(rank -> rank == Verdict.NO.ordinal())
                  .toList();
          assertThat(ranks).as("%s %s %s", machine.name(), joint, position).isSorted();
        }
      }
    }
  }

  private static WeldTask in(WeldingPosition position, WeldTask task) {
    return new WeldTask(
        task.joint(),
        task.thinnerMm(),
        task.thickerMm(),
        task.legMm(),
        position,
        task.ambientC(),
        task.shortestT85S(),
        task.bar());
  }

  // Current within the machine, preheat within 250 C, whole passes, waits that match the duty.
  @Test
  void everyRowIsSound() {
    for (Machine machine : List.of(small(), middle(), large())) {
      for (JointKind joint : JointKind.values()) {
        MachineAssessor.table(machine, WeldingProcess.MAG, WeldTask.plates(joint, 5))
            .forEach(
                row -> {
                  assertThat(row.point().currentA())
                      .isBetween(machine.smallestCurrentA(), machine.largestCurrentA());
                  row.preheatC().ifPresent(preheat -> assertThat(preheat).isBetween(20.0, 250.0));
                  assertThat(row.preparation().passes()).isBetween(1, 30);
                  assertThat(row.arcTimeSPerM() / (row.arcTimeSPerM() + row.waitSPerM()) * 100)
                      .isEqualTo(row.point().dutyPercent(), within(1e-9));
                });
      }
    }
  }

  // A bigger machine is never worse.
  @Test
  void biggerIsNeverWorse() {
    for (int thickness = 1; thickness <= 25; thickness++) {
      WeldTask task = WeldTask.plates(JointKind.TEE, thickness);
      assertThat(MachineAssessor.assess(middle(), task).verdict().ordinal())
          .isLessThanOrEqualTo(MachineAssessor.assess(small(), task).verdict().ordinal());
      assertThat(MachineAssessor.assess(large(), task).verdict().ordinal())
          .isLessThanOrEqualTo(MachineAssessor.assess(middle(), task).verdict().ordinal());
    }
  }

  // Limits of the other processes (from memory and common practice): self-shielded 0.8 mm wire to
  // 8 mm, TIG to 10 mm, stick as far as its energy goes.
  @ParameterizedTest
  @CsvSource({
    "FCAW_S, 8, ONE_PASS",
    "FCAW_S, 9, TACK_ONLY",
    "TIG, 3, ONE_PASS",
    "TIG, 12, TACK_ONLY",
    "MMA, 1, NO",
    "MMA, 6, ONE_PASS",
    "MMA, 12, ONE_PASS"
  })
  void otherProcesses(WeldingProcess process, double thicknessMm, Verdict verdict) {
    assertThat(
            MachineAssessor.assess(middle(), process, WeldTask.plates(JointKind.TEE, thicknessMm))
                .verdict())
        .isEqualTo(verdict);
  }

  // The best of several processes is taken.
  @Test
  void theBestProcessCounts() {
    Machine mag = small();
    Machine both =
        new Machine(
            "both",
            List.of(WeldingProcess.MAG, WeldingProcess.MMA),
            mag.smallestCurrentA(),
            mag.largestCurrentA(),
            mag.duty(),
            mag.supply(),
            mag.conversion(),
            mag.wiresMm(),
            mag.electrodesMm(),
            mag.gas());
    MachineVerdict answer = MachineAssessor.assess(both, WeldTask.plates(JointKind.TEE, 10));
    assertThat(answer.point().process()).isEqualTo(WeldingProcess.MMA);
    assertThat(answer.verdict()).isEqualTo(Verdict.ONE_PASS);
  }

  // A circuit that trips below the machine's smallest current: no.
  @Test
  void aCircuitTooSmall() {
    Machine starved =
        new Machine(
            "starved",
            List.of(WeldingProcess.MAG),
            100,
            250,
            new PlateDuty(List.of(new DutyPoint(250, 40))),
            new Supply(120, 10, 1),
            Conversion.PLAIN,
            List.of(0.8),
            List.of(),
            ShieldingGas.ARGON_18_CO2);
    MachineVerdict answer = MachineAssessor.assess(starved, WeldTask.plates(JointKind.TEE, 6));
    assertThat(answer.verdict()).isEqualTo(Verdict.NO);
    assertThat(answer.gate("electrical").wouldChange()).contains("breaker");
  }
}
