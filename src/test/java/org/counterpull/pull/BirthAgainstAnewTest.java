package org.counterpull.pull;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.geometry.euclidean.threed.Rotation;
import org.apache.commons.math3.geometry.euclidean.threed.RotationConvention;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Series of births and removals against assembling and solving anew at each step. */
class BirthAgainstAnewTest {
  private static final int BARS = 4;
  private static final int LINKS = 12;

  static final RandomFrame.Pose TURNED =
      new RandomFrame.Pose(
          new Rotation(new Vector3D(1, 2, -0.5), 0.7, RotationConvention.VECTOR_OPERATOR)::applyTo,
          false,
          0);
  static final RandomFrame.Pose MIRRORED =
      new RandomFrame.Pose(v -> new Vector3D(-v.getX(), v.getY(), v.getZ()), true, 0);

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void birthsOnRandomStructures(long seed) {
    assertThat(births(seed)).isLessThan(1e-9);
  }

  /** Greatest difference to the solution anew after any birth, in units of the greatest reading. */
  static double births(long seed) {
    RandomFrame frame = new RandomFrame(seed, BARS, LINKS, RandomFrame.AS_IT_COMES);
    Structure structure = new Structure(frame.assembly, 1);
    AnewSolver anew = new AnewSolver(frame);
    Random random = new Random(seed + 100);
    double worst = 0;
    for (int l = 0; l < LINKS; l++) {
      SpringStiffness cold = RandomFrame.stiffness(random, 1);
      SpringStiffness pulling = l % 2 == 0 ? cold : cold.times(0.1);
      double[] wanted = wanted(random);
      if (l < BARS - 1) {
        structure.join(l, cold);
        anew.join(l, cold);
      } else {
        structure.weld(l, pulling, cold, wanted, 0);
        anew.weld(l, pulling, cold, wanted);
      }
      worst = Math.max(worst, difference(frame, structure, anew));
    }
    assertThat(structure.looseMotions()).isEqualTo(6);
    return worst;
  }

  // Tacks that their run remelts, and fixtures taken out, from soft to a million times as stiff as
  // the
  // structure. The bar was 1e-9 up to a stiffness ratio of 100 and 1e-6 beyond.
  @ParameterizedTest
  @CsvSource({"1,0.01,1e-9", "2,1,1e-9", "3,100,1e-9", "4,1e4,1e-6", "5,1e6,1e-6"})
  void removalsOnRandomStructures(long seed, double fixtureScale, double tolerance) {
    assertThat(removals(seed, fixtureScale)).isLessThan(tolerance);
  }

  /** As births, with tacks remelted and fixtures taken out. */
  static double removals(long seed, double fixtureScale) {
    RandomFrame frame = new RandomFrame(seed, BARS, LINKS, RandomFrame.AS_IT_COMES);
    Structure structure = new Structure(frame.assembly, 1);
    AnewSolver anew = new AnewSolver(frame);
    Random random = new Random(seed + 200);
    double worst = 0;
    for (int l = 0; l < 7; l++) {
      SpringStiffness tack = RandomFrame.stiffness(random, l < 4 ? 1 : fixtureScale);
      structure.join(l, tack);
      anew.join(l, tack);
    }
    for (int l : new int[] {7, 2, 8, 9, 0, 10}) {
      SpringStiffness cold = RandomFrame.stiffness(random, 1);
      double[] wanted = wanted(random);
      structure.weld(l, cold.times(0.2), cold, wanted, 0);
      anew.weld(l, cold.times(0.2), cold, wanted);
      worst = Math.max(worst, difference(frame, structure, anew));
    }
    for (int l : new int[] {4, 5, 6}) {
      structure.release(l);
      anew.release(l);
      worst = Math.max(worst, difference(frame, structure, anew));
    }
    return worst;
  }

