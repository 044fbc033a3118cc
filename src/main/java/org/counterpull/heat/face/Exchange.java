package org.counterpull.heat.face;

/**
 * Heat transfer of one patch: {@code h(T) = fixed + natural |T - Ta|^(1/4) + eps sigma (T^2 +
 * Ta^2)(T + Ta)}, the last in kelvin.
 *
 * @param bodyC temperature of the other side
 * @param fixedWPerM2K constant part
 * @param hotNatural factor of natural convection while the metal is hotter, W/m2K per K^0.25
 * @param coldNatural the same while it is colder
 * @param emissivity 0 to 1
 */
public record Exchange(
    double bodyC, double fixedWPerM2K, double hotNatural, double coldNatural, double emissivity) {
  /** Stefan-Boltzmann constant, W/m2K4; CODATA 2018. */
  public static final double SIGMA = 5.670374e-8;

  private static final double KELVIN = 273.15;
  private static final double W_PER_MM2K = 1e-6;

  /** Nearer than this the slope of natural convection, endless at 0, is left out. */
  private static final double LEAST_APART_K = 0.5;

  /** Nothing is exchanged. */
  public static final Exchange NONE = new Exchange(0, 0, 0, 0, 0);

  /** Whether nothing is ever exchanged. */
  public boolean nothing() {
    return fixedWPerM2K == 0 && hotNatural == 0 && coldNatural == 0 && emissivity == 0;
  }

  /** The coefficient in W/mm2K at a surface temperature in C. */
  public double coefficientWPerMm2K(double surfaceC) {
    double h = fixedWPerM2K;
    double apart = surfaceC - bodyC;
    if (hotNatural != 0 || coldNatural != 0) {
      double factor = apart >= 0 ? hotNatural : coldNatural;
      h += factor * Math.sqrt(Math.sqrt(Math.abs(apart)));
    }
    if (emissivity != 0) {
      double surface = surfaceC + KELVIN;
      double body = bodyC + KELVIN;
      h += emissivity * SIGMA * (surface * surface + body * body) * (surface + body);
    }
    return h * W_PER_MM2K;
  }

  /** How the coefficient rises with the surface temperature, W/mm2K2. */
  public double slopeWPerMm2K2(double surfaceC) {
    double slope = 0;
    double apart = surfaceC - bodyC;
    if (Math.abs(apart) > LEAST_APART_K) {
      double factor = apart >= 0 ? hotNatural : coldNatural;
      slope += factor * Math.sqrt(Math.sqrt(Math.abs(apart))) / (4 * apart);
    }
    if (emissivity != 0) {
      double surface = surfaceC + KELVIN;
      double body = bodyC + KELVIN;
      slope += emissivity * SIGMA * (3 * surface * surface + 2 * surface * body + body * body);
    }
    return slope * W_PER_MM2K;
  }
}
