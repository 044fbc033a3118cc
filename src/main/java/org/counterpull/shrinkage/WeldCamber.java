package org.counterpull.shrinkage;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Camber of a beam from a longitudinal weld off its axis, by the area of the weld.
 *
 * <p>f = 0.005 A L2 d / I: as if 4 % of the weld's area had shrunk away. It agrees with {@link
 * TendonCamber} at a net heat of 48.7 J per mm3 of deposit.
 *
 * <p>Valid for: one or two passes on beams at least ten times as long as the weld's distance from
 * the axis; otherwise a warning. Band: {@code camber} of {@link ErrorBand}.
 */
public final class WeldCamber {
  public static final Formula FORMULA =
      new Formula(
          "weld-camber",
          "camber at mid-length",
          "mm",
          "from memory: O. W. Blodgett, Design of Welded Structures, 1966, 7.7");

  private WeldCamber() {}

  /**
   * The camber, towards the weld's side hollow.
   *
   * @param weldAreaMm2 area of deposited metal of all runs on that line, mm2
   * @param distanceMm distance of the weld from the section's centroid, mm
   * @param lengthMm length of the beam, mm
   * @param inertiaMm4 second moment of area about the axis of bending, mm4
   */
  public static Computed of(
      double weldAreaMm2, double distanceMm, double lengthMm, double inertiaMm4) {
    Require.notNegative("weld area", weldAreaMm2, "mm2");
    Require.finite("distance", distanceMm, "mm");
    Require.positive("length", lengthMm, "mm");
    Require.positive("second moment of area", inertiaMm4, "mm4");
    return FORMULA.result(
        0.005 * weldAreaMm2 * lengthMm * lengthMm * distanceMm / inertiaMm4,
        new Limits()
            .expect(
                lengthMm >= 10 * Math.abs(distanceMm),
                "the beam is shorter than ten times the weld's distance from its axis")
            .outside());
  }
}