  /** A part on six props needs each of them, whatever rounding other links left when they went. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void theLastConnectionIsKnownThroughRounding(long seed) {
    RandomFrame frame = new RandomFrame(seed, 2, 8, RandomFrame.AS_IT_COMES);
    Structure structure = new Structure(frame.assembly, 1);
    Random random = new Random(seed + 400);
    for (int prop = 0; prop < 6; prop++) {
      double[] k = new double[6];
      k[prop % 3] = 1e5;
      structure.join(prop, new SpringStiffness(k[0], k[1], k[2], 0, 0, 0));
    }
    for (int l = 6; l < 8; l++) {
      structure.join(l, RandomFrame.stiffness(random, 1));
    }
    for (int l = 6; l < 8; l++) {
      assertThat(structure.holdsAlone(l)).isFalse();
      structure.release(l);
    }
    for (int prop = 0; prop < 6; prop++) {
      int last = prop;
      assertThat(structure.holdsAlone(prop)).as("prop %d", prop).isTrue();
      assertThatThrownBy(() -> structure.release(last)).hasMessageContaining("leave a part loose");
    }
  }

  // Tacks lie in three links of four that then pull together.
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void linksThatPullTogether(long seed) {
    RandomFrame frame = new RandomFrame(seed, BARS, LINKS, RandomFrame.AS_IT_COMES);
    Structure structure = new Structure(frame.assembly, 1);
    AnewSolver anew = new AnewSolver(frame);
    Random random = new Random(seed + 300);
    for (int l = 0; l < 7; l++) {
      SpringStiffness tack = RandomFrame.stiffness(random, 0.5);
      structure.join(l, tack);
      anew.join(l, tack);
    }
    SpringStiffness first = RandomFrame.stiffness(random, 1);
    double[] before = wanted(random);
    structure.weld(8, first.times(0.2), first, before, 0);
    anew.weld(8, first.times(0.2), first, before);
    List<SpringStiffness> cold = new ArrayList<>();
    List<Pull> pulls = new ArrayList<>();
    for (int l : new int[] {4, 9, 5, 6}) {
      cold.add(RandomFrame.stiffness(random, 1));
      pulls.add(new Pull(l, cold.get(cold.size() - 1).times(0.2), wanted(random)));
    }
    for (int p = 0; p < pulls.size(); p++) {
      structure.lay(pulls.get(p).link(), cold.get(p));
    }
    structure.pull(pulls, 0);
    anew.weld(pulls, cold);
    assertThat(difference(frame, structure, anew)).isLessThan(1e-9);
    structure.release(3);
    anew.release(3);
    assertThat(difference(frame, structure, anew)).isLessThan(1e-9);
  }

  // A locked fixture has no solution anew by stiffness; taking it out again must leave the
  // structure
  // as one that never had it, when nothing happened in between.
  @Test
  void lockedFixtureTakenOutLeavesNoTrace() {
    RandomFrame frame = new RandomFrame(7, BARS, LINKS, RandomFrame.AS_IT_COMES);
    Structure with = tacked(frame, 7);
    Structure without = with.copy();
    with.join(9, SpringStiffness.RIGID);
    with.release(9);
    weldAll(with, new int[] {5, 6, 7}, 3, false);
    weldAll(without, new int[] {5, 6, 7}, 3, false);
    for (int r : frame.readings) {
      assertThat(with.reading(r)).isCloseTo(without.reading(r), within(1e-10));
    }
  }

  @Test
  void takingOutTheLastConnectionIsRefused() {
    RandomFrame frame = new RandomFrame(8, 2, 3, RandomFrame.AS_IT_COMES);
    Structure structure = new Structure(frame.assembly, 1);
    structure.join(0, SpringStiffness.uniform(1e5));
    assertThat(structure.holdsAlone(0)).isTrue();
    assertThatThrownBy(() -> structure.release(0))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("loose");
  }

  // A single tack that its own run remelts: the part hangs on the new weld alone and simply
  // follows.
  @Test
  void remeltedLastTackLetsThePartFollowFreely() {
    RandomFrame frame = new RandomFrame(9, 2, 3, RandomFrame.AS_IT_COMES);
    Structure structure = new Structure(frame.assembly, 1);
    structure.join(0, SpringStiffness.uniform(1e4));
    SpringStiffness cold = SpringStiffness.uniform(1e6);
    structure.weld(0, cold.times(0.1), cold, new double[] {0, -0.3, 0, 0.01, 0, 0}, 0);
    for (double force : structure.tension(0)) {
      assertThat(force).isZero();
    }
    structure.join(1, SpringStiffness.uniform(1e5));
    Structure direct = new Structure(frame.assembly, 1);
    direct.weld(0, cold.times(0.1), cold, new double[] {0, -0.3, 0, 0.01, 0, 0}, 0);
    direct.join(1, SpringStiffness.uniform(1e5));
    weldAll(structure, new int[] {2}, 5, false);
    weldAll(direct, new int[] {2}, 5, false);
    for (int r : frame.readings) {
      assertThat(structure.reading(r)).isCloseTo(direct.reading(r), within(1e-12));
    }
  }

  // Which node of a body is held, and whether the whole is grounded, changes no reading.
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3})
  void supportsDontMatter(int heldNode) {
    assertThat(otherSupports(heldNode)).isLessThan(1e-9);
  }

  /** Greatest change of a reading, mm or rad, when another node is held and all is grounded. */
  static double otherSupports(int heldNode) {
    RandomFrame one = new RandomFrame(11, BARS, LINKS, RandomFrame.AS_IT_COMES);
    RandomFrame other =
        new RandomFrame(11, BARS, LINKS, new RandomFrame.Pose(v -> v, false, heldNode));
    int ground = other.assembly.groundLink(Shapes.at(other.assembly, 2, 1), Shapes.AXES);
    Structure floating = tacked(one, 8);
    Structure grounded = tacked(other, 8);
    grounded.join(ground, SpringStiffness.uniform(10));
    assertThat(floating.looseMotions()).isEqualTo(6);
    assertThat(grounded.looseMotions()).isZero();
    weldAll(floating, new int[] {8, 9, 1, 10}, 6, false);
    weldAll(grounded, new int[] {8, 9, 1, 10}, 6, false);
    double worst = 0;
    for (int r = 0; r < one.readings.size(); r++) {
      assertThat(floating.settled(r)).isTrue();
      worst = Math.max(worst, Math.abs(grounded.reading(r) - floating.reading(r)));
    }
    return worst;
  }

