package org.counterpull.shrinkage;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Radial shrinkage of a tube under a weld round it.
 *
 * <p>w = 0.3354 (alpha / c) Q beta R / (2 h): the {@link TendonForce} of the weld acts as a hoop, P
 * = F / R, on the shell of {@link RingLoad}. Q is the sum over all passes: in a compliant tube each
 * pass pulls again. At a free end it is four times as much; it vanishes 3 pi / (4 beta) away.
 *
 * <p>Valid for: R / h from 5 to 100; otherwise a warning. Weakly supported by field data. Band:
 * {@code girth radial shrinkage} of {@link ErrorBand}.
 */
public final class GirthShrinkage {
  public static final Formula FORMULA =
      new Formula(
          "girth-shrinkage",
          "radial shrinkage under a weld round a tube",
          "mm",
          "derived; same reasoning as J. Farkas, Welding in the World 46, 2002");

  private GirthShrinkage() {}

  /**
   * The shrinkage of a carbon steel tube.
   *
   * @param netHeatJPerMm net heat of all passes, J/mm
   * @param radiusMm radius of the wall's middle, mm
   * @param thicknessMm wall thickness, mm
   */
  public static Computed of(double netHeatJPerMm, double radiusMm, double thicknessMm) {
    return of(netHeatJPerMm, radiusMm, thicknessMm, ShrinkageMaterial.CARBON_STEEL);
  }

  /** As the other, for any material. */
  public static Computed of(
      double netHeatJPerMm, double radiusMm, double thicknessMm, ShrinkageMaterial material) {
    double load = hoopLoadNPerMm(netHeatJPerMm, radiusMm, material);
    return FORMULA.result(
        RingLoad.deflectionMm(load, radiusMm, thicknessMm, material.elasticModulusMPa()),
        new Limits().within("radius over thickness", radiusMm / thicknessMm, 5, 100, "").outside());
  }

  /** Ring load that the weld's force makes, N per mm of circumference. */
  public static double hoopLoadNPerMm(
      double netHeatJPerMm, double radiusMm, ShrinkageMaterial material) {
    Require.positive("radius", radiusMm, "mm");
    return TendonForce.forceN(netHeatJPerMm, material) / radiusMm;
  }

  /** Distance from the weld at which its radial shrinkage first vanishes, mm. */
  public static double firstZeroMm(double radiusMm, double thicknessMm) {
    return 3 * Math.PI / (4 * RingLoad.betaPerMm(radiusMm, thicknessMm));
  }
}
