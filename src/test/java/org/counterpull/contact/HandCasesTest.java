package org.counterpull.contact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.counterpull.contact.Bench.X;
import static org.counterpull.contact.Bench.Y;
import static org.counterpull.contact.Bench.Z;
import static org.counterpull.contact.Bench.at;
import static org.counterpull.contact.Bench.contact;
import static org.counterpull.contact.Bench.line;
import static org.counterpull.contact.Bench.mitred;
import static org.counterpull.contact.Bench.part;
import static org.counterpull.contact.Bench.shaped;

import java.util.List;
import java.util.Optional;
import org.counterpull.contact.WeldLine.Shape;
import org.counterpull.position.WeldingPosition;
import org.counterpull.space.Face;
import org.counterpull.stock.Angle;
import org.counterpull.stock.Flat;
import org.counterpull.stock.RectangularTube;
import org.counterpull.stock.RoundBar;
import org.counterpull.stock.RoundTube;
import org.counterpull.weldment.EndCut;
import org.counterpull.weldment.Part;
import org.junit.jupiter.api.Test;

/** Joints whose area, lines and angles a person works out with a pencil; each value exact. */
class HandCasesTest {
  private static final double EXACT = 1e-9;

  /** 100 x 10 flat, 300 long, top face at z = 0. */
  private static final Part BASE = part("base", new Flat(100, 10), 300, at(0, 0, -5), X, Z);

  /** Round tube 120 x 10 along x, its top at z = 60. */
  private static final Part BARREL = part("barrel", new RoundTube(120, 10), 400, at(0, 0, 0), X, Z);

  private static List<String> runs(Contact contact) {
    return contact.lines().stream().map(WeldLine::run).toList();
  }

  private static double length(Contact contact, String run) {
    return line(contact, run).path().lengthMm();
  }

  private static List<Shape> shapes(Contact contact) {
    return contact.lines().stream().map(WeldLine::shape).distinct().toList();
  }

  @Test
  void teeOfTwoFlats() {
    Contact tee = contact(part("a", new Flat(80, 12), 60, at(150, 0, 0), Z, X), BASE, 0);
    assertThat(tee.form()).isEqualTo(JointForm.TEE);
    assertThat(tee.areaMm2()).isCloseTo(80 * 12, within(EXACT));
    assertThat(runs(tee)).containsExactly("j/front", "j/back", "j/left", "j/right");
    assertThat(length(tee, "j/left")).isCloseTo(80, within(EXACT));
    assertThat(length(tee, "j/front")).isCloseTo(12, within(EXACT));
    WeldLine left = line(tee, "j/left");
    assertThat(left.shape()).isEqualTo(Shape.FILLET);
    assertThat(left.dihedralDeg()).isCloseTo(90, within(EXACT));
    assertThat(left.firstWallMm()).isEqualTo(12);
    assertThat(left.secondWallMm()).isEqualTo(10);
    assertThat(left.path().start().distance(at(144, -40, 0))).isLessThan(EXACT);
    assertThat(left.path().end().distance(at(144, 40, 0))).isLessThan(EXACT);
  }

  @Test
  void cornerIsFlushOutside() {
    Contact corner = contact(part("a", new Flat(100, 10), 60, at(295, 0, 0), Z, X), BASE, 0);
    assertThat(corner.form()).isEqualTo(JointForm.CORNER);
    assertThat(line(corner, "j/left").shape()).isEqualTo(Shape.FILLET);
    assertThat(line(corner, "j/right").shape()).isEqualTo(Shape.BUTT);
    assertThat(line(corner, "j/right").dihedralDeg()).isCloseTo(180, within(EXACT));
  }

  @Test
  void edgesOneMillimetreOffAreFlushAndFourAreNot() {
    Contact near = contact(part("a", new Flat(100, 10), 60, at(294, 0, 0), Z, X), BASE, 0);
    assertThat(line(near, "j/right").shape()).isEqualTo(Shape.BUTT);
    Contact off = contact(part("a", new Flat(100, 10), 60, at(291, 0, 0), Z, X), BASE, 0);
    assertThat(line(off, "j/right").shape()).isEqualTo(Shape.FILLET);
  }

