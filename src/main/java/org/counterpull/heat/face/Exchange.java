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
}
