package org.counterpull.material;

/**
 * Metals with the temperature-dependent properties of the Eurocodes.
 *
 * <p><b>Source:</b> EN 1993-1-2, 3.2, 3.4 and annex C; EN 1999-1-2, 3.3 (from memory); density of
 * stainless steel EN 10088-1. <b>Valid for:</b> steel 20 to 1200 C, aluminium 0 to 500 C; outside,
 * the value at the end of the range is kept. The peak of carbon steel's specific heat at 735 C
 * belongs to heating.
 */
public enum Metal {
  CARBON_STEEL(7850, 20, 1200) {
    @Override
    double specificHeatInside(double c) {
      if (c < 600) {
        return 425 + c * (0.773 + c * (-1.69e-3 + c * 2.22e-6));
      }
      if (c < 735) {
        return 666 + 13002 / (738 - c);
      }
      return c < 900 ? 545 + 17820 / (c - 731) : 650;
    }

    @Override
    double conductivityInside(double c) {
      return c < 800 ? 54 - 0.0333 * c : 27.3;
    }

    @Override
    double elongationInside(double c) {
      if (c < 750) {
        return 1.2e-5 * c + 0.4e-8 * c * c - 2.416e-4;
      }
      return c <= 860 ? 0.011 : 2e-5 * c - 6.2e-3;
    }
  },
  STAINLESS_STEEL(7900, 20, 1200) {
    @Override
    double specificHeatInside(double c) {
      return 450 + c * (0.280 + c * (-2.91e-4 + c * 1.34e-7));
    }

    @Override
    double conductivityInside(double c) {
      return 14.6 + 0.0127 * c;
    }

    @Override
    double elongationInside(double c) {
      return (16 + 4.79e-3 * c - 1.243e-6 * c * c) * (c - 20) * 1e-6;
    }
  },
  /** 3xxx and 6xxx alloys. */
  ALUMINIUM_6XXX(2700, 0, 500) {
    @Override
    double specificHeatInside(double c) {
      return aluminiumSpecificHeat(c);
    }

    @Override
    double conductivityInside(double c) {
      return 0.07 * c + 190;
    }

    @Override
    double elongationInside(double c) {
      return aluminiumElongation(c);
    }
  },
  /** 5xxx and 7xxx alloys. */
  ALUMINIUM_5XXX(2700, 0, 500) {
    @Override
    double specificHeatInside(double c) {
      return aluminiumSpecificHeat(c);
    }

    @Override
    double conductivityInside(double c) {
      return 0.1 * c + 140;
    }

    @Override
    double elongationInside(double c) {
      return aluminiumElongation(c);
    }
  };

  private static final double W_PER_MMK = 1e-3;
  private static final double M3_PER_MM3 = 1e-9;

  private final double densityKgPerM3;
  private final double lowC;
  private final double highC;

  Metal(double densityKgPerM3, double lowC, double highC) {
    this.densityKgPerM3 = densityKgPerM3;
    this.lowC = lowC;
    this.highC = highC;
  }

  abstract double specificHeatInside(double c);

  abstract double conductivityInside(double c);

  abstract double elongationInside(double c);

  /** Density, taken as constant. */
  public double densityKgPerM3() {
    return densityKgPerM3;
  }

  /** Least temperature of the standard. */
  public double lowC() {
    return lowC;
  }

  /** Greatest temperature of the standard. */
  public double highC() {
    return highC;
  }

  /** Specific heat in J/kgK. */
  public double specificHeatJPerKgK(double temperatureC) {
    return specificHeatInside(inside(temperatureC));
  }

  /** Conductivity in W/mK. */
  public double conductivityWPerMK(double temperatureC) {
    return conductivityInside(inside(temperatureC));
  }

  /** Relative elongation from 20 C. */
  public double elongation(double temperatureC) {
    return elongationInside(inside(temperatureC));
  }

  /** Conductivity in W/mmK. */
  public double conductivityWPerMmK(double temperatureC) {
    return conductivityWPerMK(temperatureC) * W_PER_MMK;
  }

  /** Heat capacity by volume in J/mm3K. */
  public double heatCapacityJPerMm3K(double temperatureC) {
    return densityKgPerM3 * specificHeatJPerKgK(temperatureC) * M3_PER_MM3;
  }

  /** Diffusivity in mm2/s. */
  public double diffusivityMm2PerS(double temperatureC) {
    return conductivityWPerMmK(temperatureC) / heatCapacityJPerMm3K(temperatureC);
  }

  private double inside(double temperatureC) {
    return Math.min(Math.max(temperatureC, lowC), highC);
  }

  private static double aluminiumSpecificHeat(double c) {
    return 0.41 * c + 903;
  }

  private static double aluminiumElongation(double c) {
    return 0.1e-7 * c * c + 22.5e-6 * c - 4.5e-4;
  }
}