  @Test
  void lapHasFilletsAllRound() {
    Contact lap = contact(part("a", new Flat(60, 8), 150, at(100, 0, 4), X, Z), BASE, 0);
    assertThat(lap.form()).isEqualTo(JointForm.LAP);
    assertThat(lap.areaMm2()).isCloseTo(60 * 150, within(1e-7));
    assertThat(Bench.length(lap)).isCloseTo(420, within(EXACT));
    assertThat(shapes(lap)).containsExactly(Shape.FILLET);
  }

  @Test
  void flatsEndToEndAreAButt() {
    Contact butt = contact(part("a", new Flat(100, 10), 200, at(300, 0, -5), X, Z), BASE, 0);
    assertThat(butt.form()).isEqualTo(JointForm.BUTT);
    assertThat(runs(butt)).containsExactly("j/top", "j/bottom", "j/front", "j/back");
    assertThat(shapes(butt)).containsExactly(Shape.BUTT);
    assertThat(line(butt, "j/top").opening().distance(Z)).isLessThan(EXACT);
  }

  /** 60 wide flats mitred 45 degrees: 60 sqrt 2 long along the cut. */
  @Test
  void mitredFlatsAreAButtWithAnInsideAndAnOutsideCorner() {
    Part first =
        mitred(
            part("a", new Flat(60, 10), 200, at(0, 0, 0), X, Z),
            EndCut.SQUARE,
            new EndCut(45, Optional.of(Face.FRONT)));
    Part second =
        mitred(
            part("b", new Flat(60, 10), 200, at(170, -30, 0), Y, Z),
            new EndCut(45, Optional.of(Face.FRONT)),
            EndCut.SQUARE);
    Contact mitre = contact(first, second, 0);
    double along = 60 * Math.sqrt(2);
    assertThat(mitre.form()).isEqualTo(JointForm.BUTT);
    assertThat(mitre.areaMm2()).isCloseTo(10 * along, within(EXACT));
    assertThat(length(mitre, "j/top")).isCloseTo(along, within(EXACT));
    assertThat(length(mitre, "j/bottom")).isCloseTo(along, within(EXACT));
    assertThat(line(mitre, "j/front").dihedralDeg()).isCloseTo(270, within(1e-6));
    assertThat(line(mitre, "j/front").shape()).isEqualTo(Shape.OUTSIDE_CORNER);
    assertThat(line(mitre, "j/back").dihedralDeg()).isCloseTo(90, within(1e-6));
    assertThat(line(mitre, "j/back").shape()).isEqualTo(Shape.FILLET);
  }

  /**
   * Knuckle 30 x 5 raised 2 mm: strip half as wide as sqrt(15^2 - 14^2); 2 mm further open where it
   * has turned by acos(1 - 2/15).
   */
  @Test
  void knuckleOnFlatWithGapHasFlaresOnBothSides() {
    Contact knuckle = contact(part("a", new RoundTube(30, 5), 60, at(100, 0, 17), X, Z), BASE, 2);
    assertThat(knuckle.gapMm()).isCloseTo(2, within(EXACT));
    assertThat(runs(knuckle)).containsExactly("j/front", "j/back");
    assertThat(shapes(knuckle)).containsExactly(Shape.FLARE_BEVEL);
    assertThat(knuckle.areaMm2()).isCloseTo(2 * 60 * Math.sqrt(29), within(1e-6));
    WeldLine front = line(knuckle, "j/front");
    assertThat(front.path().lengthMm()).isCloseTo(60, within(EXACT));
    assertThat(front.dihedralDeg())
        .isCloseTo(Math.toDegrees(Math.acos(1 - 2 / 15.0)), within(1e-6));
    assertThat(front.flareRadiusMm()).contains(15.0);
    assertThat(front.firstWallMm()).isCloseTo(5, within(EXACT));
    assertThat(front.gapMm()).isCloseTo(2, within(EXACT));
    assertThat(front.position()).isEqualTo(WeldingPosition.PB);
  }

  @Test
  void twoRoundsSideBySideHaveFlareVs() {
    Contact rounds = contact(part("a", new RoundBar(20), 100, at(50, 0, 70), X, Z), BARREL, 0);
    assertThat(shapes(rounds)).containsExactly(Shape.FLARE_V);
    assertThat(runs(rounds)).containsExactly("j/front", "j/back");
    assertThat(Bench.length(rounds)).isCloseTo(200, within(EXACT));
    assertThat(line(rounds, "j/front").flareRadiusMm()).contains(10.0);
  }

