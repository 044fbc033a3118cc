package org.counterpull.shrinkage;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Angle of a single-V butt weld whose whole groove contracts at once: phi = 2 * 0.015 tan(theta/2).
 *
 * <p>Valid for: one pass; a lower bound for several. Included angles from 0 to 90 degrees; outside
 * a warning.
 */
public final class GrooveContractionAngle {
  public static final Formula FORMULA =
      new Formula(
          "groove-contraction-angle",
          "angle of a V butt weld filled at once",
          "rad",
          "from memory: Okerblom");

  private GrooveContractionAngle() {}

  /** The angle; {@code includedAngleDeg} of the groove, degrees. */
  public static Computed of(double includedAngleDeg) {
    Require.notNegative("groove angle", includedAngleDeg, "degrees");
    Require.below("groove angle", includedAngleDeg, 180, "degrees");
    return FORMULA.result(
        2 * 0.015 * Math.tan(Math.toRadians(includedAngleDeg) / 2),
        new Limits().within("groove angle", includedAngleDeg, 0, 90, "degrees").outside());
  }
}
