package org.counterpull.cooling;

import org.apache.commons.math3.special.Erf;
import org.counterpull.quantity.Require;

/**
 * Temperature rises after heat put in at an instant: fast beads, tacks and spots. All in K, with
 * time in s since the heat was put in.
 *
 * <p><b>Source:</b> Rykalin, Berechnung der Wärmevorgänge beim Schweißen, 1957; Carslaw and Jaeger.
 * Peaks are exact consequences. <b>Valid for:</b> constant properties; beads with v r / 2a over
 * about 3 to 5. Negative heat or time throws. Mirror a source for each end or edge near it.
 */
public final class InstantSources {
  private static final double ROOT_2_PI_E = Math.sqrt(2 * Math.PI * Math.E);
  private static final double NEGLIGIBLE = 1e-12;

  private InstantSources() {}

  /** A bead on thick plate: Q/(2 pi lambda t) exp(-r2/4at). */
  public static double lineOnThickK(double heatJPerMm, Conductor m, double rMm, double tS) {
    time(tS);
    return heatJPerMm
        / (2 * Math.PI * m.conductivityWPerMmK() * tS)
        * Math.exp(-rMm * rMm / (4 * m.diffusivityMm2PerS() * tS));
  }

  /** A bead on plate of any thickness, by mirror images at 2 i d. */
  public static double lineOnPlateK(
      double heatJPerMm, Conductor m, double thicknessMm, double yMm, double zMm, double tS) {
    Require.positive("thickness", thicknessMm, "mm");
    double spread = 4 * m.diffusivityMm2PerS() * time(tS);
    double sum = Math.exp(-zMm * zMm / spread);
    for (int i = 1; ; i++) {
      double above = zMm - 2 * i * thicknessMm;
      double below = zMm + 2 * i * thicknessMm;
      double pair = Math.exp(-above * above / spread) + Math.exp(-below * below / spread);
      sum += pair;
      if (pair <= NEGLIGIBLE * sum) {
        return lineOnThickK(heatJPerMm, m, yMm, tS) * sum;
      }
    }
  }

  /** A bead through thin plate: (Q/d)/sqrt(4 pi lambda rc t) exp(-y2/4at - b t). */
  public static double lineThroughThinK(
      double heatJPerMm, Conductor m, double thicknessMm, double yMm, double tS, double lossPerS) {
    Require.positive("thickness", thicknessMm, "mm");
    return planeInBarK(heatJPerMm, m, thicknessMm, yMm, tS, lossPerS);
  }

  /** A spot on thick plate: 2E/(rc (4 pi a t)^1.5) exp(-r2/4at). */
  public static double pointOnThickK(double heatJ, Conductor m, double rMm, double tS) {
    double spread = 4 * m.diffusivityMm2PerS() * time(tS);
    return 2
        * heatJ
        / (m.heatCapacityJPerMm3K() * Math.pow(Math.PI * spread, 1.5))
        * Math.exp(-rMm * rMm / spread);
  }

  /** A spot on thin plate: E/(4 pi lambda d t) exp(-r2/4at - b t). */
  public static double pointOnThinK(
      double heatJ, Conductor m, double thicknessMm, double rMm, double tS, double lossPerS) {
    time(tS);
    return heatJ
        / (Require.positive("thickness", thicknessMm, "mm")
            * 4
            * Math.PI
            * m.conductivityWPerMmK()
            * tS)
        * Math.exp(-rMm * rMm / (4 * m.diffusivityMm2PerS() * tS) - lossPerS * tS);
  }

  /** A whole section of a bar: E/(A rc sqrt(4 pi a t)) exp(-x2/4at - b t). */
  public static double planeInBarK(
      double heatJ, Conductor m, double areaMm2, double xMm, double tS, double lossPerS) {
    double spread = 4 * m.diffusivityMm2PerS() * time(tS);
    return heatJ
        / (Require.positive("section", areaMm2, "mm2")
            * m.heatCapacityJPerMm3K()
            * Math.sqrt(Math.PI * spread))
        * Math.exp(-xMm * xMm / spread - lossPerS * tS);
  }

  /** A bead from x = 0 to its length on thick plate: the line times the share that it reaches. */
  public static double beadOnThickK(
      double heatJPerMm, Conductor m, double lengthMm, double xMm, double rMm, double tS) {
    double spread = Math.sqrt(4 * m.diffusivityMm2PerS() * time(tS));
    double share = 0.5 * (Erf.erf(xMm / spread) - Erf.erf((xMm - lengthMm) / spread));
    return lineOnThickK(heatJPerMm, m, rMm, tS) * share;
  }

  /** Peak beside a bead on thick plate: 2Q/(pi e rc r2). */
  public static double peakOnThickK(double heatJPerMm, Conductor m, double rMm) {
    Require.positive("distance", rMm, "mm");
    return 2 * heatJPerMm / (Math.PI * Math.E * m.heatCapacityJPerMm3K() * rMm * rMm);
  }

  /** Peak beside a bead through thin plate: (Q/d)/(rc y sqrt(2 pi e)). */
  public static double peakOnThinK(double heatJPerMm, Conductor m, double thicknessMm, double yMm) {
    return peakInBarK(heatJPerMm, m, thicknessMm, yMm);
  }

  /** Peak along a bar without loss: E/(A rc x sqrt(2 pi e)). */
  public static double peakInBarK(double heatJ, Conductor m, double areaMm2, double xMm) {
    Require.positive("distance", xMm, "mm");
    Require.positive("section", areaMm2, "mm2");
    return heatJ / (areaMm2 * m.heatCapacityJPerMm3K() * xMm * ROOT_2_PI_E);
  }

  private static double time(double tS) {
    return Require.positive("time", tS, "s");
  }
}