  /** Six sides of an angle 50 x 40 x 6: 50, 40, 44, 34 and twice 6. */
  @Test
  void angleStandingOnPlateHasItsTruePerimeter() {
    Contact angle = contact(part("a", new Angle(50, 40, 6, 0), 60, at(150, 0, 0), Z, X), BASE, 0);
    assertThat(angle.areaMm2()).isCloseTo(50 * 6 + 34 * 6, within(EXACT));
    assertThat(angle.lines().stream().map(l -> Math.round(l.path().lengthMm())).sorted().toList())
        .containsExactly(6L, 6L, 34L, 40L, 44L, 50L);
    assertThat(runs(angle)).contains("j/front#1", "j/front#2", "j/right#1", "j/right#2");
  }

  /** The root of the angle lies on the flat's edge: nothing is free there. */
  @Test
  void angleAroundAnEdgeHasNoLineInItsRoot() {
    Contact around =
        contact(part("a", new Angle(50, 40, 6, 0), 60, at(100, -36, 9), X, Z), BASE, 0);
    assertThat(around.areaMm2()).isCloseTo(60 * (10 + 34), within(EXACT));
    assertThat(Bench.length(around)).isCloseTo(60 + 60 + 2 * (10 + 34), within(EXACT));
    assertThat(length(around, "j/top")).isCloseTo(60, within(EXACT));
    assertThat(length(around, "j/back")).isCloseTo(60, within(EXACT));
  }

  @Test
  void roundTubeStandingOnPlateHasACircleOutsideAndAHiddenOneInside() {
    Contact tube = contact(part("a", new RoundTube(48.3, 3.2), 60, at(150, 0, 0), Z, X), BASE, 0);
    assertThat(runs(tube)).containsExactly("j/inside", "j/outside");
    assertThat(length(tube, "j/outside")).isCloseTo(Math.PI * 48.3, within(EXACT));
    assertThat(length(tube, "j/inside")).isCloseTo(Math.PI * 41.9, within(EXACT));
    assertThat(tube.areaMm2()).isCloseTo(Math.PI / 4 * (48.3 * 48.3 - 41.9 * 41.9), within(EXACT));
    assertThat(line(tube, "j/outside").reach().open()).isTrue();
    assertThat(line(tube, "j/inside").reach().share()).isZero();
    assertThat(line(tube, "j/inside").reach().blockedBy()).containsExactly("a");
    assertThat(line(tube, "j/outside").position()).isEqualTo(WeldingPosition.PB);
  }

  @Test
  void squareTubeIntoTheSideOfAnother() {
    Part chord = part("t", new RectangularTube(50, 50, 3, 0), 300, at(0, 0, 0), X, Z);
    Contact branch =
        contact(part("a", new RectangularTube(50, 50, 3, 0), 200, at(150, 25, 0), Y, Z), chord, 0);
    assertThat(branch.areaMm2()).isCloseTo(50 * 50 - 44 * 44, within(EXACT));
    assertThat(line(branch, "j/top").shape()).isEqualTo(Shape.BUTT);
    assertThat(line(branch, "j/left").shape()).isEqualTo(Shape.FILLET);
    assertThat(branch.lines().stream().filter(l -> l.run().startsWith("j/inside")))
        .hasSize(4)
        .allSatisfy(l -> assertThat(l.reach().share()).isZero());
  }

  /**
   * A 10 mm lug over the crown of a barrel of radius 60: ground to it, 120 asin(5/60) across; not
   * ground, its edges stand off by 60 - sqrt(60^2 - 5^2).
   */
  @Test
  void lugOnBarrel() {
    Part lug = part("lug", new Flat(80, 10), 60, at(200, 0, 60), Z, Y);
    double across = 120 * Math.asin(5 / 60.0);
    Contact ground = contact(shaped(lug), BARREL, 0);
    assertThat(ground.areaMm2()).isCloseTo(80 * across, within(1e-6));
    assertThat(length(ground, "j/left")).isCloseTo(across, within(1e-4));
    assertThat(length(ground, "j/front")).isCloseTo(80, within(EXACT));
    assertThat(line(ground, "j/front").gapMm()).isZero();
    assertThat(line(ground, "j/front").dihedralDeg())
        .isCloseTo(90 + Math.toDegrees(Math.asin(5 / 60.0)), within(1e-6));
    Contact asCut = contact(lug, BARREL, 0);
    assertThat(asCut.form()).isEqualTo(JointForm.TEE);
    assertThat(asCut.areaMm2()).isCloseTo(800, within(EXACT));
    assertThat(line(asCut, "j/front").gapMm()).isCloseTo(60 - Math.sqrt(3575), within(EXACT));
  }

