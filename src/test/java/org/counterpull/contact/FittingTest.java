package org.counterpull.contact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.counterpull.contact.Bench.X;
import static org.counterpull.contact.Bench.Y;
import static org.counterpull.contact.Bench.Z;
import static org.counterpull.contact.Bench.at;
import static org.counterpull.contact.Bench.joint;
import static org.counterpull.contact.Bench.part;
import static org.counterpull.contact.Bench.weldment;

import java.util.List;
import org.counterpull.stock.Flat;
import org.counterpull.stock.RectangularTube;
import org.counterpull.stock.RoundBar;
import org.counterpull.stock.RoundTube;
import org.counterpull.weldment.Joint;
import org.counterpull.weldment.Part;
import org.junit.jupiter.api.Test;

/** Joints that do not touch, parts in the same place, lines that something is in front of. */
class FittingTest {
  private static final Part BASE = part("base", new Flat(100, 10), 300, at(0, 0, -5), X, Z);

  private static Fitting fitting(List<Part> parts, Joint... joints) {
    return ContactFinder.usual().find(weldment(parts, List.of(joints)));
  }

  @Test
  void aJointThatDoesNotTouchSaysHowFarAndWhichWay() {
    Part stem = part("stem", new Flat(80, 10), 60, at(150, 0, 3.2), Z, X);
    Fitting fitting = fitting(List.of(BASE, stem), joint("foot", "stem", "base", 0, 0));
    assertThat(fitting.contacts()).isEmpty();
    assertThat(fitting.overlaps()).isEmpty();
    NoContact apart = fitting.apart().get(0);
    assertThat(apart.gapMm()).isCloseTo(3.2, within(1e-9));
    assertThat(apart.direction().distance(Z.negate())).isLessThan(1e-9);
    assertThat(apart.words())
        .isEqualTo("foot: stem and base are 3.2 mm apart; move stem by 3.2 mm down");
  }

  @Test
  void aRoundPartThatDoesNotTouchIsMeasuredToItsSurface() {
    Part knuckle = part("knuckle", new RoundTube(30, 5), 60, at(100, 0, 19), X, Z);
    NoContact apart =
        fitting(List.of(BASE, knuckle), joint("hinge", "knuckle", "base", 0, 0)).apart().get(0);
    assertThat(apart.gapMm()).isCloseTo(4, within(0.15));
  }

  @Test
  void aGapThatTheJointAllowsIsContact() {
    Part stem = part("stem", new Flat(80, 10), 60, at(150, 0, 3.2), Z, X);
    assertThat(fitting(List.of(BASE, stem), joint("foot", "stem", "base", 3, 0)).sound()).isTrue();
  }

  @Test
  void partsThatMeetAtAPointSaySo() {
    Part one = part("one", new RoundBar(20), 200, at(-100, 0, 0), X, Z);
    Part across = part("across", new RoundBar(20), 200, at(0, -100, 20), Y, Z);
    NoContact apart =
        fitting(List.of(one, across), joint("cross", "across", "one", 0, 0)).apart().get(0);
    assertThat(apart.gapMm()).isLessThan(0.05);
    assertThat(apart.words()).contains("meet at a point or an edge only");
  }

  @Test
  void overlapsSayHowDeepAndWhatToMove() {
    Part stem = part("stem", new Flat(80, 10), 60, at(150, 0, -2.5), Z, X);
    Overlap overlap = fitting(List.of(stem, BASE)).overlaps().get(0);
    assertThat(overlap.depthMm()).isCloseTo(2.5, within(1e-9));
    assertThat(overlap.direction().distance(Z)).isLessThan(1e-9);
    assertThat(overlap.words())
        .isEqualTo(
            "stem and base are in each other by 2.5 mm; move stem by 2.5 mm up, or shorten one of"
                + " them");
  }

  @Test
  void touchingIsNoOverlapAndAPinInATubeIsNone() {
    Part stem = part("stem", new Flat(80, 10), 60, at(150, 0, 0), Z, X);
    Part tube = part("tube", new RoundTube(30, 5), 60, at(100, 0, 15), X, Z);
    Part pin = part("pin", new RoundBar(19.6), 100, at(80, 0, 15), X, Z);
    assertThat(fitting(List.of(BASE, tube, pin)).overlaps()).isEmpty();
    assertThat(fitting(List.of(BASE, stem)).overlaps()).isEmpty();
    Part thick = part("pin", new RoundBar(24), 100, at(80, 0, 15), X, Z);
    assertThat(fitting(List.of(tube, thick)).overlaps()).hasSize(1);
  }

  /** A flat welded to the floor of a tube: its other walls are in the way on every side. */
  @Test
  void aLineInsideABoxIsOutOfReach() {
    Part box = part("box", new RectangularTube(80, 80, 4, 0), 600, at(0, 0, 0), X, Z);
    Part rib = part("rib", new Flat(60, 10), 60, at(300, 0, -36), Z, X);
    Contact contact =
        fitting(List.of(box, rib), joint("rib", "rib", "box", 0, 0)).contacts().get(0);
    assertThat(contact.lines()).hasSize(4);
    assertThat(contact.lines())
        .allSatisfy(
            line -> {
              assertThat(line.reach().open()).isFalse();
              assertThat(line.reach().blockedBy()).contains("box");
            });
  }

  /** Between two upright bars 30 mm apart a 150 mm torch does not get down to the root. */
  @Test
  void aNeighbourInTheWayIsNamed() {
    Part stem = part("stem", new Flat(80, 10), 150, at(150, 0, 0), Z, X);
    Part other = part("other", new Flat(80, 10), 150, at(190, 0, 0), Z, X);
    Contact contact =
        fitting(List.of(BASE, stem, other), joint("foot", "stem", "base", 0, 0)).contacts().get(0);
    assertThat(Bench.line(contact, "foot/left").reach().share()).isEqualTo(1);
    WeldLine.Reach right = Bench.line(contact, "foot/right").reach();
    assertThat(right.open()).isFalse();
    assertThat(right.blockedBy()).containsExactly("other");
  }

  /** The faces that make the corner do not count, however close the cone runs to them. */
  @Test
  void theCornerItselfIsNotInTheWay() {
    Part stem = part("stem", new Flat(80, 10), 150, at(150, 0, 0), Z, X);
    Contact contact =
        fitting(List.of(BASE, stem), joint("foot", "stem", "base", 0, 0)).contacts().get(0);
    assertThat(contact.lines())
        .allSatisfy(
            line -> {
              assertThat(line.reach().share()).isEqualTo(1);
              assertThat(line.reach().blockedBy()).isEmpty();
            });
  }
}
