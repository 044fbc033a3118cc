package org.counterpull.cooling;

import org.counterpull.quantity.Require;

/**
 * Time until a bead on a wide plate is down to a rise over the start temperature.
 *
 * <p><b>Formula:</b> thin (Q/d)/sqrt(4 pi lambda rc t) exp(-b t), b = 2 h/(rc d); thick Q/(2 pi
 * lambda t). <b>Source:</b> Rykalin 1957 (from memory). <b>Valid for:</b> plates much wider than
 * sqrt(4 a t); on a small plate the lumped time rules, see {@link #withBodyS}.
 */
public final class PlateCooling {
  private static final int HALVINGS = 200;

  private PlateCooling() {}

  /** Thick plate: wait in s. */
  public static double thickS(double netHeatJPerMm, Conductor metal, double riseK) {
    Require.positive("net heat", netHeatJPerMm, "J/mm");
    Require.positive("rise", riseK, "K");
    return netHeatJPerMm / (2 * Math.PI * metal.conductivityWPerMmK() * riseK);
  }

  /** Thin plate without loss: wait in s. */
  public static double thinWithoutLossS(
      double netHeatJPerMm, Conductor metal, double thicknessMm, double riseK) {
    Require.positive("net heat", netHeatJPerMm, "J/mm");
    Require.positive("thickness", thicknessMm, "mm");
    Require.positive("rise", riseK, "K");
    double ratio = netHeatJPerMm / (thicknessMm * riseK);
    return ratio
        * ratio
        / (4 * Math.PI * metal.conductivityWPerMmK() * metal.heatCapacityJPerMm3K());
  }

  /** Thin plate with loss from both faces, film coefficient of one face: wait in s. */
  public static double thinS(
      double netHeatJPerMm,
      Conductor metal,
      double thicknessMm,
      double riseK,
      double oneFaceWPerM2K) {
    Require.notNegative("film coefficient", oneFaceWPerM2K, "W/m2K");
    double lossPerS = metal.plateLossPerS(2 * oneFaceWPerM2K, thicknessMm);
    double low = 0;
    double high = thinWithoutLossS(netHeatJPerMm, metal, thicknessMm, riseK);
    for (int i = 0; i < HALVINGS && high - low > 1e-12 * high; i++) {
      double middle = (low + high) / 2;
      double rise =
          InstantSources.lineThroughThinK(netHeatJPerMm, metal, thicknessMm, 0, middle, lossPerS);
      if (rise > riseK) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }

  /**
   * The wait to plan: the longer of the plate and the body that warms as a whole. Conduction alone
   * can't bring a small plate below its mean temperature.
   */
  public static double withBodyS(double plateS, double lumpedS) {
    return Math.max(
        Require.notNegative("plate wait", plateS, "s"),
        Require.notNegative("lumped wait", lumpedS, "s"));
  }
}
