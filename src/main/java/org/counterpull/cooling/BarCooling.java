package org.counterpull.cooling;

import org.counterpull.quantity.Require;

/**
 * Temperature along a strip, bar or tube heated at one section, with loss from its surface.
 *
 * <p><b>Formula:</b> s E/(A rc sqrt(4 pi a t)) exp(-x2/4at - b t), b = h P/(rc A). <b>Source:</b>
 * Carslaw and Jaeger, Conduction of Heat in Solids; Incropera (steady fin) (from memory). <b>Valid
 * for:</b> uniform section, evenly warm across it, constant film coefficient.
 *
 * @param metal constant properties
 * @param areaMm2 section
 * @param perimeterMm perimeter that gives off heat
 * @param filmWPerM2K film coefficient
 */
public record BarCooling(Conductor metal, double areaMm2, double perimeterMm, double filmWPerM2K) {
  private static final double W_PER_MM2K = 1e-6;
  private static final double NEGLIGIBLE = 1e-12;
  private static final int HALVINGS = 200;

  public BarCooling {
    Require.positive("section", areaMm2, "mm2");
    Require.notNegative("perimeter", perimeterMm, "mm");
    Require.notNegative("film coefficient", filmWPerM2K, "W/m2K");
  }

  /** Loss rate b in 1/s. */
  public double lossPerS() {
    return filmWPerM2K * W_PER_MM2K * perimeterMm / (metal.heatCapacityJPerMm3K() * areaMm2);
  }

  /** Rise in K at a distance from the heated section, far from both ends. */
  public double riseK(double netHeatJ, double xMm, double tS) {
    return InstantSources.planeInBarK(netHeatJ, metal, areaMm2, xMm, tS, lossPerS());
  }

  /** Rise in K when the heated section is a free end: all heat goes one way. */
  public double riseFromEndK(double netHeatJ, double xMm, double tS) {
    return 2 * riseK(netHeatJ, xMm, tS);
  }

  /** Rise in K at x in a bar from 0 to its length, heated at another place, ends without loss. */
  public double riseInFiniteBarK(
      double netHeatJ, double lengthMm, double heatedAtMm, double xMm, double tS) {
    Require.positive("length", lengthMm, "mm");
    double sum = riseK(netHeatJ, xMm - heatedAtMm, tS) + riseK(netHeatJ, xMm + heatedAtMm, tS);
    for (int n = 1; ; n++) {
      double pair = 0;
      for (double shift : new double[] {-2 * n * lengthMm, 2 * n * lengthMm}) {
        pair += riseK(netHeatJ, xMm - heatedAtMm + shift, tS);
        pair += riseK(netHeatJ, xMm + heatedAtMm + shift, tS);
      }
      sum += pair;
      if (pair <= NEGLIGIBLE * sum) {
        return sum;
      }
    }
  }

  /** Mean rise in K of a bar of a length, once heat has spread, with what was lost so far. */
  public double mixedRiseK(double netHeatJ, double lengthMm, double tS) {
    double volumeMm3 = Require.positive("length", lengthMm, "mm") * areaMm2;
    return netHeatJ / (volumeMm3 * metal.heatCapacityJPerMm3K()) * Math.exp(-lossPerS() * tS);
  }

  /** Time in s of the peak at a distance. */
  public double peakTimeS(double xMm) {
    double squareOverA = xMm * xMm / metal.diffusivityMm2PerS();
    double b = lossPerS();
    // Rationalised root of b t2 + t/2 - x2/4a = 0, good down to b = 0.
    return squareOverA / (1 + Math.sqrt(1 + 4 * b * squareOverA));
  }

  /** Peak rise in K at a distance. */
  public double peakRiseK(double netHeatJ, double xMm) {
    Require.positive("distance", Math.abs(xMm), "mm");
    return riseK(netHeatJ, xMm, peakTimeS(xMm));
  }

  /** Least distance in mm at which the peak rise stays at or below a limit. */
  public double distanceForPeakMm(double netHeatJ, double limitRiseK) {
    Require.positive("limit", limitRiseK, "K");
    double low = 0;
    double high = 1;
    while (peakRiseK(netHeatJ, high) > limitRiseK) {
      high *= 2;
    }
    for (int i = 0; i < HALVINGS && high - low > 1e-9 * high; i++) {
      double middle = (low + high) / 2;
      if (peakRiseK(netHeatJ, middle) > limitRiseK) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }

  /** Fin length 1/m in mm. */
  public double finLengthMm() {
    return Math.sqrt(
        metal.conductivityWPerMmK() * areaMm2 / (filmWPerM2K * W_PER_MM2K * perimeterMm));
  }

  /** Steady rise at a distance from an end held hot, over the rise of that end. */
  public double steadyRatio(double lengthMm, double xMm) {
    double m = 1 / finLengthMm();
    return Math.cosh(m * (lengthMm - xMm)) / Math.cosh(m * lengthMm);
  }
}
