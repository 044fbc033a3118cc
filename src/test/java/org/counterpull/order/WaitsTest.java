package org.counterpull.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.contact.JointForm;
import org.counterpull.cooling.Conductor;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.stock.Flat;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.Side;
import org.junit.jupiter.api.Test;

/** Waits against closed forms of conduction worked by hand, and the duty cycle's own arithmetic. */
class WaitsTest {
  private static final Conductor PLATE = new Conductor(0.045, 0.0039);
  private static final Conductor BAR = new Conductor(0.045, 0.004082);

  private static Part flat(double lengthMm, double widthMm, double thicknessMm) {
    return new Job()
        .part("flat", new Flat(widthMm, thicknessMm), lengthMm, 0, 0, 0)
        .weldment()
        .part("flat");
  }

  @Test
  void thin_plate_600_J_per_mm_on_6_mm_is_130_K_warm_after_184_s() {
    double wideMm = 20_000;
    Sheet sheet = Sheet.of(flat(wideMm, wideMm, 6));
    Sheet.Patch line = new Sheet.Patch(0, wideMm, wideMm / 2 - 0.5, wideMm / 2 + 0.5);
    double riseK = sheet.riseK(600 * wideMm, line, wideMm / 2, wideMm / 2, 184.0, PLATE, 12);
    // Rykalin's thin plate with loss, h 12 W/m2K a face: 130 K after 184.0 s; it falls by 0.49 K/s
    // there, so half a unit of the last digit of 184.0 s is 0.024 K.
    assertThat(riseK).isCloseTo(130, within(0.04));
  }

  @Test
  void bar_25_x_6_heated_in_the_middle_of_200_mm() {
    Sheet bar = new Sheet(200, 25, 6, 62 * 200, flat(200, 25, 6));
    Sheet.Patch middle = new Sheet.Patch(99.95, 100.05, 0, 25);
    // Carslaw and Jaeger, bar with insulated ends and loss, 30 kJ, 120 s: 298.3 K and 90.06 K.
    assertThat(bar.riseK(30_000, middle, 100, 12.5, 120, BAR, 20)).isCloseTo(298.3, within(0.05));
    assertThat(bar.riseK(30_000, middle, 0, 12.5, 120, BAR, 20)).isCloseTo(90.06, within(0.005));
  }

  @Test
  void images_and_waves_meet_where_one_takes_over_from_the_other() {
    for (double x : new double[] {0, 13, 50, 100}) {
      double images = Sheet.perMm(x, 20, 45, 100, 0.6 * 100 - 1e-9);
      double waves = Sheet.perMm(x, 20, 45, 100, 0.6 * 100);
      // The same function written in two ways; images beyond the second reach 1e-6 of it.
      assertThat(images).isCloseTo(waves, within(1e-6 * waves));
    }
  }

  @Test
  void after_a_long_time_a_sheet_is_a_lumped_body() {
    Sheet sheet = Sheet.of(flat(100, 60, 10));
    Sheet.Patch corner = new Sheet.Patch(0, 10, 0, 1);
    double volumeMm3 = 100 * 60 * 10;
    double surfaceMm2 = 2 * (100 * 60 + 100 * 10 + 60 * 10);
    double meanK = 60_000 / (volumeMm3 * BAR.heatCapacityJPerMm3K());
    double lossPerS = 20e-6 * surfaceMm2 / (volumeMm3 * BAR.heatCapacityJPerMm3K());
    double lumpedK = meanK * Math.exp(-lossPerS * 2000);
    // 60 kJ, mean rise 245.0 K, after 2000 s: m c / (h A) is the only time left.
    assertThat(sheet.riseK(60_000, corner, 100, 60, 2000, BAR, 20))
        .isCloseTo(lumpedK, within(1e-3 * lumpedK));
  }

  /** Two plates of 10 mm, so wide that their ends are out of reach, with one butt between them. */
  private static Job wideButt(int passes) {
    return new Job()
        .film(12)
        .metal(45, 500, 7800)
        .part("near", new Flat(20_000, 10), 20_000, 0, -10_000, 0)
        .part("far", new Flat(20_000, 10), 20_000, 0, 10_000, 0)
        .joint("butt", "near", "far", JointForm.BUTT)
        .run("butt", Side.TOP, new Vector3D(0, 0, 5), new Vector3D(20_000, 0, 5))
        .butt()
        .heat(1000)
        .interpass(150)
        .passes(passes)
        .add();
  }

  @Test
  void interpass_wait_after_1000_J_per_mm_on_10_mm_is_208_s() {
    Job job = wideButt(1);
    RunPlan run = job.plans().get(0).runs().get(0);
    HeatLedger ledger = HeatLedger.of(job.weldment(), job.plans());
    List<Welded> history = List.of(new Welded(run, run.passes().get(0), 0, 100));
    // Rykalin's thin plate with loss: 207.8 s from 1000 J/mm to 130 K, rounded up to whole seconds.
    assertThat(ledger.secondsBefore(run, history, 100)).isEqualTo(208);
    assertThat(ledger.secondsBefore(run, history, 400)).isZero();
    assertThat(ledger.secondsBefore(run, List.of(), 0)).isZero();
  }

