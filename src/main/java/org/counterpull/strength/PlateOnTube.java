package org.counterpull.strength;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * What the wall of a round tube carries under a plate that stands on it along the tube: pull or
 * push 5 f_y t2 (1 + 0.25 h/d) / gamma_M5, moment in the plate's plane h times that.
 *
 * <p><b>Source:</b> from memory: EN 1993-1-8:2005, table 7.3, longitudinal plates, with k_p = 1
 * (tube without load of its own) and gamma_M5 = 1.0. <b>Valid for:</b> d/t from 10 to 50, plates up
 * to four diameters long; otherwise a warning.
 */
public final class PlateOnTube {
  public static final Formula PULL =
      new Formula(
          "plate-on-tube-pull",
          "design pull of a plate along a round tube, by the tube's wall",
          "N",
          "from memory: EN 1993-1-8:2005, table 7.3");

  public static final Formula MOMENT =
      new Formula(
          "plate-on-tube-moment",
          "design moment in the plane of a plate along a round tube, by the tube's wall",
          "N mm",
          "from memory: EN 1993-1-8:2005, table 7.3");

  private PlateOnTube() {}

  /**
   * Pull or push square to the tube, N.
   *
   * @param outsideMm diameter d, mm
   * @param wallMm wall t, mm
   * @param lengthMm length of the plate along the tube h, mm
   * @param yieldMPa yield of the wall beside the weld, MPa
   */
  public static Computed pull(double outsideMm, double wallMm, double lengthMm, double yieldMPa) {
    Require.positive("yield", yieldMPa, "MPa");
    double slender = lengthOverDiameter(outsideMm, lengthMm);
    return PULL.result(
        5 * yieldMPa * wallMm * wallMm * (1 + 0.25 * slender), limits(outsideMm, wallMm, slender));
  }

  /** Moment in the plane of plate and tube, N mm; arguments as for {@link #pull}. */
  public static Computed moment(double outsideMm, double wallMm, double lengthMm, double yieldMPa) {
    return MOMENT.result(
        lengthMm * pull(outsideMm, wallMm, lengthMm, yieldMPa).value(),
        limits(outsideMm, wallMm, lengthOverDiameter(outsideMm, lengthMm)));
  }

  private static double lengthOverDiameter(double outsideMm, double lengthMm) {
    return Require.positive("length of the plate", lengthMm, "mm")
        / Require.positive("outside diameter", outsideMm, "mm");
  }

  private static java.util.List<String> limits(double outsideMm, double wallMm, double slender) {
    Require.positive("wall", wallMm, "mm");
    return new Limits()
        .within("diameter over wall", outsideMm / wallMm, 10, 50, "")
        .within("plate length over diameter", slender, 0, 4, "")
        .outside();
  }
}
