package org.counterpull.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.contact.JointForm;
import org.counterpull.feeding.DepositionEfficiency;
import org.counterpull.groove.WeldMetalMass;
import org.counterpull.order.Job;
import org.counterpull.order.WorkOrder;
import org.counterpull.plan.Plan;
import org.counterpull.stock.Flat;
import org.counterpull.weldment.Prices;
import org.counterpull.weldment.Side;
import org.junit.jupiter.api.Test;

/** One metre of fillet with legs of 6 mm by wire, worked by hand; and consumption of small jobs. */
class OneMetreFilletCostTest {
  /** 10 % over the triangle of 6 x 6 / 2, legs grown by 10 %: (6.6)^2 / 2 mm2. */
  private static final double AREA_MM2 = 6.6 * 6.6 / 2;

  private static final double KG = WeldMetalMass.steelKgPerM(AREA_MM2);

  /** The printed 5.130 min, which the printed figures after it are worked from. */
  private static final double ARC_S = 5.130 * 60;

  private static final double LABOUR_S = ARC_S / 0.30;

  @Test
  void weld_metal_and_arc_time() {
    // 0.1710 kg and, at 2.0 kg/h, 5.130 min; labour at an operating factor of 0.30: 17.10 min.
    assertThat(KG).isCloseTo(0.1710, within(0.00005));
    assertThat(KG / 2.0 * 60).isCloseTo(5.130, within(0.005));
    assertThat(LABOUR_S / 60).isCloseTo(17.10, within(0.005));
  }

  @Test
  void wire_bought() {
    double ratio = DepositionEfficiency.GMAW_ARGON_CO2.ratio();
    // 0.1781 kg of wire at 96 %.
    assertThat(FillerBought.of(KG, ratio).value()).isCloseTo(0.1781, within(0.00005));
  }

  @Test
  void gas() {
    // 14 l/min over 5.130 min: 71.82 l, without gas before and after.
    assertThat(GasUsed.of(14, ARC_S, 1, 0).value()).isCloseTo(71.82, within(0.005));
    assertThat(GasUsed.of(30, 60, 1, 0).warnings()).hasSize(1);
    assertThat(GasUsed.of(0, 60, 1, 0).inRange()).isTrue();
  }

  @Test
  void energy() {
    // 180 A, 23 V, efficiency 0.85: 0.4164 kWh; 50 W over the other 11.97 min: 0.0100 kWh.
    assertThat(EnergyUsed.arcKWh(180, 23, ARC_S, 0.85)).isCloseTo(0.4164, within(0.00005));
    assertThat(EnergyUsed.idleKWh(LABOUR_S - ARC_S)).isCloseTo(0.0100, within(0.00005));
  }

  @Test
  void cost() {
    double labour = Price.of(Price.LABOUR, LABOUR_S / 3600, 40, "EUR").value();
    double wire = FillerBought.of(KG, 0.96).value() * 3;
    double gas = GasUsed.of(14, ARC_S, 1, 0).value() / 1000 * 8;
    double energy = EnergyUsed.of(180, 23, ARC_S, 0.85, LABOUR_S - ARC_S).value() * 0.2;
    // 11.40 + 0.534 + 0.575 + 0.0853 = 12.59, labour 90.5 % of it.
    assertThat(labour).isCloseTo(11.40, within(0.005));
    assertThat(wire).isCloseTo(0.534, within(0.0005));
    assertThat(gas).isCloseTo(0.575, within(0.0005));
    assertThat(energy).isCloseTo(0.0853, within(0.00005));
    double total = labour + wire + gas + energy;
    assertThat(total).isCloseTo(12.59, within(0.005));
    assertThat(100 * labour / total).isCloseTo(90.5, within(0.05));
  }

  @Test
  void sticks_of_3_2_x_350_lay_18_94_g_each() {
    double oneKgMm3 = 1e6 / 7.85;
    // 52.80 electrodes for 1 kg of weld metal: 53 to buy.
    assertThat(Deposit.pieces(WeldingProcess.MMA, 3.2, oneKgMm3)).isEqualTo(53);
    assertThat(Deposit.pieces(WeldingProcess.MAG, 0.8, oneKgMm3)).isZero();
  }

  private static Job tee(WeldingProcess process) {
    return new Job()
        .part("base", new Flat(80, 10), 1000, 0, 0, 0)
        .part("rib", new Flat(80, 10), 1000, 0, 0, 45)
        .joint("tee", "rib", "base", JointForm.TEE)
        .run("tee", Side.FRONT, new Vector3D(0, -5, 5), new Vector3D(1000, -5, 5))
        .process(process)
        .arc(300)
        .interpass(400)
        .add();
  }

  @Test
  void a_job_adds_up() {
    Job job = tee(WeldingProcess.MAG).prices(new Prices("EUR", 40, 3, 6, 8, 0.2));
    WorkOrder order = job.order();
    Plan.Consumables used = Consumption.of(job.weldment(), List.of(), order);
    // 18 mm2 x 1000 mm of steel: 0.1413 kg; two flats of 80 x 10 x 1000: 2 x 6.28 kg.
    assertThat(used.weldMetalKg().value()).isCloseTo(0.1413, within(0.00005));
    assertThat(used.massKg().value()).isCloseTo(12.56 + 0.1413, within(0.0001));
    // 14 l/min over 300 s and one start of 1.5 s: 70.35 l.
    assertThat(used.gasLitres().value()).isCloseTo(70.35, within(0.005));
    assertThat(used.fillers()).hasSize(1);
    assertThat(used.fillers().get(0).pieces()).isZero();
    assertThat(used.arcS()).isEqualTo(300);
    assertThat(used.elapsedS()).isEqualTo(order.elapsedS());
    Plan.Cost cost = Costing.of(order, used, job.weldment().prices().orElseThrow());
    double parts =
        cost.labour().value() + cost.filler().value() + cost.gas().value() + cost.energy().value();
    assertThat(cost.total().value()).isCloseTo(parts, within(1e-9));
    assertThat(cost.total().unit()).isEqualTo("EUR");
    // 0.1413 kg / 0.96 at 3 for a kg: 0.4416.
    assertThat(cost.filler().value()).isCloseTo(0.4416, within(0.00005));
  }

  @Test
  void sticks_need_no_gas_and_are_counted() {
    Job job = tee(WeldingProcess.MMA);
    Plan.Consumables used = Consumption.of(job.weldment(), List.of(), job.order());
    assertThat(used.gasLitres().value()).isZero();
    // Filler of the test's runs is 0.8 mm: 18000 mm3 over pi/4 0.8^2 300 mm3 = 119.4.
    assertThat(used.fillers().get(0).pieces()).isEqualTo(120);
  }
}
