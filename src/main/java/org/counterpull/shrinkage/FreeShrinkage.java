package org.counterpull.shrinkage;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Free transverse shrinkage of a plate under one weld bead or fillet.
 *
 * <p>S = kappa (alpha / c) Q / h, with kappa 0.7664 up to the heat parameter x = Q / h2 = 6 J/mm3
 * (half disc of the {@link ShrinkZone}), 1.008 from x = 10 J/mm3 (heated through), and linear
 * between. Q is the net heat that goes into this plate (see {@link HeatShare}).
 *
 * <p>Valid for: runs much longer than the heated zone, plates much wider than it, no restraint.
 * Outside it the value is returned with a warning. Band: {@code fillet transverse shrinkage} or
 * {@code transverse butt shrinkage} of {@link ErrorBand}.
 */
public final class FreeShrinkage {
  public static final Formula FORMULA =
      new Formula(
          "free-shrinkage",
          "free transverse shrinkage of the plate",
          "mm",
          "derived from the zone rule of H. Murakami et al., ISIJ International 61(7), 2021, p."
              + " 2143; the heat form from memory: Okerblom, Vinokurov, Nikolaev");

  /** Kappa where the zone is a half disc at the surface (derived). */
  public static final double KAPPA_SURFACE = 0.7664;

  /** Kappa where the plate is heated through (derived). */
  public static final double KAPPA_THROUGH = 1.008;

  private static final double SURFACE_UP_TO = 6;
  private static final double THROUGH_FROM = 10;

  private FreeShrinkage() {}

  /**
   * Free shrinkage of carbon steel.
   *
   * @param netHeatJPerMm net heat into this plate, J/mm, zero or more
   * @param thicknessMm its thickness, mm, 3 to 50 tried
   */
  public static Computed of(double netHeatJPerMm, double thicknessMm) {
    return of(netHeatJPerMm, thicknessMm, ShrinkageMaterial.CARBON_STEEL);
  }

  /** As the other, for any material. */
  public static Computed of(double netHeatJPerMm, double thicknessMm, ShrinkageMaterial material) {
    double x = heatParameterJPerMm3(netHeatJPerMm, thicknessMm);
    return FORMULA.result(
        shrinkageMm(kappa(x), netHeatJPerMm, thicknessMm, material),
        new Limits()
            .within("heat parameter", x, 0, 60, "J/mm3")
            .within("thickness", thicknessMm, 3, 50, "mm")
            .outside());
  }

  /** Heat parameter x = Q / h2, J/mm3. */
  public static double heatParameterJPerMm3(double netHeatJPerMm, double thicknessMm) {
    Require.notNegative("net heat", netHeatJPerMm, "J/mm");
    Require.positive("thickness", thicknessMm, "mm");
    return netHeatJPerMm / (thicknessMm * thicknessMm);
  }

  /** Share of the fully restrained expansion that stays, by the heat parameter in J/mm3. */
  public static double kappa(double heatParameterJPerMm3) {
    double through = (heatParameterJPerMm3 - SURFACE_UP_TO) / (THROUGH_FROM - SURFACE_UP_TO);
    return KAPPA_SURFACE + (KAPPA_THROUGH - KAPPA_SURFACE) * Math.min(1, Math.max(0, through));
  }

  /** The heat form with a kappa of the caller's choice, mm. */
  public static double shrinkageMm(
      double kappa, double netHeatJPerMm, double thicknessMm, ShrinkageMaterial material) {
    Require.positive("thickness", thicknessMm, "mm");
    return kappa * material.expansionPerHeatMm3PerJ() * netHeatJPerMm / thicknessMm;
  }
}
