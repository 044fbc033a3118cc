package org.counterpull.cooling;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Cooling time from 800 to 500 C: the larger of the thick and the thin form.
 *
 * <p><b>Formula:</b> thick (6700 - 5 T) Q [1/(500-T) - 1/(800-T)] F3; thin (4300 - 4.3 T) 1e5 Q2/d2
 * [1/(500-T)2 - 1/(800-T)2] F2. <b>Source:</b> EN 1011-2, annex D (SEW 088). <b>Valid for:</b>
 * unalloyed and low-alloy ferritic steel, T to 250 C, wide plates, continuous beads (no tacks).
 * <b>Known limits:</b> 15 % in thick flow, 25 % in thin flow; taking the larger overstates by up to
 * 25 % near the transition. Preheat over 250 C is answered with a warning; 500 C and more is
 * refused.
 */
public final class CoolingTime85 {
  public static final Formula FORMULA =
      new Formula(
          "t85",
          "cooling time from 800 to 500 C, the larger of both forms",
          "s",
          "EN 1011-2:2001, annex D");

  private static final double UPPER_C = 800;
  private static final double LOWER_C = 500;

  private CoolingTime85() {}

  /**
   * The larger of both forms.
   *
   * @param heatInputKJPerMm with the factor k of ISO/TR 17671-1
   * @param thicknessMm plate
   * @param preheatC preheat or interpass temperature
   * @param f2 shape factor of thin flow, {@link WeldShape}
   * @param f3 shape factor of thick flow
   */
  public static Computed of(
      double heatInputKJPerMm, double thicknessMm, double preheatC, double f2, double f3) {
    Limits limits =
        new Limits()
            .within("preheat", preheatC, -50, 250, "C")
            .within("F2", f2, 0.4, 1.2, "1")
            .within("F3", f3, 0.6, 1.2, "1");
    double seconds =
        Math.max(
            thickS(heatInputKJPerMm, preheatC, f3),
            thinS(heatInputKJPerMm, thicknessMm, preheatC, f2));
    return FORMULA.result(seconds, limits.outside());
  }

  /** Thick (three-dimensional) form in s. */
  public static double thickS(double heatInputKJPerMm, double preheatC, double f3) {
    return Require.positive("heat input", heatInputKJPerMm, "kJ/mm") * thickPerHeat(preheatC, f3);
  }

  /** Thin (two-dimensional) form in s. */
  public static double thinS(
      double heatInputKJPerMm, double thicknessMm, double preheatC, double f2) {
    double perThickness =
        Require.positive("heat input", heatInputKJPerMm, "kJ/mm")
            / Require.positive("thickness", thicknessMm, "mm");
    return perThickness * perThickness * thinPerHeat(preheatC, f2);
  }

  /** Thickness at which both forms give the same time, in mm. */
  public static double transitionMm(
      double heatInputKJPerMm, double preheatC, double f2, double f3) {
    double heat = Require.positive("heat input", heatInputKJPerMm, "kJ/mm");
    return Math.sqrt(thinPerHeat(preheatC, f2) * heat / thickPerHeat(preheatC, f3));
  }

  /** Heat input in kJ/mm that gives a wanted time. */
  public static double heatInputFor(
      double t85S, double thicknessMm, double preheatC, double f2, double f3) {
    Require.positive("thickness", thicknessMm, "mm");
    return Math.min(thickHeatFor(t85S, preheatC, f3), thinHeatFor(t85S, thicknessMm, preheatC, f2));
  }

  static double thickHeatFor(double t85S, double preheatC, double f3) {
    return Require.positive("t8/5", t85S, "s") / thickPerHeat(preheatC, f3);
  }

  static double thinHeatFor(double t85S, double thicknessMm, double preheatC, double f2) {
    return thicknessMm * Math.sqrt(Require.positive("t8/5", t85S, "s") / thinPerHeat(preheatC, f2));
  }

  private static double thickPerHeat(double preheatC, double f3) {
    Require.below("preheat", preheatC, LOWER_C, "C");
    Require.positive("F3", f3, "1");
    return (6700 - 5 * preheatC) * (1 / (LOWER_C - preheatC) - 1 / (UPPER_C - preheatC)) * f3;
  }

  private static double thinPerHeat(double preheatC, double f2) {
    Require.below("preheat", preheatC, LOWER_C, "C");
    Require.positive("F2", f2, "1");
    double lower = 1 / (LOWER_C - preheatC);
    double upper = 1 / (UPPER_C - preheatC);
    return (4300 - 4.3 * preheatC) * 1e5 * (lower * lower - upper * upper) * f2;
  }
}
