package org.counterpull.heat.material;

/**
 * Specific heat and conductivity of austenitic stainless steel.
 *
 * <p>Source: EN 1993-1-2:2005, Annex C.3. Valid for 20 to 1200 C.
 */
final class StainlessHeat {
  /** Density of grade 1.4301 at 20 C; from memory: producers' association data for 304. */
  static final double DENSITY_KG_PER_M3 = 7900;

  static final double UPPER_LIMIT_C = 1200;

  private StainlessHeat() {}

  /** Specific heat in J/kgK at a temperature in C. */
  static double specificHeatJPerKgK(double tempC) {
    return 450 + tempC * (0.280 + tempC * (-2.91e-4 + tempC * 1.34e-7));
  }

  /** Conductivity in W/mK at a temperature in C. */
  static double conductivityWPerMK(double tempC) {
    return 14.6 + 0.0127 * tempC;
  }
}
