package org.counterpull.order;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.contact.JointForm;
import org.counterpull.stock.Flat;
import org.counterpull.stock.RectangularTube;
import org.counterpull.weldment.Feature;
import org.counterpull.weldment.Fixture;
import org.counterpull.weldment.Side;
import org.junit.jupiter.api.Test;

/** Rules of practice: each with a weldment that it applies to, and its effect on the order. */
class PracticeRulesTest {
  private static int place(WorkOrder order, String id) {
    return order.operations().stream()
        .filter(o -> o.operation().id().equals(id))
        .mapToInt(Timed::number)
        .findFirst()
        .orElseThrow(() -> new AssertionError(id + " is not among " + ids(order)));
  }

  private static List<String> ids(WorkOrder order) {
    return order.operations().stream().map(o -> o.operation().id()).toList();
  }

  private static void inOrder(WorkOrder order, String... ids) {
    for (int i = 1; i < ids.length; i++) {
      assertThat(place(order, ids[i - 1]))
          .as("%s before %s", ids[i - 1], ids[i])
          .isLessThan(place(order, ids[i]));
    }
  }

  private static Optional<Precedence> rule(WorkOrder order, String id) {
    return order.precedence().stream().filter(p -> p.rule().equals(id)).findFirst();
  }

  /** Two flats in a tee, one run on each side. */
  static Job tee() {
    return new Job()
        .part("base", new Flat(80, 12), 300, 0, 0, 0)
        .part("plate", new Flat(60, 10), 100, v(100, 0, 6), Vector3D.PLUS_K, Vector3D.PLUS_J)
        .joint("tee", "plate", "base", JointForm.TEE)
        .run("tee", Side.FRONT, v(70, -5, 6), v(130, -5, 6))
        .add()
        .run("tee", Side.BACK, v(70, 5, 6), v(130, 5, 6))
        .add();
  }

  static Vector3D v(double x, double y, double z) {
    return new Vector3D(x, y, z);
  }

  @Test
  void the_job_goes_from_cutting_to_paint() {
    inOrder(
        Jobs.hingeBar().order(),
        "cut:bar",
        "clean:left",
        "fit:hinge-left",
        "through-rod:rod",
        "tack:left",
        "check-datum",
        "weld:left/top",
        "fire-watch",
        "cool-to-hand-warm",
        "release:clamps",
        "cool",
        "remove-rod:rod",
        "measure-cold",
        "straighten",
        "ream:bores",
        "paint");
  }

  @Test
  void R18_all_tacks_come_before_the_first_run() {
    WorkOrder order = Jobs.hingeBar().order();
    int lastTack =
        order.operations().stream()
            .filter(o -> o.operation().kind() == Operation.Kind.TACK)
            .mapToInt(Timed::number)
            .max()
            .orElseThrow();
    int firstRun =
        order.operations().stream()
            .filter(o -> o.operation().kind() == Operation.Kind.WELD)
            .mapToInt(Timed::number)
            .min()
            .orElseThrow();
    assertThat(lastTack).isLessThan(firstRun);
    assertThat(rule(order, "R18b")).isPresent();
  }

  @Test
  void R18_says_nothing_of_a_single_joint() {
    assertThat(rule(tee().order(), "R18")).isEmpty();
  }

  @Test
  void R01_plain_holes_are_drilled_before_and_fitted_ones_finished_after() {
    WorkOrder order =
        tee()
            .feature("clearance", Feature.Kind.HOLE, List.of("plate"), false, 13)
            .feature("eye", Feature.Kind.HOLE, List.of("plate"), false, 25.5, 25)
            .order();
    inOrder(order, "drill:clearance", "fit:plate");
    inOrder(order, "drill:eye", "fit:plate", "weld:tee/front", "cool", "ream:eye");
    assertThat(ids(order)).doesNotContain("ream:clearance");
    // 0.5 mm is left for the reamer: 25.5 - 0.5.
    assertThat(order.operations().get(place(order, "drill:eye") - 1).operation().what())
        .isEqualTo("Drill eye undersize 25 mm");
  }

  @Test
  void R04_a_captive_piece_goes_in_before_the_part_that_closes_over_it() {
    WorkOrder order =
        tee().feature("nut", Feature.Kind.CAPTIVE_PIECE, List.of("base"), false).order();
    inOrder(order, "fit:base", "insert:nut", "fit:plate", "tack:tee", "weld:tee/back");
    assertThat(rule(order, "R04b")).map(Precedence::hard).contains(true);
  }

  @Test
  void R06_a_closed_tube_is_vented_first_and_an_open_one_is_not() {
    WorkOrder closed = box(true).order();
    inOrder(closed, "vent:box", "fit:box", "weld:cap-left/left");
    assertThat(rule(closed, "R06")).isPresent();
    assertThat(ids(box(false).order())).noneMatch(id -> id.startsWith("vent"));
    Job holed = box(true).feature("drain", Feature.Kind.HOLE, List.of("box"), false, 10);
    assertThat(ids(holed.order())).noneMatch(id -> id.startsWith("vent"));
  }

