package org.counterpull.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.feeding.ShieldingGas;
import org.counterpull.machine.Panel.Reading;
import org.counterpull.power.Conversion;
import org.counterpull.power.DutyPoint;
import org.counterpull.power.PlateDuty;
import org.counterpull.power.Supply;
import org.junit.jupiter.api.Test;

class PanelAndLeadTest {
  private static final Supply SOCKET = new Supply(230, 16, 1);

  /** Straight between the marks: (120 - 40)/(160 - 40) of 1 to 10 is 7.0. */
  @Test
  void numberedDialsAreReadBetweenTheirMarks() {
    Dial dial =
        new Dial(Reading.CURRENT, List.of(new Dial.Mark("1", 40), new Dial.Mark("10", 160)));
    assertThat(dial.position(120)).isEqualTo("7.0");
    assertThat(dial.position(160)).isEqualTo("10");
    assertThat(dial.position(170)).isEqualTo("10 (its end)");
  }

  @Test
  void letteredDialsAreSteps() {
    Dial dial =
        new Dial(
            Reading.VOLTAGE,
            List.of(new Dial.Mark("A", 15.5), new Dial.Mark("B", 17), new Dial.Mark("C", 18.5)));
    assertThat(dial.position(16.1)).isEqualTo("A");
    assertThat(dial.position(16.4)).isEqualTo("B");
  }

  @Test
  void aDialOfOneMarkIsNone() {
    assertThatThrownBy(() -> new Dial(Reading.VOLTAGE, List.of(new Dial.Mark("A", 15))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("two marks");
  }

  /** Ohm's law by hand: 0.0178 x 2 x 25 m / 2.5 mm2 = 0.356 ohm; at 16 A 5.696 V. */
  @Test
  void aLeadLosesVoltage() {
    ExtensionLead lead = PlateText.lead("25 m 2.5 mm2");
    assertThat(lead.dropV(SOCKET, 16)).isCloseTo(5.696, within(0.0005));
    assertThat(lead.largestSupplyA(SOCKET)).isCloseTo(23 / 0.356, within(0.01));
  }

  /** AWG 12 has 3.31 mm2 (wire tables). */
  @Test
  void americanGauges() {
    assertThat(PlateText.lead("50 ft 12 AWG").sectionMm2()).isCloseTo(3.31, within(0.005));
    assertThat(PlateText.lead("50 ft 12 AWG").lengthM()).isCloseTo(15.24, within(1e-9));
  }

  /**
   * By hand, MAG at 14 + 0.05 I, 0.85 x 0.99: 50 m of 1.5 mm2 lose 18.99 V at 16 A, so 0.05 I2 + 14
   * I = 0.8415 x 211.0 x 16 and I = 136.4 A. 100 m lose a tenth of 230 V at 9.69 A: 0.8415 x 207 x
   * 9.69 and I = 91.0 A.
   */
  @Test
  void aLongThinLeadTakesCurrentFromTheMachine() {
    double bare = machine(Optional.empty()).usableCurrentA(WeldingProcess.MAG);
    double good =
        machine(Optional.of(new ExtensionLead(10, 2.5))).usableCurrentA(WeldingProcess.MAG);
    double thin =
        machine(Optional.of(new ExtensionLead(50, 1.5))).usableCurrentA(WeldingProcess.MAG);
    double bad =
        machine(Optional.of(new ExtensionLead(100, 1.5))).usableCurrentA(WeldingProcess.MAG);
    assertThat(good).isLessThan(bare).isGreaterThan(0.95 * bare);
    assertThat(thin).isCloseTo(136.4, within(0.1));
    assertThat(bad).isCloseTo(91.0, within(0.1));
  }

  @Test
  void theElectricalGateSaysThatTheLeadHolds() {
    MachineVerdict verdict =
        MachineAssessor.assess(
            machine(Optional.of(new ExtensionLead(50, 1.5))), WeldTask.plates(JointKind.TEE, 8));
    GateResult gate = verdict.gate("electrical");
    assertThat(gate.why()).contains("extension lead");
    assertThat(gate.wouldChange()).contains("mm2");
    assertThat(gate.figures()).extracting(Figure::name).contains("voltage lost in the lead");
  }

  @Test
  void wiresServeOnlyTheirProcess() {
    FillerAtHand solid = new FillerAtHand(FillerAtHand.Form.WIRE, 1.0, "G3Si1");
    FillerAtHand cored = new FillerAtHand(FillerAtHand.Form.WIRE, 0.9, "E71T-11");
    assertThat(solid.serves(WeldingProcess.MAG)).isTrue();
    assertThat(solid.serves(WeldingProcess.FCAW_S)).isFalse();
    assertThat(cored.serves(WeldingProcess.FCAW_S)).isTrue();
    assertThat(cored.serves(WeldingProcess.MMA)).isFalse();
  }

  private static Machine machine(Optional<ExtensionLead> lead) {
    return new Machine(
        "set",
        List.of(WeldingProcess.MAG),
        30,
        250,
        new PlateDuty(List.of(new DutyPoint(200, 60))),
        SOCKET,
        Conversion.CORRECTED,
        List.of(1.0),
        List.of(),
        ShieldingGas.ARGON_18_CO2,
        List.of(),
        lead,
        Panel.PLAIN);
  }
}
