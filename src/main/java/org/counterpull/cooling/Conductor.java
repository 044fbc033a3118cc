package org.counterpull.cooling;

import org.counterpull.quantity.Require;

/**
 * Constant thermal properties.
 *
 * @param conductivityWPerMmK conductivity
 * @param heatCapacityJPerMm3K heat capacity by volume
 */
public record Conductor(double conductivityWPerMmK, double heatCapacityJPerMm3K) {
  private static final double W_PER_MM2K = 1e-6;

  /** Low-alloy steel, Grong, Metallurgical Modelling of Welding, from memory. */
  public static final Conductor STEEL = new Conductor(0.025, 0.005);

  /** Steel of the AWS Welding Handbook, from memory. */
  public static final Conductor HANDBOOK_STEEL = new Conductor(0.028, 0.0044);

  public Conductor {
    Require.positive("conductivity", conductivityWPerMmK, "W/mmK");
    Require.positive("heat capacity", heatCapacityJPerMm3K, "J/mm3K");
  }

  /** Diffusivity a in mm2/s. */
  public double diffusivityMm2PerS() {
    return conductivityWPerMmK / heatCapacityJPerMm3K;
  }

  /** Loss rate b of a plate in 1/s, from the film coefficients of both faces added, in W/m2K. */
  double plateLossPerS(double bothFacesWPerM2K, double thicknessMm) {
    return bothFacesWPerM2K * W_PER_MM2K / (heatCapacityJPerMm3K * thicknessMm);
  }
}