  /** A tube with a cap at each end; the right cap is welded all round or on one side only. */
  private static Job box(boolean allRound) {
    Job job =
        new Job()
            .part("box", new RectangularTube(40, 40, 4, 0), 200, 0, 0, 0)
            .part("left", new Flat(50, 5), 50, v(-2.5, 0, -25), Vector3D.PLUS_K, Vector3D.PLUS_I)
            .part("right", new Flat(50, 5), 50, v(202.5, 0, -25), Vector3D.PLUS_K, Vector3D.PLUS_I)
            .joint("cap-left", "left", "box", JointForm.CORNER)
            .joint("cap-right", "right", "box", JointForm.CORNER);
    Side[] sides = {Side.LEFT, Side.TOP, Side.BACK, Side.BOTTOM};
    Vector3D[] corners = {v(0, -20, -20), v(0, -20, 20), v(0, 20, 20), v(0, 20, -20)};
    for (int i = 0; i < 4; i++) {
      Vector3D from = corners[i];
      Vector3D to = corners[(i + 1) % 4];
      job.run("cap-left", sides[i], from, to).walls(4).add();
      if (allRound || i == 0) {
        Vector3D along = v(200, 0, 0);
        job.run("cap-right", sides[i], from.add(along), to.add(along)).walls(4).add();
      }
    }
    return job;
  }

  @Test
  void R07_a_seam_that_a_later_part_hides_is_welded_before_that_part_is_fitted() {
    WorkOrder order =
        tee()
            .part("cover", new Flat(60, 5), 100, 60, 40, 20)
            .joint("cover", "cover", "base", JointForm.TEE)
            .run("cover", Side.TOP, v(60, 40, 6), v(160, 40, 6))
            .add()
            .run("tee", Side.INSIDE, v(80, 5, 6), v(120, 5, 6))
            .hiddenBy("cover")
            .add()
            .order();
    inOrder(order, "tack:tee", "weld:tee/inside", "fit:cover", "tack:cover", "check-datum");
    inOrder(order, "check-datum", "weld:tee/front");
    assertThat(order.orderReasons())
        .anyMatch(reason -> reason.startsWith("tee/inside is welded before all joints are tacked"));
  }

  @Test
  void R08_removable_seals_come_out_before_heat_and_new_ones_go_in_cold() {
    WorkOrder order = tee().feature("wiper", Feature.Kind.SEAL, List.of("plate"), true).order();
    inOrder(order, "remove-sensitive:wiper", "tack:tee", "weld:tee/front", "cool", "refit:wiper");
    inOrder(order, "refit:wiper", "paint");
  }

  @Test
  void R08_what_can_not_be_taken_out_is_said_at_the_run() {
    WorkOrder order = tee().feature("bush", Feature.Kind.SEAL, List.of("plate"), false).order();
    assertThat(ids(order)).noneMatch(id -> id.startsWith("remove-sensitive"));
    assertThat(order.operations().get(place(order, "weld:tee/front") - 1).operation().why())
        .anyMatch(why -> why.contains("below its limit"));
  }

  @Test
  void R14_a_bearing_on_the_part_asks_for_the_return_clamp_beside_the_run() {
    WorkOrder order = tee().feature("race", Feature.Kind.BEARING, List.of("plate"), true).order();
    assertThat(order.operations().get(place(order, "weld:tee/back") - 1).operation().why())
        .anyMatch(why -> why.contains("return clamp"));
  }

  @Test
  void R15_threads_and_machined_faces_are_masked_from_the_first_arc_to_the_last() {
    WorkOrder order =
        tee()
            .feature("m12", Feature.Kind.THREAD, List.of("plate"), false, 12)
            .feature("seat", Feature.Kind.MACHINED_FACE, List.of("base"), false)
            .order();
    inOrder(order, "drill:m12", "mask:m12", "tack:tee", "weld:tee/back", "unmask:m12");
    inOrder(order, "unmask:m12", "chase:m12", "paint");
    inOrder(order, "mask:seat", "tack:tee", "weld:tee/front", "unmask:seat");
  }

  @Test
  void R16_zinc_is_stripped_100_mm_before_the_first_tack() {
    WorkOrder order =
        tee()
            .feature(
                "skin", Feature.Kind.COATING, List.of("base"), false, Optional.of("hot-dip zinc"))
            .order();
    inOrder(order, "strip-coating:skin", "clean:tee", "tack:tee");
    assertThat(order.operations().get(place(order, "strip-coating:skin") - 1).operation().what())
        .isEqualTo("Strip hot-dip zinc 100 mm each side of every weld line");
  }

