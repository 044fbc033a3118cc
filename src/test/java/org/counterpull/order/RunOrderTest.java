package org.counterpull.order;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.contact.JointForm;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.space.Face;
import org.counterpull.stock.Flat;
import org.counterpull.weldment.Side;
import org.counterpull.weldment.WrittenOrder;
import org.junit.jupiter.api.Test;

/** The order of runs by published rules: AWS D1.1:2015, 5.19 and 5.20, and practice. */
class RunOrderTest {
  private static List<String> runs(WorkOrder order) {
    return order.runs().stream().map(RunPlan::name).toList();
  }

  private static long count(WorkOrder order, Operation.Kind kind) {
    return order.operations().stream().filter(o -> o.operation().kind() == kind).count();
  }

  @Test
  void R23_the_middle_goes_before_the_free_ends() {
    List<String> runs = runs(Jobs.hingeBar().order());
    assertThat(runs.subList(0, 2)).containsExactlyInAnyOrder("tab/left", "tab/right");
  }

  @Test
  void R25_opposite_ends_and_sides_take_turns() {
    List<String> runs = runs(Jobs.hingeBar().order()).subList(2, 6);
    assertThat(runs).hasSize(4);
    for (int i = 1; i < 4; i++) {
      String joint = runs.get(i).split("/")[0];
      assertThat(joint).isNotEqualTo(runs.get(i - 1).split("/")[0]);
    }
    // Both first sides of the hinges are in before either second side.
    assertThat(runs.get(0).split("/")[0]).isNotEqualTo(runs.get(1).split("/")[0]);
    assertThat(runs.get(0).split("/")[1]).isNotEqualTo(runs.get(2).split("/")[1]);
  }

  @Test
  void R25_the_corners_of_a_frame_go_crosswise() {
    List<String> runs = runs(Jobs.frame().order());
    // bl is the first by name among equals; fr lies across the middle from it.
    assertThat(runs.subList(0, 2)).containsExactly("bl/top", "fr/top");
    assertThat(runs.subList(4, 6)).containsExactly("bl/bottom", "fr/bottom");
  }

  @Test
  void R31_what_is_welded_in_one_lay_stays_together() {
    WorkOrder order = Jobs.frame().order();
    assertThat(runs(order).subList(0, 4)).allMatch(run -> run.endsWith("/top"));
    assertThat(count(order, Operation.Kind.TURN_OVER)).isEqualTo(1);
    assertThat(order.orderReasons()).anyMatch(reason -> reason.contains("turned 1 x"));
  }

  @Test
  void R31_the_weldment_is_moved_once_and_tacked_before() {
    WorkOrder order = Jobs.bracket().order();
    assertThat(count(order, Operation.Kind.MOVE)).isEqualTo(1);
    assertThat(runs(order).subList(0, 2)).allMatch(run -> run.startsWith("rib/"));
    List<Timed> operations = order.operations();
    int move = index(operations, Operation.Kind.MOVE);
    assertThat(operations.subList(0, move))
        .allMatch(o -> o.operation().place().equals("here"))
        .anyMatch(o -> o.operation().id().equals("tack:ear-1"));
    assertThat(operations.subList(move, operations.size()))
        .allMatch(o -> o.operation().place().equals("next door"));
  }

  private static int index(List<Timed> operations, Operation.Kind kind) {
    for (int i = 0; i < operations.size(); i++) {
      if (operations.get(i).operation().kind() == kind) {
        return i;
      }
    }
    throw new AssertionError("no " + kind);
  }

  @Test
  void R24_butts_go_before_fillets_even_from_the_ends() {
    Job job = PracticeRulesTest.tee();
    job.part("more", new Flat(80, 12), 300, 300, 0, 0)
        .joint("splice", "more", "base", JointForm.BUTT)
        .run("splice", Side.TOP, v(300, -40, 6), v(300, 40, 6))
        .butt()
        .add();
    WorkOrder order = job.order();
    assertThat(runs(order).get(0)).isEqualTo("splice/top");
    assertThat(order.orderReasons().get(0)).startsWith("splice/top: butts before fillets");
  }

  private static Vector3D v(double x, double y, double z) {
    return new Vector3D(x, y, z);
  }

  @Test
  void a_written_order_is_obeyed_with_its_pauses_and_ends() {
    WorkOrder order =
        Jobs.hingeBar()
            .order(
                written("left/top", Optional.of(Face.RIGHT), Optional.empty()),
                written("right/top", Optional.empty(), Optional.of(90.0)),
                written("left/bottom", Optional.of(Face.LEFT), Optional.empty()))
            .order();
    assertThat(runs(order).subList(0, 3)).containsExactly("left/top", "right/top", "left/bottom");
    assertThat(order.orderReasons().get(0)).contains("the file's written order");
    Timed first = weld(order, "left/top");
    Timed second = weld(order, "right/top");
    assertThat(first.operation().what()).endsWith("from the right");
    // The file asks for 90 s from arc to arc; getting ready for the run takes 30 s of them.
    assertThat(second.startS() - first.endS()).isEqualTo(60);
    assertThat(order.precedence()).anyMatch(p -> p.rule().equals(WaitWords.WRITTEN));
  }

  private static WrittenOrder.Step written(
      String run, Optional<Face> from, Optional<Double> pauseS) {
    return new WrittenOrder.Step(run, from, Optional.empty(), pauseS);
  }

  private static Timed weld(WorkOrder order, String run) {
    return order.operations().stream()
        .filter(o -> o.operation().id().equals("weld:" + run))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void a_written_start_counts_from_the_first_arc() {
    WorkOrder order =
        Jobs.hingeBar()
            .order(
                new WrittenOrder.Step(
                    "left/top", Optional.empty(), Optional.of(0.0), Optional.empty()),
                new WrittenOrder.Step(
                    "right/top", Optional.empty(), Optional.of(400.0), Optional.empty()))
            .order();
    double firstArcS = weld(order, "left/top").startS() + BenchTimes.seconds(StepTag.WELD);
    double secondArcS = weld(order, "right/top").startS() + BenchTimes.seconds(StepTag.WELD);
    // 400 s in the file, arc to arc.
    assertThat(secondArcS - firstArcS).isEqualTo(400);
  }

  @Test
  void runs_go_outwards_from_the_middle() {
    WorkOrder order = Jobs.hingeBar().order();
    assertThat(weld(order, "right/top").operation().what()).endsWith("from the left");
    assertThat(weld(order, "left/top").operation().what()).endsWith("from the right");
  }

  @Test
  void every_run_is_given_a_reason() {
    WorkOrder order = Jobs.hingeBar().order();
    String reasons = String.join("\n", order.orderReasons());
    assertThat(runs(order)).allMatch(reasons::contains);
  }

  @Test
  void the_same_weldment_gives_the_same_order() {
    assertThat(Jobs.hingeBar().order().toString()).isEqualTo(Jobs.hingeBar().order().toString());
    assertThat(Jobs.bracket().order().toString()).isEqualTo(Jobs.bracket().order().toString());
  }
}
