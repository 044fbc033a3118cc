package org.counterpull.contact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.counterpull.contact.Bench.X;
import static org.counterpull.contact.Bench.Y;
import static org.counterpull.contact.Bench.Z;
import static org.counterpull.contact.Bench.at;
import static org.counterpull.contact.Bench.joint;
import static org.counterpull.contact.Bench.part;
import static org.counterpull.contact.Bench.shaped;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.geometry.euclidean.threed.Rotation;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.stock.Angle;
import org.counterpull.stock.Flat;
import org.counterpull.stock.RectangularTube;
import org.counterpull.stock.RoundBar;
import org.counterpull.stock.RoundTube;
import org.counterpull.weldment.Joint;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.Weldment;
import org.junit.jupiter.api.Test;

/** Turning and moving the whole weldment renames, lengthens and unblocks nothing. */
class MovingChangesNothingTest {
  private static final List<Part> PARTS =
      List.of(
          part("base", new Flat(100, 10), 300, at(0, 0, -5), X, Z),
          part("tee", new Flat(80, 10), 60, at(60, 0, 0), Z, X),
          part("corner", new Flat(100, 10), 60, at(295, 0, 0), Z, X),
          part("angle", new Angle(50, 40, 6, 0), 60, at(120, 0, 0), Z, at(1, 0.3, 0)),
          part("tube", new RectangularTube(30, 30, 3, 0), 60, at(180, 10, 0), Z, at(1, 1, 0)),
          part("round", new RoundTube(30, 3), 60, at(240, -38, 0), Z, X),
          part("knuckle", new RoundTube(30, 5), 90, at(100, 65, -5), X, Z),
          part("pin", new RoundBar(20), 90, at(120, 90, -5), X, Z),
          shaped(part("lug", new Flat(40, 10), 60, at(145, 65, 10), Z, Y)),
          part("under", new Flat(60, 8), 150, at(50, 5, -14), X, Z));

  private static final List<Joint> JOINTS =
      List.of(
          joint("tee", "tee", "base", 0, 0),
          joint("corner", "corner", "base", 0, 0),
          joint("angle", "base", "angle", 0, 0),
          joint("tube", "tube", "base", 0, 0),
          joint("round", "round", "base", 0, 0),
          joint("knuckle", "knuckle", "base", 0, 0),
          joint("pin", "pin", "knuckle", 0, 0),
          joint("lug", "lug", "knuckle", 0, 0),
          joint("under", "under", "base", 0, 0));

  @Test
  void areasLengthsNamesSidesAndReachStay() {
    Fitting here = ContactFinder.usual().find(Bench.weldment(PARTS, JOINTS));
    assertThat(here.contacts()).hasSize(JOINTS.size());
    Random random = new Random(7);
    for (int i = 0; i < 60; i++) {
      Rotation turn = RandomPairsAgainstPolygonsTest.turn(random);
      Vector3D by = new Vector3D(5000, new Vector3D(random.nextDouble(), random.nextDouble(), 0.3));
      List<Part> moved = new ArrayList<>();
      PARTS.forEach(part -> moved.add(Bench.moved(part, turn, by)));
      Weldment there = Bench.weldment(moved, JOINTS);
      same(here.contacts(), ContactFinder.usual().find(there).contacts(), turn, by);
    }
  }

  private static void same(List<Contact> here, List<Contact> there, Rotation turn, Vector3D by) {
    assertThat(there).hasSameSizeAs(here);
    for (int i = 0; i < here.size(); i++) {
      Contact a = here.get(i);
      Contact b = there.get(i);
      assertThat(b.form()).isEqualTo(a.form());
      assertThat(b.areaMm2()).isCloseTo(a.areaMm2(), within(1e-9 * a.areaMm2()));
      assertThat(b.gapMm()).isCloseTo(a.gapMm(), within(1e-9));
      assertThat(b.leftOut()).isEqualTo(a.leftOut());
      assertThat(b.lines()).hasSameSizeAs(a.lines());
      for (int k = 0; k < a.lines().size(); k++) {
        same(a.lines().get(k), b.lines().get(k), turn, by);
      }
    }
  }

  private static void same(WeldLine a, WeldLine b, Rotation turn, Vector3D by) {
    assertThat(b.run()).isEqualTo(a.run());
    assertThat(b.side()).isEqualTo(a.side());
    assertThat(b.shape()).isEqualTo(a.shape());
    double length = a.path().lengthMm();
    assertThat(b.path().lengthMm()).isCloseTo(length, within(1e-9 * length));
    assertThat(b.dihedralDeg()).isCloseTo(a.dihedralDeg(), within(1e-5));
    assertThat(b.firstWallMm()).isEqualTo(a.firstWallMm());
    assertThat(b.secondWallMm()).isEqualTo(a.secondWallMm());
    assertThat(b.reach()).isEqualTo(a.reach());
    Vector3D start = turn.applyTo(a.path().start()).add(by);
    assertThat(b.path().start().distance(start)).isLessThan(1e-6);
    assertThat(b.opening().distance(turn.applyTo(a.opening()))).isLessThan(1e-6);
  }
}