  @Test
  void a_wait_between_passes_is_a_step_of_its_own_and_says_what_ends_it() {
    WorkOrder order = wideButt(2).order();
    Timed wait = find(order, "wait:butt/top:pass-2");
    Timed before = find(order, "weld:butt/top");
    Timed after = find(order, "weld:butt/top:pass-2");
    // 207.8 s as above, less 15 s of cleaning that has passed already; whole seconds upwards.
    assertThat(wait.endS() - wait.startS()).isEqualTo(193);
    assertThat(wait.startS()).isEqualTo(before.endS());
    assertThat(after.startS()).isEqualTo(wait.endS());
    assertThat(wait.operation().what())
        .isEqualTo("Wait 3 min 13 s before butt/top: " + WaitWords.INTERPASS);
    assertThat(wait.operation().why().get(0))
        .contains("below 150 C right beside the seam, by temperature stick or thermometer");
  }

  private static Timed find(WorkOrder order, String id) {
    return order.operations().stream()
        .filter(o -> o.operation().id().equals(id))
        .findFirst()
        .orElseThrow(() -> new AssertionError(order.operations().toString()));
  }

  @Test
  void duty_window_lets_two_arcs_of_60_s_at_20_percent_into_10_minutes() {
    DutyWindow window = new DutyWindow();
    window.burn(0, 75, 60, 20);
    assertThat(window.waitS(75, 75, 60, 20)).isZero();
    window.burn(75, 150, 60, 20);
    // Each 60 s arc uses up 300 s. The third fits once the first has left the 600 s that end with
    // it: its window begins at 75 s when it starts at 600 s, 450 s after 150 s.
    assertThat(window.waitS(150, 75, 60, 20)).isCloseTo(450, within(0.001));
  }

  @Test
  void a_pass_longer_than_one_arc_from_cold_is_stopped_on_the_way() {
    // 20 % of 600 s is 120 s; 300 s take three stretches, so two stops of 480 s.
    assertThat(DutyWindow.stops(300, 20)).isEqualTo(2);
    assertThat(DutyWindow.stopS(20)).isEqualTo(480);
    assertThat(DutyWindow.stops(120, 20)).isZero();
  }

  @Test
  void a_weak_machine_gives_duty_waits() {
    WorkOrder order = (WorkOrder) Jobs.frame().result((machine, currentA) -> 1.5);
    // 12 s at 1.5 % use up 800 s: a run is longer than one arc from cold, and the next must wait.
    Timed wait =
        order.operations().stream()
            .filter(o -> o.operation().kind() == Operation.Kind.WAIT)
            .findFirst()
            .orElseThrow();
    assertThat(wait.operation().what()).endsWith(WaitWords.DUTY);
    assertThat(find(order, "weld:bl/top").operation().cautions())
        .anyMatch(caution -> caution.contains("longer than shop mag may burn: stop 1 x"));
  }

  @Test
  void work_goes_on_elsewhere_rather_than_waiting() {
    Job job = Jobs.hingeBar();
    Job cool = new Job();
    for (int i = 0; i < 2; i++) {
      String name = i == 0 ? "a-hot" : "b-cold";
      cool.part("bar-" + i, new Flat(50, 10), 300, i * 1000, 0, 0)
          .part("tab-" + i, new Flat(50, 10), 60, i * 1000 + 100, 0, 5)
          .joint(name, "tab-" + i, "bar-" + i, JointForm.TEE);
    }
    double x = 120;
    cool.run("a-hot", Side.LEFT, v(x, -25), v(x, 25)).interpass(60).add();
    cool.run("a-hot", Side.RIGHT, v(x + 10, -25), v(x + 10, 25)).interpass(60).add();
    cool.run("b-cold", Side.LEFT, v(1000 + x, -25), v(1000 + x, 25)).interpass(60).add();
    List<String> runs = cool.order().runs().stream().map(RunPlan::name).toList();
    assertThat(runs.get(0).split("/")[0]).isNotEqualTo(runs.get(1).split("/")[0]);
    assertThat(job.order().runs()).hasSize(6);
  }

  private static Vector3D v(double x, double y) {
    return new Vector3D(x, y, 5);
  }

  @Test
  void cooling_before_measuring_ends_within_10_K_of_the_room() {
    Job job = Jobs.hingeBar();
    WorkOrder order = job.order();
    Timed cool = find(order, "cool");
    HeatLedger ledger = HeatLedger.of(job.weldment(), job.plans());
    List<Welded> history =
        order.operations().stream()
            .filter(o -> o.operation().kind() == Operation.Kind.WELD)
            .map(o -> welded(order, o))
            .toList();
    assertThat(ledger.secondsUntilAllBelow(30, history, cool.endS())).isZero();
    assertThat(ledger.secondsUntilAllBelow(30, history, cool.startS())).isPositive();
    assertThat(cool.operation().why().get(0)).startsWith("Cooling wait");
  }

  private static Welded welded(WorkOrder order, Timed weld) {
    RunPlan run =
        order.runs().stream()
            .filter(r -> r.name().equals(weld.operation().run().orElseThrow()))
            .findFirst()
            .orElseThrow();
    return new Welded(run, run.passes().get(0), weld.startS(), weld.endS());
  }
}