  /** 30 mm thick the lug's edges stand off by 1.9 mm: grooves, and what is within 1 mm across. */
  @Test
  void thickLugOnBarrelNotGround() {
    Contact lug = contact(part("lug", new Flat(80, 30), 60, at(200, 0, 60), Z, Y), BARREL, 0);
    assertThat(line(lug, "j/front").shape()).isEqualTo(Shape.FLARE_BEVEL);
    assertThat(length(lug, "j/left")).isCloseTo(2 * Math.sqrt(119), within(1e-6));
  }

  /**
   * A round footprint of radius r on a cylinder R has 1/8 (r/R)^2 more than its plan, and so on.
   */
  @Test
  void copedTubeOnBarrel() {
    Part tube = shaped(part("a", new RoundBar(40), 80, at(200, 0, 60), Z, Y));
    double plan = Math.PI * 400;
    double series = 1 + Math.pow(20 / 60.0, 2) / 8 + 3 * Math.pow(20 / 60.0, 4) / 64;
    Contact cope = contact(tube, BARREL, 0);
    assertThat(cope.areaMm2() / plan).isCloseTo(series, within(1e-3));
    assertThat(runs(cope)).containsExactly("j/outside");
    assertThat(line(cope, "j/outside").path()).isInstanceOf(LinePath.Curve.class);
  }

  /** Cut 45 degrees, a round bar of 40 mm has an ellipse of 20 x 20 sqrt 2. */
  @Test
  void mitredRoundBarHasOneEllipticalLine() {
    Part round = part("a", new RoundBar(40), 200, at(100, 0, -20 * Math.sqrt(0.5)), at(1, 0, 1), Z);
    Part bar = mitred(round, new EndCut(45, Optional.of(Face.TOP)), EndCut.SQUARE);
    Contact contact = contact(bar, BASE, 0);
    double exact = Math.PI * 20 * 20 * Math.sqrt(2);
    assertThat(contact.areaMm2()).isCloseTo(exact, within(0.0006 * exact));
    assertThat(runs(contact)).containsExactly("j/outside");
  }

  @Test
  void shortLinesAreLeftOutAndSaid() {
    Contact thin = contact(part("a", new Flat(80, 2), 60, at(150, 0, 0), Z, X), BASE, 0);
    assertThat(runs(thin)).containsExactly("j/left", "j/right");
    assertThat(thin.leftOut())
        .containsExactly(
            "a line of 2.0 mm, shorter than 3.0 mm", "a line of 2.0 mm, shorter than 3.0 mm");
  }

  @Test
  void aClearanceIsNotWeldedAcross() {
    Part near = part("a", new Flat(80, 10), 60, at(150, 0, 0.8), Z, X);
    Contact turning =
        ContactFinder.usual().find(Bench.joint("j", "a", "base", 0, 0.8), near, BASE).orElseThrow();
    assertThat(turning.lines()).isEmpty();
    assertThat(turning.areaMm2()).isZero();
    assertThat(turning.gapMm()).isCloseTo(0.8, within(EXACT));
    assertThat(contact(near, BASE, 0).lines()).hasSize(4);
  }

  @Test
  void crossBarBetweenTwoSideBars() {
    Part left = part("left", new Flat(60, 10), 500, at(0, 0, 0), X, Y);
    Part right = part("right", new Flat(60, 10), 500, at(0, 210, 0), X, Y);
    Part cross = part("cross", new Flat(60, 10), 200, at(250, 5, 0), Y, X);
    Contact one = contact(cross, left, 0);
    Contact other = contact(cross, right, 0);
    assertThat(one.form()).isEqualTo(JointForm.TEE);
    assertThat(one.areaMm2()).isCloseTo(600, within(EXACT));
    assertThat(other.areaMm2()).isCloseTo(600, within(EXACT));
    assertThat(Bench.length(one)).isCloseTo(140, within(EXACT));
    assertThat(Bench.length(other)).isCloseTo(140, within(EXACT));
  }
}
