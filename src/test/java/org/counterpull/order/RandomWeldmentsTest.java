package org.counterpull.order;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.contact.JointForm;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.stock.Flat;
import org.counterpull.stock.RoundTube;
import org.counterpull.weldment.Feature;
import org.counterpull.weldment.Fixture;
import org.counterpull.weldment.Side;
import org.junit.jupiter.api.Test;

/** What must hold for any weldment, on 200 drawn by seed. */
class RandomWeldmentsTest {
  private static final int HOW_MANY = 200;

  @Test
  void every_hard_rule_holds_or_its_circle_is_told() {
    int orders = 0;
    for (int seed = 0; seed < HOW_MANY; seed++) {
      Job job = draw(new SplittableRandom(seed));
      OrderResult result = job.result((machine, currentA) -> 30);
      if (result instanceof WorkOrder order) {
        orders++;
        assertHolds(seed, job, order);
        if (seed % 10 == 0) {
          assertThat(job.result((machine, currentA) -> 30)).isEqualTo(order);
        }
      } else {
        OrderCycleTest.assertClosed((OrderCycle) result);
      }
    }
    // Drawn at random, most weldments can be built.
    assertThat(orders).isGreaterThan(HOW_MANY / 2).isLessThan(HOW_MANY);
  }

  private static void assertHolds(int seed, Job job, WorkOrder order) {
    Map<String, Timed> byId = new HashMap<>();
    double lastStartS = 0;
    for (Timed timed : order.operations()) {
      assertThat(byId.put(timed.operation().id(), timed)).as("twice, seed %d", seed).isNull();
      assertThat(timed.number()).isEqualTo(byId.size());
      assertThat(timed.endS()).isGreaterThanOrEqualTo(timed.startS());
      assertThat(timed.startS()).isGreaterThanOrEqualTo(lastStartS);
      lastStartS = timed.startS();
    }
    for (Precedence rule : order.precedence()) {
      if (rule.hard()) {
        Timed earlier = byId.get(rule.earlier());
        Timed later = byId.get(rule.later());
        assertThat(earlier.number()).as("%s, seed %d", rule, seed).isLessThan(later.number());
        assertThat(earlier.endS()).as("%s, seed %d", rule, seed).isLessThan(later.startS() + 1e-6);
      }
    }
    assertThat(order.runs().stream().map(RunPlan::name))
        .containsExactlyInAnyOrderElementsOf(
            job.plans().stream().flatMap(p -> p.runs().stream()).map(RunPlan::name).toList());
  }

  private static Job draw(SplittableRandom random) {
    int parts = random.nextInt(2, 9);
    Job job = new Job();
    for (int i = 0; i < parts; i++) {
      double x = random.nextInt(0, 1000);
      if (random.nextInt(4) == 0) {
        job.part("p" + i, new RoundTube(40, 5), 80, x, random.nextInt(0, 500), 0);
      } else {
        job.part("p" + i, new Flat(60, 10), random.nextInt(60, 900), x, random.nextInt(0, 500), 0);
      }
    }
    for (int i = 1; i < parts; i++) {
      joint(job, random, "j" + i, "p" + i, "p" + random.nextInt(i), parts);
    }
    for (int i = 0; i < 6; i++) {
      Feature.Kind kind = Feature.Kind.values()[random.nextInt(Feature.Kind.values().length)];
      String on = "p" + random.nextInt(parts);
      job.feature("f" + i, kind, List.of(on), random.nextBoolean(), 20, 19.5);
    }
    for (int i = 0; i < 2; i++) {
      Fixture.Kind kind = Fixture.Kind.values()[random.nextInt(Fixture.Kind.values().length)];
      job.fixture("x" + i, kind, "p" + random.nextInt(parts), "p" + random.nextInt(parts));
    }
    if (parts > 2 && random.nextInt(3) == 0) {
      job.before("j1", "j2");
    }
    return job;
  }

  private static void joint(
      Job job, SplittableRandom random, String name, String first, String second, int parts) {
    JointForm form = random.nextInt(4) == 0 ? JointForm.BUTT : JointForm.TEE;
    job.joint(name, first, second, form);
    if (random.nextInt(5) == 0) {
      job.preheat(name, 80);
    }
    int runs = random.nextInt(1, 4);
    for (int i = 0; i < runs; i++) {
      double x = random.nextInt(0, 1000);
      double y = random.nextInt(0, 500);
      Job.Run run =
          job.run(
              name,
              Side.values()[i],
              new Vector3D(x, y, 0),
              new Vector3D(x + random.nextInt(20, 200), y, 0));
      run.passes(random.nextInt(1, 4)).interpass(random.nextInt(100, 250));
      if (form == JointForm.BUTT) {
        run.butt();
      }
      if (random.nextInt(4) == 0) {
        run.turned();
      }
      if (random.nextInt(6) == 0) {
        run.at("elsewhere", "big mag");
      }
      if (random.nextInt(12) == 0) {
        run.hiddenBy("p" + random.nextInt(parts));
      }
      run.add();
    }
  }
}
