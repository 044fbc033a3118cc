package org.counterpull.heat.material;

/**
 * Specific heat and conductivity of wrought aluminium alloys.
 *
 * <p>Source: from memory: EN 1999-1-2:2007, 3.3. Valid for 0 to 500 C.
 */
final class AluminiumHeat {
  static final double DENSITY_KG_PER_M3 = 2700;
  static final double UPPER_LIMIT_C = 500;

  private AluminiumHeat() {}

  /** Specific heat in J/kgK at a temperature in C. */
  static double specificHeatJPerKgK(double tempC) {
    return 0.41 * tempC + 903;
  }

  /** Conductivity of 3xxx and 6xxx alloys in W/mK at a temperature in C. */
  static double conductivity6xxxWPerMK(double tempC) {
    return 0.07 * tempC + 190;
  }

  /** Conductivity of 5xxx and 7xxx alloys in W/mK at a temperature in C. */
  static double conductivity5xxxWPerMK(double tempC) {
    return 0.1 * tempC + 140;
  }
}
