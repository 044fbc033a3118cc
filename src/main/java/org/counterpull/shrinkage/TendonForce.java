package org.counterpull.shrinkage;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Shrinkage force along a weld.
 *
 * <p>F = 0.3354 E (alpha / c) Q, 0.3354 = 2 ln 2 / sqrt(2 pi e): the integral of the strain that
 * yielded beside a moving line source in thin plate. The yield stress cancels.
 *
 * <p>Valid for: plates wider than the yielded band (see {@link #yieldedBandMm}); Q of one pass,
 * from 100 to 5000 J/mm. Outside it a warning. Other published factors for steel: 170 (physical net
 * heat) to 200 N per J/mm; band {@code tendon force} of {@link ErrorBand}.
 */
public final class TendonForce {
  public static final Formula FORMULA =
      new Formula(
          "tendon-force",
          "shrinkage force along the weld",
          "N",
          "from memory: Okerblom; J. D. White, Cambridge CUED/C-Struct/TR.57, 1977; J. Farkas and"
              + " K. Jarmai, Economic Design of Metal Structures, 2003; factor derived");

  /** 2 ln 2 / sqrt(2 pi e). */
  public static final double FACTOR = 2 * Math.log(2) / Math.sqrt(2 * Math.PI * Math.E);

  /** Upper published factor for steel, N per J/mm (from memory: White 1977). */
  public static final double UPPER_STEEL_N_PER_J_PER_MM = 200;

  /** Least and greatest share that a second weld in the same band adds (from memory). */
  public static final double OVERLAP_LOW = 0.15;

  public static final double OVERLAP_HIGH = 0.30;

  private TendonForce() {}

  /**
   * The force in carbon steel.
   *
   * @param netHeatJPerMm net heat of the weld, J/mm, zero or more
   */
  public static Computed of(double netHeatJPerMm) {
    return of(netHeatJPerMm, ShrinkageMaterial.CARBON_STEEL);
  }

  /** As the other, for any material. */
  public static Computed of(double netHeatJPerMm, ShrinkageMaterial material) {
    return FORMULA.result(
        forceN(netHeatJPerMm, material),
        new Limits().within("net heat", netHeatJPerMm, 100, 5000, "J/mm").outside());
  }

  /** The force as a plain number, N. */
  public static double forceN(double netHeatJPerMm, ShrinkageMaterial material) {
    Require.notNegative("net heat", netHeatJPerMm, "J/mm");
    return FACTOR
        * material.elasticModulusMPa()
        * material.expansionPerHeatMm3PerJ()
        * netHeatJPerMm;
  }

  /**
   * Half width of the fully yielded band, mm; yielding fades out at twice this distance.
   *
   * @param netHeatJPerMm net heat, J/mm
   * @param thicknessMm plate thickness, mm
   * @param yieldMPa yield stress, N/mm2
   */
  public static double yieldedBandMm(
      double netHeatJPerMm, double thicknessMm, double yieldMPa, ShrinkageMaterial material) {
    Require.notNegative("net heat", netHeatJPerMm, "J/mm");
    Require.positive("thickness", thicknessMm, "mm");
    Require.positive("yield stress", yieldMPa, "N/mm2");
    double yieldRiseK = yieldMPa / (material.elasticModulusMPa() * material.expansionPerK());
    return netHeatJPerMm
        / (Math.sqrt(2 * Math.PI * Math.E)
            * material.heatCapacityJPerMm3K()
            * thicknessMm
            * 2
            * yieldRiseK);
  }

  /**
   * Force of two welds whose bands overlap in stiff plate: the greater one and a share of the
   * other.
   *
   * @param greaterN force of the greater weld, N
   * @param lesserN force of the other one, N
   * @param distanceMm distance between the two weld lines, mm
   * @param bandMm half width of the yielded band, mm
   * @param addedShare share of the lesser force that comes on top, {@link #OVERLAP_LOW} to {@link
   *     #OVERLAP_HIGH}; where the bands don't overlap all of it does
   */
  public static double overlappingN(
      double greaterN, double lesserN, double distanceMm, double bandMm, double addedShare) {
    Require.within("lesser force", lesserN, 0, greaterN, "N");
    return greaterN + (distanceMm < bandMm ? addedShare : 1) * lesserN;
  }
}
