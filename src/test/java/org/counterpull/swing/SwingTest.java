package org.counterpull.swing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.solid.Solid;
import org.counterpull.space.Frame;
import org.counterpull.stock.Flat;
import org.counterpull.weldment.EndCut;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.PartMaterial;
import org.counterpull.weldment.Swing;
import org.junit.jupiter.api.Test;

/** Turning solids about an axis, against positions worked out by hand. */
class SwingTest {
  private static final Turning ABOUT_X =
      new Turning(Vector3D.ZERO, Vector3D.PLUS_I, Vector3D.PLUS_J, Vector3D.PLUS_K);

  private static Part part(String name, Flat flat, double lengthMm, Vector3D at) {
    return new Part(
        name,
        flat,
        lengthMm,
        Frame.of(at, Vector3D.PLUS_I, Vector3D.PLUS_K),
        EndCut.SQUARE,
        EndCut.SQUARE,
        List.of(),
        new PartMaterial(
            "S275JR", PartMaterial.Certainty.UNKNOWN, Optional.empty(), Optional.empty()),
        false,
        Optional.empty());
  }

  /** A leaf from the axis to 100 mm out, 10 thick. */
  private static Solid leaf() {
    return Solid.of(part("leaf", new Flat(100, 10), 60, new Vector3D(0, 50, 0)));
  }

  /** A shelf whose underside is 50 mm above the axis, 60 to 160 mm out. */
  private static Solid shelf() {
    return Solid.of(part("shelf", new Flat(100, 10), 60, new Vector3D(0, 110, 55)));
  }

  @Test
  void aPointGoesRound() {
    Vector3D turned = ABOUT_X.point(new Vector3D(7, 10, 0), 90);
    assertThat(turned.distance(new Vector3D(7, 0, 10))).isLessThan(1e-9);
  }

  @Test
  void aSolidTurnsAsItsPointsDo() {
    Solid turned = ABOUT_X.solid(leaf(), 90);
    assertThat(turned.box().low().distance(new Vector3D(0, -5, 0))).isLessThan(1e-9);
    assertThat(turned.box().high().distance(new Vector3D(60, 5, 100))).isLessThan(1e-9);
  }

  /**
   * By hand: the leaf's upper corner (100, 5) is 100 sin a + 5 cos a high. It is {@value
   * ClashSearch#DEPTH_MM} mm above the shelf's underside, 50.3, at asin(50.3 / 100.12492) - atan(5
   * / 100) = 30.1567 - 2.8624 = 27.294 degrees. Found to 0.01 degrees.
   */
  @Test
  void theFirstClashIsWhereTheCornerMeetsTheShelf() {
    double hand = Math.toDegrees(Math.asin(50.3 / Math.hypot(100, 5)) - Math.atan2(5, 100));
    assertThat(hand).isCloseTo(27.2947, within(0.00005));
    var met = new ClashSearch(ABOUT_X, List.of(shelf())).first(leaf(), 0, 90).orElseThrow();
    assertThat(met.other().name()).isEqualTo("shelf");
    assertThat(met.deg()).isCloseTo(hand, within(0.011));
  }

  @Test
  void theOtherWayIsFree() {
    assertThat(new ClashSearch(ABOUT_X, List.of(shelf())).first(leaf(), 0, -150)).isEmpty();
  }

  /** A plate of 2 mm that the leaf's end passes is not jumped over, however far out it is. */
  @Test
  void aThinPlateIsNotJumpedOver() {
    Solid thin = Solid.of(part("thin", new Flat(20, 2), 60, new Vector3D(0, 95, 30)));
    assertThat(new ClashSearch(ABOUT_X, List.of(thin)).first(leaf(), 0, 90)).isPresent();
  }

  private static final Swing.Cylinder CYLINDER =
      new Swing.Cylinder(
          new Vector3D(0, 200, -350), new Vector3D(0, 300, 0), 50, 28, 300, 290, 16, 5);

