package org.counterpull.shrinkage;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Require;

/**
 * What a tendon force along a beam does to it: shortening F / (E A) and camber F d L2 / (8 E I).
 *
 * <p>Valid for: a force over the whole length, plane sections, no buckling (see {@link
 * BucklingStress}).
 */
public final class TendonCamber {
  public static final Formula CAMBER =
      new Formula(
          "tendon-camber",
          "camber at mid-length from a tendon force",
          "mm",
          "from memory: J. Farkas and K. Jarmai, Economic Design of Metal Structures, 2003");

  public static final Formula SHORTENING =
      new Formula(
          "tendon-shortening",
          "longitudinal strain from a tendon force",
          "1",
          "from memory: J. Farkas and K. Jarmai, Economic Design of Metal Structures, 2003");

  private TendonCamber() {}

  /**
   * The camber.
   *
   * @param forceN tendon force, N
   * @param distanceMm distance of its line from the centroid, mm
   * @param lengthMm length of the beam, mm
   * @param inertiaMm4 second moment of area, mm4
   * @param elasticModulusMPa modulus of elasticity, N/mm2
   */
  public static Computed of(
      double forceN,
      double distanceMm,
      double lengthMm,
      double inertiaMm4,
      double elasticModulusMPa) {
    Require.finite("force", forceN, "N");
    Require.finite("distance", distanceMm, "mm");
    Require.positive("length", lengthMm, "mm");
    Require.positive("second moment of area", inertiaMm4, "mm4");
    Require.positive("modulus of elasticity", elasticModulusMPa, "N/mm2");
    return CAMBER.result(
        forceN * distanceMm * lengthMm * lengthMm / (8 * elasticModulusMPa * inertiaMm4));
  }

  /** Strain that the force gives over the area {@code areaMm2}, positive for shortening. */
  public static Computed shortening(double forceN, double areaMm2, double elasticModulusMPa) {
    Require.finite("force", forceN, "N");
    Require.positive("area", areaMm2, "mm2");
    Require.positive("modulus of elasticity", elasticModulusMPa, "N/mm2");
    return SHORTENING.result(forceN / (elasticModulusMPa * areaMm2));
  }
}
