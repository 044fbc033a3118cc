package org.counterpull.reading;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.space.Face;
import org.counterpull.space.Frame;

/** How a file places a part. */
sealed interface Position {

  /** Placed in the weldment's axes. */
  record Fixed(Frame frame) implements Position {}

  /** Set onto another part. */
  record Onto(
      String base, Face face, Setting setting, Spot at, Spot across, double turnedDeg, double gapMm)
      implements Position {}

  /**
   * How a part is set on a face.
   *
   * @param stance which of its faces looks at the base
   * @param along true when it runs along the base, false when across
   */
  record Setting(Stance stance, boolean along) {
    static Setting of(String words) {
      Stance stance =
          words.startsWith("lying")
              ? Stance.LYING
              : words.startsWith("on edge") ? Stance.ON_EDGE : Stance.STANDING;
      return new Setting(stance, words.endsWith("along"));
    }
  }

  /** Which face of the part looks at the base: bottom, front, or its left end. */
  enum Stance {
    LYING,
    ON_EDGE,
    STANDING
  }

  /**
   * The frame of a part that is set onto another one.
   *
   * @param box of the part
   * @param base frame of the other part
   * @param baseBox box of the other part
   */
  static Frame resolve(Onto onto, Box box, Frame base, Box baseBox) {
    Vector3D normal = onto.face().normal();
    Vector3D u = alongOf(onto.face());
    Vector3D v = acrossOf(onto.face());
    Vector3D run = turned(onto.setting().along() ? u : v, normal, onto.turnedDeg());
    Vector3D x = onto.setting().stance() == Stance.STANDING ? normal : run;
    Vector3D y =
        switch (onto.setting().stance()) {
          case LYING -> normal.crossProduct(run);
          case ON_EDGE -> normal;
          case STANDING -> run;
        };
    Vector3D z = x.crossProduct(y);
    Frame local = new Frame(Vector3D.ZERO, x, y, z);
    double halfU = box.halfAlong(local.directionInto(u));
    double halfV = box.halfAlong(local.directionInto(v));
    double raised =
        baseBox.halfAlong(normal) + onto.gapMm() + box.halfAlong(local.directionInto(normal));
    Vector3D middle =
        new Vector3D(baseBox.lengthMm() / 2, 0, 0)
            .add(u.scalarMultiply(onto.at().middleMm(2 * baseBox.halfAlong(u), halfU)))
            .add(v.scalarMultiply(onto.across().middleMm(2 * baseBox.halfAlong(v), halfV)))
            .add(normal.scalarMultiply(raised));
    Vector3D origin = middle.subtract(x.scalarMultiply(box.lengthMm() / 2));
    return Frame.of(base.outOf(origin), base.directionOutOf(x), base.directionOutOf(z));
  }

  /** The direction of {@code at} on a face: the part's length, or its y on an end. */
  static Vector3D alongOf(Face face) {
    return switch (face) {
      case TOP, BOTTOM, FRONT, BACK -> Vector3D.PLUS_I;
      case LEFT, RIGHT -> Vector3D.PLUS_J;
    };
  }

  /** The direction of {@code across} on a face. */
  static Vector3D acrossOf(Face face) {
    return switch (face) {
      case TOP, BOTTOM -> Vector3D.PLUS_J;
      case FRONT, BACK, LEFT, RIGHT -> Vector3D.PLUS_K;
    };
  }

  /** A direction in the face, turned about its normal; quarter turns are exact. */
  private static Vector3D turned(Vector3D direction, Vector3D normal, double degrees) {
    double quarters = degrees / 90;
    double cos = Math.cos(Math.toRadians(degrees));
    double sin = Math.sin(Math.toRadians(degrees));
    if (quarters == Math.rint(quarters)) {
      cos = Math.rint(cos);
      sin = Math.rint(sin);
    }
    return new Vector3D(cos, direction, sin, normal.crossProduct(direction));
  }
}