  /** 100 N whose middle is 400 mm out. */
  private static CylinderWork work() {
    return new CylinderWork(ABOUT_X, CYLINDER, 100, new Vector3D(0, 400, 0));
  }

  /** Pins 100 and 350 mm apart: 364.005 mm; arm 350 x 300 / 364.005 = 288.457 mm. */
  @Test
  void pinDistanceAndArmAsDrawn() {
    assertThat(work().lengthMm(0)).isCloseTo(364.005, within(0.0005));
    assertThat(work().armMm(0).value()).isCloseTo(288.457, within(0.0005));
  }

  /** 100 N x 400 mm / 288.457 mm = 138.669 N of push. */
  @Test
  void theWeightWantsItsMomentOverTheArm() {
    assertThat(work().at(0).neededN().value()).isCloseTo(138.669, within(0.0005));
  }

  /**
   * What the cylinder does along its way is what the weight gains: from 0 to 80 degrees the middle
   * rises by 400 sin 80 = 393.923 mm, 39 392.3 N mm.
   */
  @Test
  void theCylindersWorkLiftsTheWeight() {
    double sum = 0;
    int steps = 4000;
    for (int i = 0; i < steps; i++) {
      double from = 80.0 * i / steps;
      double to = 80.0 * (i + 1) / steps;
      double force = work().at((from + to) / 2).neededN().value();
      sum += force * (work().lengthMm(to) - work().lengthMm(from));
    }
    assertThat(sum).isCloseTo(39392.3, within(0.05));
  }

  private static List<String> faults(double toDeg, Swing.Cylinder cylinder, double weightN) {
    Swing swing = new Swing("leaf", List.of("leaf"), "leaf", 0, toDeg, Optional.of(cylinder));
    return new CylinderWork(ABOUT_X, cylinder, weightN, new Vector3D(0, 400, 0))
        .faults(swing).stream().map(SwingResult.Fault::why).toList();
  }

  private static Swing.Cylinder with(double boreMm, double closedMm, double strokeMm) {
    return new Swing.Cylinder(
        CYLINDER.fixedAt(), CYLINDER.movingAt(), boreMm, 15, closedMm, strokeMm, 16, 5);
  }

  @Test
  void aCylinderThatDoesAllHasNoFault() {
    assertThat(faults(50, with(50, 300, 290), 100)).isEmpty();
  }

  /** Drawn 364.0 mm apart: 360 closed leaves 4.0 mm, less than 5. */
  @Test
  void strokeMustBeLeftAtTheClosedEnd() {
    assertThat(faults(50, with(50, 360, 290), 100))
        .singleElement()
        .asString()
        .contains("come as near as 364.0 mm")
        .contains("4.0 mm of stroke are left, 5 mm are wanted");
  }

  @Test
  void strokeMustBeLeftAtTheOpenEnd() {
    assertThat(faults(50, with(50, 300, 200), 100))
        .singleElement()
        .asString()
        .contains("the cylinder is 500.0 mm long open");
  }

  /**
   * 16 MPa on 20 mm give 5026.5 N; 4000 N of weight want 4000 x 400 / 288.457 = 5546.8 N: 110 %.
   */
  @Test
  void aWeightBeyondItsForceIsSaid() {
    assertThat(faults(50, with(20, 300, 290), 4000))
        .singleElement()
        .asString()
        .contains("at 22.4 degrees the weight needs 115 %");
  }

  /**
   * The fixed pin lies at atan2(-350, 200) = -60.255 degrees; the moving pin is opposite to it
   * after 119.745 degrees.
   */
  @Test
  void overCentreIsWhereTheHingeLiesBetweenThePins() {
    assertThat(work().armMm(119.7).value()).isPositive();
    assertThat(work().armMm(119.8).value()).isNegative();
    assertThat(faults(150, with(50, 300, 450), 100))
        .anySatisfy(fault -> assertThat(fault).contains("goes over centre at 120.0 degrees"));
  }
}
