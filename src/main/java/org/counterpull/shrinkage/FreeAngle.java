package org.counterpull.shrinkage;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;

/**
 * Free angle by which one bead or fillet turns the plate that it lies on.
 *
 * <p>phi = phi_p (x / x_p) exp(1 - x / x_p), x = Q / h2, peak phi_p = 0.0233 rad at x_p = 6.2
 * J/mm3. Q is the net heat that goes into this plate (see {@link HeatShare}). It rounds off the
 * sharp form phi = 12 W (h/2 - 0.4244 H) / h3 of the half disc of {@link ShrinkZone}.
 *
 * <p>Valid for: x up to 10 J/mm3. Beyond the peak the shape of the curve is an assumption: the
 * value is returned with a warning. Band: {@code angle of a fillet or bead} of {@link ErrorBand}.
 */
public final class FreeAngle {
  public static final Formula FORMULA =
      new Formula(
          "free-angle",
          "free angle of the plate under one bead or fillet",
          "rad",
          "derived from the zone rule of H. Murakami et al., ISIJ International 61(7), 2021, p."
              + " 2143");

  /** Greatest angle, rad (derived; published peaks 0.012 to 0.04). */
  public static final double PEAK_ANGLE_RAD = 0.0233;

  /** Heat parameter of the greatest angle, J/mm3 (derived; published 5 to 12). */
  public static final double PEAK_HEAT_PARAMETER_J_PER_MM3 = 6.2;

  private FreeAngle() {}

  /**
   * The free angle.
   *
   * @param netHeatJPerMm net heat into this plate, J/mm, zero or more
   * @param thicknessMm its thickness, mm
   */
  public static Computed of(double netHeatJPerMm, double thicknessMm) {
    double x = FreeShrinkage.heatParameterJPerMm3(netHeatJPerMm, thicknessMm);
    return FORMULA.result(
        smoothRad(x), new Limits().within("heat parameter", x, 0, 10, "J/mm3").outside());
  }

  /** The smooth form over the heat parameter in J/mm3, rad. */
  public static double smoothRad(double heatParameterJPerMm3) {
    return smoothRad(heatParameterJPerMm3, PEAK_ANGLE_RAD, PEAK_HEAT_PARAMETER_J_PER_MM3);
  }

  /** The smooth form with a shop's own peak. */
  public static double smoothRad(
      double heatParameterJPerMm3, double peakAngleRad, double peakHeatParameterJPerMm3) {
    double ratio = heatParameterJPerMm3 / peakHeatParameterJPerMm3;
    return peakAngleRad * ratio * Math.exp(1 - ratio);
  }

  /** The sharp form of the half disc, rad; meant up to 10 J/mm3, zero from 13.94 J/mm3. */
  public static double sharpRad(double heatParameterJPerMm3, ShrinkageMaterial material) {
    double shrunkenArea = ShrinkZone.thickShrunkenAreaMm2(heatParameterJPerMm3, material);
    double radius = ShrinkZone.thickRadiusMm(heatParameterJPerMm3, material);
    double centroid = 4 / (3 * Math.PI) * radius;
    return Math.max(0, 12 * shrunkenArea * (0.5 - centroid));
  }
}
