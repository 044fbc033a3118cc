package org.counterpull.strength;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Require;

/**
 * Allowable shear per length of the metal beside a weld under the working load, the smaller of
 * {@code 0.40 f_y t} (yield) and {@code 0.30 f_u t} (rupture).
 *
 * <p><b>Source:</b> AISC 360, J4.2 with safety factors 1.5 and 2.0 (from memory).
 *
 * <p><b>Valid for:</b> rolled steel. The thickness counts once: a plate with a fillet on each side
 * carries what both bring.
 */
public final class BaseMetalShear {
  public static final Formula FORMULA =
      new Formula(
          "base-metal-shear",
          "allowable shear per length of the metal beside a weld, working load",
          "N/mm",
          "from memory: AISC 360, J4.2");

  private static final double YIELD_SHARE = 0.40;
  private static final double RUPTURE_SHARE = 0.30;

  private BaseMetalShear() {}

  /**
   * Allowable shear per length.
   *
   * @param yieldMPa f_y, MPa, above 0
   * @param tensileMPa f_u, MPa, above 0
   * @param thicknessMm above 0
   */
  public static Computed of(double yieldMPa, double tensileMPa, double thicknessMm) {
    Require.positive("yield strength", yieldMPa, "MPa");
    return FORMULA.result(
        Math.min(
            YIELD_SHARE * yieldMPa * Require.positive("thickness", thicknessMm, "mm"),
            ruptureNPerMm(tensileMPa, thicknessMm)));
  }

  /** {@code 0.30 f_u t}, N/mm. */
  public static double ruptureNPerMm(double tensileMPa, double thicknessMm) {
    Require.positive("tensile strength", tensileMPa, "MPa");
    return RUPTURE_SHARE * tensileMPa * Require.positive("thickness", thicknessMm, "mm");
  }

  /** Thickness whose shear rupture matches a force per length, mm. */
  public static double matchingThicknessMm(double tensileMPa, double nPerMm) {
    return Require.notNegative("force per length", nPerMm, "N/mm") / ruptureNPerMm(tensileMPa, 1);
  }
}
