package org.counterpull.order;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.contact.JointForm;
import org.counterpull.stock.Flat;
import org.counterpull.weldment.Feature;
import org.counterpull.weldment.Side;
import org.junit.jupiter.api.Test;

/** Rules that go in a circle are told in words, with what would open the circle. */
class OrderCycleTest {
  @Test
  void a_pin_that_must_go_in_before_and_after_the_same_plate() {
    OrderResult result =
        PracticeRulesTest.tee()
            .feature("nut", Feature.Kind.CAPTIVE_PIECE, List.of("base"), false)
            .before("plate", "nut")
            .result();
    assertThat(result).isInstanceOf(OrderCycle.class);
    OrderCycle cycle = (OrderCycle) result;
    assertThat(cycle.members()).extracting(Precedence::rule).containsExactly("before", "R04b");
    assertThat(cycle.inWords())
        .containsExactly(
            "fit plate before insert nut (before): The test says so.",
            "insert nut before fit plate (R04b): The captive piece can't go in any more once this"
                + " part lies over it.");
    assertThat(cycle.remedies())
        .containsExactly(
            "Make the piece removable, or split the part that closes over it.",
            "Leave out the file's rule \"fit plate before insert nut\".");
  }

  @Test
  void two_seams_that_hide_each_other() {
    Job job = new Job().part("base", new Flat(100, 10), 300, 0, 0, 0);
    for (String name : List.of("one", "two")) {
      double x = name.equals("one") ? 100 : 130;
      job.part(name, new Flat(60, 8), 60, x, 0, 5)
          .joint(name, name, "base", JointForm.TEE)
          .run(name, Side.FRONT, new Vector3D(x, -4, 5), new Vector3D(x + 60, -4, 5))
          .hiddenBy(name.equals("one") ? "two" : "one")
          .add();
    }
    OrderCycle cycle = (OrderCycle) job.result();
    assertThat(cycle.members()).extracting(Precedence::rule).contains("R07", "P06", "P07");
    assertClosed(cycle);
    assertThat(cycle.remedies()).anyMatch(remedy -> remedy.contains("from its other side"));
  }

  static void assertClosed(OrderCycle cycle) {
    List<Precedence> members = cycle.members();
    assertThat(members).hasSizeGreaterThan(1).allMatch(Precedence::hard);
    for (int i = 0; i < members.size(); i++) {
      assertThat(members.get(i).later()).isEqualTo(members.get((i + 1) % members.size()).earlier());
    }
  }
}
