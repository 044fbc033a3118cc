package org.counterpull.feeding;

/**
 * Weld metal over filler bought, by process and what it is fed with.
 *
 * <p><b>Source:</b> filler metal handbook values (common practice, no source); stick values include
 * a stub of 50 mm.
 */
public enum DepositionEfficiency {
  SUBMERGED_ARC(0.99),
  GMAW_ARGON_OXYGEN(0.98),
  GMAW_ARGON_CO2(0.96),
  GMAW_CO2(0.93),
  METAL_CORED(0.93),
  FCAW_GAS(0.86),
  FCAW_SELF_SHIELDED(0.78),
  STICK_300_MM(0.59),
  STICK_350_MM(0.62),
  STICK_450_MM(0.66),
  GTAW(0.99);

  private final double ratio;

  DepositionEfficiency(double ratio) {
    this.ratio = ratio;
  }

  /** Weld metal over filler bought. */
  public double ratio() {
    return ratio;
  }

  /** Efficiency of a solid wire under a gas. */
  public static DepositionEfficiency ofSolidWire(ShieldingGas gas) {
    if (gas.argonPercent() >= 95) {
      return GMAW_ARGON_OXYGEN;
    }
    return gas.argonPercent() >= 50 ? GMAW_ARGON_CO2 : GMAW_CO2;
  }

  /** Filler to buy for a mass of weld metal, in the unit of the mass. */
  public double bought(double weldMetal) {
    return weldMetal / ratio;
  }
}
