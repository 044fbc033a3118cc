package org.counterpull.heat.material;

/**
 * What a metal does above its standard's range: melting between two temperatures, latent heat, and
 * a liquid that conducts.
 *
 * @param solidusC temperature at which melting begins
 * @param liquidusC temperature at which it ends; above the solidus
 * @param latentHeatJPerKg heat of fusion, spread evenly between solidus and liquidus
 * @param liquidConductivityWPerMK conductivity of the pool, raised for its stirring
 */
public record Melting(
    double solidusC, double liquidusC, double latentHeatJPerKg, double liquidConductivityWPerMK) {

  public Melting {
    if (!(liquidusC > solidusC)) {
      throw new IllegalArgumentException(
          "liquidus " + liquidusC + " C must be above the solidus " + solidusC + " C");
    }
    if (!(latentHeatJPerKg >= 0)) {
      throw new IllegalArgumentException("latent heat " + latentHeatJPerKg + " J/kg is negative");
    }
    if (!(liquidConductivityWPerMK > 0)) {
      throw new IllegalArgumentException(
          "liquid conductivity " + liquidConductivityWPerMK + " W/mK must be positive");
    }
  }

  /** Specific heat with the latent heat in it. */
  double specificHeatJPerKgK(double tempC, double solidJPerKgK) {
    boolean mushy = tempC > solidusC && tempC < liquidusC;
    return mushy ? solidJPerKgK + latentHeatJPerKg / (liquidusC - solidusC) : solidJPerKgK;
  }

  /** Conductivity, going over from solid to liquid in a straight line. */
  double conductivityWPerMK(double tempC, double solidWPerMK) {
    double molten = Math.min(1, Math.max(0, (tempC - solidusC) / (liquidusC - solidusC)));
    return solidWPerMK + molten * (liquidConductivityWPerMK - solidWPerMK);
  }
}
