package org.counterpull.cooling;

import org.counterpull.quantity.Require;

/**
 * Heat that a surface gives to still air by convection and radiation.
 *
 * <p><b>Formula:</b> hc from the simplified laminar correlations, hr = eps sigma (T2 + Ta2)(T + Ta)
 * in kelvin. <b>Source:</b> Holman, Heat Transfer, table 7-2 (from memory); Stefan and Boltzmann.
 * <b>Valid for:</b> laminar air, 7 to 16 % high against full correlations; film coefficients are
 * good to 25 %. At or below ambient the convection is zero.
 */
public final class SurfaceHeatTransfer {
  /** Stefan-Boltzmann constant in W/m2K4, CODATA 2018. */
  public static final double SIGMA_W_PER_M2K4 = 5.670374419e-8;

  private static final double KELVIN = 273.15;
  private static final double M_PER_MM = 1e-3;

  /** How a face stands to the air. */
  public enum Face {
    VERTICAL(1.42),
    HORIZONTAL_CYLINDER(1.32),
    UPWARD(1.32),
    DOWNWARD(0.59);

    private final double factor;

    Face(double factor) {
      this.factor = factor;
    }
  }

  /**
   * The surroundings of a body.
   *
   * @param face how its faces stand
   * @param lengthMm height of a vertical face, diameter of a cylinder, side of a plate
   * @param emissivity 0 to 1: scale 0.8, bright 0.3, aluminium 0.2
   * @param ambientC air and walls
   */
  public record Surroundings(Face face, double lengthMm, double emissivity, double ambientC) {

    public Surroundings {
      Require.positive("length", lengthMm, "mm");
      Require.notNegative("emissivity", emissivity, "1");
      Require.finite("ambient", ambientC, "C");
    }

    /** Film coefficient of convection and radiation together in W/m2K. */
    public double filmWPerM2K(double surfaceC) {
      return convectionWPerM2K(face, surfaceC - ambientC, lengthMm)
          + radiationWPerM2K(emissivity, surfaceC, ambientC);
    }
  }

  private SurfaceHeatTransfer() {}

  /** Convection to still air in W/m2K. */
  public static double convectionWPerM2K(Face face, double overAmbientK, double lengthMm) {
    double lengthM = Require.positive("length", lengthMm, "mm") * M_PER_MM;
    return face.factor * Math.pow(Math.max(0, overAmbientK) / lengthM, 0.25);
  }

  /** Radiation as a film coefficient in W/m2K. */
  public static double radiationWPerM2K(double emissivity, double surfaceC, double ambientC) {
    double surfaceK = surfaceC + KELVIN;
    double ambientK = ambientC + KELVIN;
    return emissivity
        * SIGMA_W_PER_M2K4
        * (surfaceK * surfaceK + ambientK * ambientK)
        * (surfaceK + ambientK);
  }
}
