package org.counterpull.shrinkage;

import org.counterpull.quantity.Require;

/**
 * The zone that shrinks across a weld: a strain of -0.012 wherever the peak temperature reached 500
 * C, with the peak temperatures of instantaneous line sources in an infinite body.
 *
 * <p>Thick plate: a half disc of area Q / (e c dT) and radius sqrt(2 Q / (pi e c dT)). Thin plate:
 * a band of width 0.4839 Q / (c h dT), the number being 2 / sqrt(2 pi e). The shrunken area is the
 * strain times the area of the zone; free transverse shrinkage is the shrunken area over the
 * thickness.
 *
 * <p>Source: the strain and the temperature from H. Murakami et al., ISIJ International 61(7),
 * 2021, p. 2143 (five MAG conditions); the geometry derived from the standard line-source forms.
 * Valid for: carbon steel; a plate much wider than the zone and a run much longer than it.
 */
public final class ShrinkZone {
  /** Shrinkage strain of the zone (Murakami et al. 2021). */
  public static final double STRAIN = 0.012;

  /** Rise above the 20 C start that bounds the zone, K (Murakami et al. 2021). */
  public static final double PEAK_RISE_K = 480;

  private static final double TWO_OVER_SQRT_TWO_PI_E = 2 / Math.sqrt(2 * Math.PI * Math.E);

  private ShrinkZone() {}

  /** Radius of the half disc in thick plate, mm. */
  public static double thickRadiusMm(double netHeatJPerMm, ShrinkageMaterial material) {
    return Math.sqrt(2 * thickAreaMm2(netHeatJPerMm, material) / Math.PI);
  }

  /** Area of the half disc in thick plate, mm2. */
  public static double thickAreaMm2(double netHeatJPerMm, ShrinkageMaterial material) {
    Require.notNegative("net heat", netHeatJPerMm, "J/mm");
    return netHeatJPerMm / (Math.E * material.heatCapacityJPerMm3K() * PEAK_RISE_K);
  }

  /** Shrunken area of thick plate, mm2. */
  public static double thickShrunkenAreaMm2(double netHeatJPerMm, ShrinkageMaterial material) {
    return STRAIN * thickAreaMm2(netHeatJPerMm, material);
  }

  /** Width of the band in through-heated plate, mm. */
  public static double thinWidthMm(
      double netHeatJPerMm, double thicknessMm, ShrinkageMaterial material) {
    Require.positive("thickness", thicknessMm, "mm");
    return thinAreaMm2(netHeatJPerMm, material) / thicknessMm;
  }

  /** Shrunken area of through-heated plate, mm2; the thickness cancels. */
  public static double thinShrunkenAreaMm2(double netHeatJPerMm, ShrinkageMaterial material) {
    return STRAIN * thinAreaMm2(netHeatJPerMm, material);
  }

  private static double thinAreaMm2(double netHeatJPerMm, ShrinkageMaterial material) {
    Require.notNegative("net heat", netHeatJPerMm, "J/mm");
    return TWO_OVER_SQRT_TWO_PI_E * netHeatJPerMm / (material.heatCapacityJPerMm3K() * PEAK_RISE_K);
  }
}