  @Test
  void R21_all_barrels_are_on_the_rod_before_a_tack_and_it_comes_out_cold() {
    WorkOrder order = Jobs.hingeBar().order();
    inOrder(order, "fit:hinge-right", "through-rod:rod", "tack:left", "cool", "remove-rod:rod");
  }

  @Test
  void R22_the_end_hinges_of_a_row_are_tacked_before_the_inner_one() {
    Job job = new Job().part("bar", new Flat(50, 12), 900, 0, 0, 0);
    String[] names = {"a-middle", "b-left", "c-right"};
    double[] places = {450, 50, 850};
    for (int i = 0; i < 3; i++) {
      job.part(names[i], new Flat(30, 10), 60, places[i], -40, 0)
          .joint(names[i], names[i], "bar", JointForm.TEE)
          .run(names[i], Side.TOP, v(places[i], -25, 6), v(places[i] + 60, -25, 6))
          .add();
    }
    WorkOrder order = job.fixture("rod", Fixture.Kind.THROUGH_ROD, names).order();
    inOrder(order, "tack:b-left", "tack:a-middle");
    inOrder(order, "tack:c-right", "tack:a-middle");
    assertThat(rule(order, "R22")).map(Precedence::hard).contains(false);
  }

  @Test
  void R28_R29_fixtures_come_off_hand_warm_and_measuring_waits_for_room_temperature() {
    WorkOrder order = Jobs.hingeBar().order();
    inOrder(order, "cool-to-hand-warm", "release:clamps", "cool", "measure-cold");
    assertThat(ids(tee().order())).doesNotContain("cool-to-hand-warm");
  }

  @Test
  void R33_preheat_comes_before_tacks_and_again_before_a_cold_run() {
    WorkOrder order = preheated().order();
    inOrder(order, "preheat-for-tacks:tee", "tack:tee");
    assertThat(ids(order)).contains("preheat:tee/front");
    assertThat(ids(tee().order())).noneMatch(id -> id.startsWith("preheat"));
  }

  private static Job preheated() {
    return new Job()
        .part("base", new Flat(80, 30), 300, 0, 0, 0)
        .part("plate", new Flat(60, 30), 100, v(100, 0, 15), Vector3D.PLUS_K, Vector3D.PLUS_J)
        .joint("tee", "plate", "base", JointForm.TEE)
        .preheat("tee", 120)
        .run("tee", Side.FRONT, v(70, -15, 15), v(130, -15, 15))
        .walls(30)
        .add();
  }

  @Test
  void R34_several_passes_are_cleaned_between() {
    WorkOrder order = Jobs.bracket().order();
    assertThat(order.operations().get(place(order, "weld:ear-1/left") - 1).operation().why())
        .anyMatch(why -> why.startsWith("Clean slag"));
    assertThat(order.operations().get(place(order, "weld:rib/front") - 1).operation().why())
        .noneMatch(why -> why.startsWith("Clean slag"));
  }

  @Test
  void R36_a_grease_fitting_is_tapped_before_and_its_nipple_goes_in_after_paint() {
    WorkOrder order =
        tee().feature("nipple", Feature.Kind.GREASE_FITTING, List.of("plate"), false, 6).order();
    inOrder(order, "drill:nipple", "mask:nipple", "tack:tee", "unmask:nipple", "chase:nipple");
    inOrder(order, "chase:nipple", "paint", "fit-nipple:nipple");
  }

  @Test
  void R44_the_fire_watch_starts_at_the_last_arc_and_lasts_an_hour() {
    WorkOrder order = Jobs.hingeBar().order();
    Timed watch = order.operations().get(place(order, "fire-watch") - 1);
    Timed last = order.operations().get(place(order, "fire-watch") - 2);
    assertThat(last.operation().kind()).isEqualTo(Operation.Kind.WELD);
    assertThat(watch.startS()).isEqualTo(last.endS());
    // 60 min of 60 s.
    assertThat(watch.endS() - watch.startS()).isEqualTo(3600);
  }

  @Test
  void a_rule_of_the_file_itself_holds() {
    WorkOrder order = Jobs.hingeBar().before("left", "tab/left").order();
    inOrder(order, "weld:left/top", "weld:tab/left");
    inOrder(order, "weld:left/bottom", "weld:tab/left");
    assertThat(rule(order, "before")).map(Precedence::reason).contains("The test says so.");
  }

  @Test
  void every_rule_has_a_reason_and_a_source() {
    assertThat(OrderRules.all()).hasSizeGreaterThan(20);
    assertThat(OrderRules.all())
        .allSatisfy(
            rule -> {
              assertThat(rule.reason()).endsWith(".");
              assertThat(rule.source()).isNotBlank();
              assertThat(rule.when()).isNotBlank();
            });
    assertThat(OrderRules.all().stream().map(OrderRule::id)).doesNotHaveDuplicates();
  }
}
