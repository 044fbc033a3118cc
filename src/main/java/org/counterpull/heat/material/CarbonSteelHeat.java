package org.counterpull.heat.material;

/**
 * Specific heat and conductivity of carbon steel.
 *
 * <p>Source: EN 1993-1-2:2005, 3.4.1.2 and 3.4.1.3. Valid for 20 to 1200 C; below 20 C the
 * polynomial is continued, above 1200 C the last value is held.
 */
final class CarbonSteelHeat {
  static final double DENSITY_KG_PER_M3 = 7850;
  static final double UPPER_LIMIT_C = 1200;

  private CarbonSteelHeat() {}

  /** Specific heat in J/kgK at a temperature in C. */
  static double specificHeatJPerKgK(double tempC) {
    if (tempC < 600) {
      return 425 + tempC * (0.773 + tempC * (-1.69e-3 + tempC * 2.22e-6));
    }
    if (tempC < 735) {
      return 666 + 13002 / (738 - tempC);
    }
    if (tempC < 900) {
      return 545 + 17820 / (tempC - 731);
    }
    return 650;
  }

  /** Conductivity in W/mK at a temperature in C. */
  static double conductivityWPerMK(double tempC) {
    return tempC < 800 ? 54 - 0.0333 * tempC : 27.3;
  }
}
