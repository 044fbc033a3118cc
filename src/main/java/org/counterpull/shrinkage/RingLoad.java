package org.counterpull.shrinkage;

import org.counterpull.quantity.Require;

/**
 * A long cylindrical shell under a ring load: the beam on an elastic foundation.
 *
 * <p>beta4 = 3 (1 - nu2) / (R2 h2); deflection under a ring load P per length of circumference P
 * beta R2 / (2 E h), fading as e^-bz (cos bz + sin bz). Lengths z and a are given times beta.
 *
 * <p>Source: from memory, S. Timoshenko and S. Woinowsky-Krieger, Theory of Plates and Shells,
 * 1959, chapter 15; the free end by end-conditioning forces, from memory, M. Hetenyi, Beams on
 * Elastic Foundation, 1946. Valid for: thin tubes (R / h above 5), one end at least pi / beta away.
 */
public final class RingLoad {
  private static final double POISSON = 0.3;

  private RingLoad() {}

  /** Beta of a tube, 1/mm, for nu 0.3; radius of the wall's middle and thickness in mm. */
  public static double betaPerMm(double radiusMm, double thicknessMm) {
    Require.positive("radius", radiusMm, "mm");
    Require.positive("thickness", thicknessMm, "mm");
    return Math.pow(3 * (1 - POISSON * POISSON), 0.25) / Math.sqrt(radiusMm * thicknessMm);
  }

  /** Deflection under a ring load far from the ends, mm; load per circumference in N/mm. */
  public static double deflectionMm(
      double loadNPerMm, double radiusMm, double thicknessMm, double elasticModulusMPa) {
    Require.finite("ring load", loadNPerMm, "N/mm");
    Require.positive("modulus of elasticity", elasticModulusMPa, "N/mm2");
    return loadNPerMm
        * betaPerMm(radiusMm, thicknessMm)
        * radiusMm
        * radiusMm
        / (2 * elasticModulusMPa * thicknessMm);
  }

  /** Shape of the deflection: e^-x (cos x + sin x). */
  public static double deflectionShape(double x) {
    return Math.exp(-x) * (Math.cos(x) + Math.sin(x));
  }

  /** Shape of the bending moment: e^-x (cos x - sin x). */
  public static double momentShape(double x) {
    return Math.exp(-x) * (Math.cos(x) - Math.sin(x));
  }

  /** Shape of the shear force: e^-x cos x. */
  public static double shearShape(double x) {
    return Math.exp(-x) * Math.cos(x);
  }

  /** Shape of the slope: e^-x sin x. */
  public static double slopeShape(double x) {
    return Math.exp(-x) * Math.sin(x);
  }

  /**
   * Deflection near a free end over that under the same load far from the ends.
   *
   * @param load beta times the distance of the load from the end, zero or more
   * @param place beta times the distance from the end of the place asked for, zero or more
   */
  public static double nearFreeEnd(double load, double place) {
    Require.notNegative("distance of the load", load, "");
    Require.notNegative("distance of the place", place, "");
    double moment = momentShape(load);
    double shear = shearShape(load);
    return deflectionShape(Math.abs(place - load))
        + (moment + 2 * shear) * deflectionShape(place)
        - 2 * (moment + shear) * slopeShape(place);
  }

  /** Radial shrinkage in the middle of a band of width 2c that shrinks by a hoop strain, mm. */
  public static double shrunkBandMm(double hoopStrain, double radiusMm, double halfWidthBeta) {
    Require.finite("hoop strain", hoopStrain, "");
    Require.positive("radius", radiusMm, "mm");
    return hoopStrain * radiusMm * (1 - shearShape(halfWidthBeta));
  }
}
