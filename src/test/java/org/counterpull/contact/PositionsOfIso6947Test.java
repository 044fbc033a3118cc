package org.counterpull.contact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.counterpull.contact.Bench.X;
import static org.counterpull.contact.Bench.Y;
import static org.counterpull.contact.Bench.Z;
import static org.counterpull.contact.Bench.at;
import static org.counterpull.contact.Bench.contact;
import static org.counterpull.contact.Bench.moved;
import static org.counterpull.contact.Bench.part;

import org.apache.commons.math3.geometry.euclidean.threed.Rotation;
import org.apache.commons.math3.geometry.euclidean.threed.RotationConvention;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.position.WeldingPosition;
import org.counterpull.stock.Flat;
import org.counterpull.stock.RoundBar;
import org.counterpull.weldment.Part;
import org.junit.jupiter.api.Test;

/** ISO 6947: the main positions, a tee and a butt turned into each. */
class PositionsOfIso6947Test {
  private static final Part BASE = part("base", new Flat(100, 10), 300, at(0, 0, -5), X, Z);
  private static final Part STEM = part("a", new Flat(80, 10), 60, at(150, 0, 0), Z, X);
  private static final Part NEXT = part("a", new Flat(100, 10), 200, at(300, 0, -5), X, Z);

  private static WeldLine turned(Part first, String run, Vector3D axis, double degrees) {
    Rotation turn = new Rotation(axis, Math.toRadians(degrees), RotationConvention.VECTOR_OPERATOR);
    Contact contact =
        contact(moved(first, turn, Vector3D.ZERO), moved(BASE, turn, Vector3D.ZERO), 0);
    return Bench.line(contact, run);
  }

  private static WeldingPosition fillet(double degreesAboutTheLine) {
    return turned(STEM, "j/right", Y, degreesAboutTheLine).position();
  }

  private static WeldingPosition butt(double degreesAboutTheLine) {
    return turned(NEXT, "j/top", Y, degreesAboutTheLine).position();
  }

  @Test
  void filletTurnedAboutItsLine() {
    assertThat(fillet(0)).isEqualTo(WeldingPosition.PB);
    assertThat(fillet(-45)).isEqualTo(WeldingPosition.PA);
    assertThat(fillet(45)).isEqualTo(WeldingPosition.PC);
    assertThat(fillet(90)).isEqualTo(WeldingPosition.PD);
    assertThat(fillet(135)).isEqualTo(WeldingPosition.PE);
  }

  @Test
  void buttTurnedAboutItsLine() {
    assertThat(butt(0)).isEqualTo(WeldingPosition.PA);
    assertThat(butt(90)).isEqualTo(WeldingPosition.PC);
    assertThat(butt(180)).isEqualTo(WeldingPosition.PE);
  }

  @Test
  void linesStoodUpAreVertical() {
    assertThat(turned(STEM, "j/right", X, 90).position()).isEqualTo(WeldingPosition.PF);
    assertThat(turned(NEXT, "j/top", X, 90).position()).isEqualTo(WeldingPosition.PF);
    assertThat(turned(NEXT, "j/top", X, 46).position()).isEqualTo(WeldingPosition.PF);
    assertThat(turned(NEXT, "j/top", X, 40).position()).isEqualTo(WeldingPosition.PA);
  }

  @Test
  void turnedOverIsTheOtherWayUp() {
    assertThat(turned(STEM, "j/right", Y, 0).position(Lay.TURNED_OVER))
        .isEqualTo(WeldingPosition.PD);
    assertThat(turned(NEXT, "j/top", Y, 0).position(Lay.TURNED_OVER)).isEqualTo(WeldingPosition.PE);
    assertThat(turned(NEXT, "j/bottom", Y, 0).position(Lay.TURNED_OVER))
        .isEqualTo(WeldingPosition.PA);
  }

  @Test
  void turningAboutTheVerticalChangesNothing() {
    for (int degrees = 0; degrees < 360; degrees += 7) {
      for (String run : new String[] {"j/left", "j/right", "j/front", "j/back"}) {
        assertThat(turned(STEM, run, Z, degrees).position()).isEqualTo(WeldingPosition.PB);
      }
      assertThat(turned(NEXT, "j/front", Z, degrees).position()).isEqualTo(WeldingPosition.PF);
    }
  }

  /** Around a bar on an upright plate the circle passes all positions; overhead is hardest. */
  @Test
  void aCircleOnAnUprightPlateHasItsHardestPosition() {
    Part bar = part("a", new RoundBar(30), 60, at(150, 0, 0), Z, X);
    assertThat(turned(bar, "j/outside", X, 90).position()).isEqualTo(WeldingPosition.PD);
    assertThat(turned(bar, "j/outside", X, 0).position()).isEqualTo(WeldingPosition.PB);
  }
}
