package org.counterpull.strength;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * How far a fillet is used by the directional method: the larger of {@code sqrt(sigma^2 + 3 (tau^2
 * + tau^2)) beta_w gamma_M2 / f_u} and {@code sigma gamma_M2 / (0.9 f_u)}.
 *
 * <p><b>Source:</b> EN 1993-1-8:2005, 4.5.3.2.
 *
 * <p><b>Valid for:</b> as {@link EnShearStrength}. A force straight across gains {@code sqrt(1.5)}
 * over the simplified method, one along the weld gains nothing.
 */
public final class EnDirectional {
  public static final Formula FORMULA =
      new Formula(
          "fillet-utilisation",
          "how far a fillet is used, directional method",
          "1",
          "EN 1993-1-8:2005, 4.5.3.2");

  private EnDirectional() {}

  /**
   * Utilisation under the design load.
   *
   * @param stress on the throat
   * @param tensileMPa f_u of the weaker part, MPa, above 0
   * @param betaW correlation factor, above 0
   */
  public static Computed of(ThroatStress stress, double tensileMPa, double betaW) {
    return FORMULA.result(
        utilisation(stress, tensileMPa, betaW),
        new Limits().within("tensile strength", tensileMPa, 340, 720, "MPa").outside());
  }

  /** Utilisation; arguments as for {@link #of}. */
  public static double utilisation(ThroatStress stress, double tensileMPa, double betaW) {
    Require.positive("tensile strength", tensileMPa, "MPa");
    Require.positive("correlation factor", betaW, "1");
    double allMPa = tensileMPa / (betaW * EnShearStrength.GAMMA_M2);
    double normalMPa = 0.9 * tensileMPa / EnShearStrength.GAMMA_M2;
    return Math.max(stress.equivalentMPa() / allMPa, Math.abs(stress.normalMPa()) / normalMPa);
  }
}
