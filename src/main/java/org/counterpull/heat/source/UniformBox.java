package org.counterpull.heat.source;

/**
 * Even power in a box whose top lies on the path.
 *
 * @param lengthMm along the travel
 * @param widthMm across, half on either side
 * @param depthMm into the metal
 */
public record UniformBox(double lengthMm, double widthMm, double depthMm) implements SourceShape {

  public UniformBox {
    if (!(lengthMm > 0 && widthMm > 0 && depthMm > 0)) {
      throw new IllegalArgumentException(
          "source box needs sizes above 0: "
              + lengthMm
              + " x "
              + widthMm
              + " x "
              + depthMm
              + " mm");
    }
  }

  @Override
  public double shareBehind(double alongMm) {
    return Math.max(0, Math.min(1, alongMm / lengthMm + 0.5));
  }

  @Override
  public double alongPerMm(double alongMm) {
    return Math.abs(alongMm) <= 0.5 * lengthMm ? 1 / lengthMm : 0;
  }

  @Override
  public double across(double acrossMm, double intoMm) {
    return Math.abs(acrossMm) <= 0.5 * widthMm && intoMm >= 0 && intoMm <= depthMm ? 1 : 0;
  }

  @Override
  public double reachAlongMm() {
    return 0.5 * lengthMm;
  }

  @Override
  public double reachAcrossMm() {
    return Math.hypot(0.5 * widthMm, depthMm);
  }

  @Override
  public double detailMm() {
    return Math.min(lengthMm, Math.min(0.5 * widthMm, depthMm));
  }
}
