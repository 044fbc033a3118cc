package org.counterpull.groove;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Mass of weld metal per length, {@code A rho}.
 *
 * <p><b>Source:</b> derived. Handbook tables of weld metal weights use 7.833 g/cm3 for steel (0.283
 * lb/in3), 0.2 % below the 7.85 g/cm3 used here unless another density is given.
 *
 * <p><b>Valid for:</b> any section; densities of 2.5 to 9 g/cm3.
 */
public final class WeldMetalMass {
  public static final Formula FORMULA =
      new Formula("weld-metal-mass", "mass of weld metal per length", "kg/m", "derived");

  /** Density of steel, g/cm3. */
  public static final double STEEL_G_PER_CM3 = 7.85;

  /** Density of steel in handbook tables, g/cm3. */
  public static final double HANDBOOK_STEEL_G_PER_CM3 = 7.833;

  private WeldMetalMass() {}

  /**
   * Mass per length.
   *
   * @param areaMm2 section of weld metal, mm2, 0 or above
   * @param densityGPerCm3 density, g/cm3, above 0
   */
  public static Computed of(double areaMm2, double densityGPerCm3) {
    Require.notNegative("weld section", areaMm2, "mm2");
    Require.positive("density", densityGPerCm3, "g/cm3");
    return FORMULA.result(
        areaMm2 * densityGPerCm3 / 1000,
        new Limits().within("density", densityGPerCm3, 2.5, 9, "g/cm3").outside());
  }

  /** Mass of steel weld metal, kg/m. */
  public static double steelKgPerM(double areaMm2) {
    return of(areaMm2, STEEL_G_PER_CM3).value();
  }
}