  @Test
  void turnedStructureTurnedAnswer() {
    assertThat(inPose(TURNED)).isLessThan(1e-10);
  }

  @Test
  void mirroredStructureMirroredAnswer() {
    assertThat(inPose(MIRRORED)).isLessThan(1e-10);
  }

  /** Greatest change of a reading, mm or rad, when all is built in another pose. */
  static double inPose(RandomFrame.Pose pose) {
    RandomFrame one = new RandomFrame(12, BARS, LINKS, RandomFrame.AS_IT_COMES);
    RandomFrame other = new RandomFrame(12, BARS, LINKS, pose);
    Structure before = tacked(one, 8);
    Structure after = tacked(other, 8);
    weldAll(before, new int[] {8, 2, 9, 10, 11}, 6, false);
    weldAll(after, new int[] {8, 2, 9, 10, 11}, 6, pose.mirrored());
    double worst = 0;
    for (int r = 0; r < one.readings.size(); r++) {
      assertThat(Math.abs(before.reading(r))).isGreaterThan(1e-3);
      worst = Math.max(worst, Math.abs(after.reading(r) - before.reading(r)));
    }
    return worst;
  }

  private static Structure tacked(RandomFrame frame, int tacks) {
    Structure structure = new Structure(frame.assembly, 1);
    for (int l = 0; l < tacks; l++) {
      structure.join(l, SpringStiffness.uniform(2e4).times(1 + l));
    }
    return structure;
  }

  private static void weldAll(Structure structure, int[] order, long seed, boolean mirrored) {
    Random random = new Random(seed);
    for (int l : order) {
      double shrinkage = -0.1 - random.nextDouble();
      double angle = 0.01 * random.nextDouble();
      // A turn is an axial vector: in the mirror it goes the other way round.
      double[] wanted = {0, shrinkage, 0, mirrored ? -angle : angle, 0, 0};
      SpringStiffness cold = SpringStiffness.uniform(1e5);
      structure.weld(l, cold.times(0.2), cold, wanted, 0);
    }
  }

  private static double[] wanted(Random random) {
    double[] wanted = new double[6];
    for (int i = 0; i < 6; i++) {
      wanted[i] = (i < 3 ? 1 : 0.01) * (2 * random.nextDouble() - 1);
    }
    return wanted;
  }

  private static double difference(RandomFrame frame, Structure structure, AnewSolver anew) {
    double scale = 1e-6;
    double worst = 0;
    for (int r = 0; r < frame.readings.size(); r++) {
      scale = Math.max(scale, Math.abs(anew.reading(r)));
      worst = Math.max(worst, Math.abs(structure.reading(r) - anew.reading(r)));
    }
    return worst / scale;
  }
}
