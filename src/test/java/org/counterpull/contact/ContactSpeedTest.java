package org.counterpull.contact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.counterpull.contact.Bench.X;
import static org.counterpull.contact.Bench.Y;
import static org.counterpull.contact.Bench.Z;
import static org.counterpull.contact.Bench.at;
import static org.counterpull.contact.Bench.joint;
import static org.counterpull.contact.Bench.part;

import java.util.ArrayList;
import java.util.List;
import org.counterpull.stock.Angle;
import org.counterpull.stock.Flat;
import org.counterpull.stock.RoundTube;
import org.counterpull.weldment.Joint;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.Weldment;
import org.junit.jupiter.api.Test;

/** A frame of 25 parts, 1200 x 900, with cross bars and knuckles, is found in a blink. */
class ContactSpeedTest {
  private static final double SECONDS = 0.3;

  private static Weldment frame() {
    List<Part> parts = new ArrayList<>();
    List<Joint> joints = new ArrayList<>();
    parts.add(part("front", new Flat(60, 10), 1200, at(0, 5, 0), X, Y));
    parts.add(part("back", new Flat(60, 10), 1200, at(0, 895, 0), X, Y));
    for (int i = 0; i < 12; i++) {
      double x = 5 + i * 1190 / 11.0;
      String bar = "bar " + i;
      parts.add(
          i % 3 == 1
              ? part(bar, new Angle(50, 50, 6, 0), 880, at(x, 10, 0), Y, Z)
              : part(bar, new Flat(60, 10), 880, at(x, 10, 0), Y, X));
      joints.add(joint(bar + " front", bar, "front", 0, 0));
      joints.add(joint(bar + " back", bar, "back", 0, 0));
    }
    for (int i = 0; i < 11; i++) {
      String knuckle = "knuckle " + i;
      double x = 40 + i * 105;
      parts.add(part(knuckle, new RoundTube(30, 5), 60, at(x, 915, 0), X, Z));
      joints.add(joint(knuckle, knuckle, "back", 0, 0));
    }
    return Bench.weldment(parts, joints);
  }

  /** The best of several, as other work on the machine only ever adds. */
  @Test
  void twentyFivePartsThirtyFiveJoints() {
    Weldment frame = frame();
    double best = Double.MAX_VALUE;
    Fitting fitting = null;
    for (int i = 0; i < 15; i++) {
      long start = System.nanoTime();
      fitting = ContactFinder.usual().find(frame);
      best = Math.min(best, (System.nanoTime() - start) / 1e9);
    }
    assertThat(fitting.sound()).isTrue();
    assertThat(fitting.contacts()).hasSize(35);
    long lines = fitting.contacts().stream().mapToLong(c -> c.lines().size()).sum();
    assertThat(lines).isGreaterThan(100);
    assertThat(best).isLessThan(SECONDS);
  }
}
