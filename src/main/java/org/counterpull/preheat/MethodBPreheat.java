package org.counterpull.preheat;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Least preheat and interpass temperature by EN 1011-2 method B.
 *
 * <p><b>Formula:</b> Tp = 697 CET + 160 tanh(d/35) + 62 HD^0.35 + (53 CET - 32) Q - 328 (C).
 * <b>Source:</b> EN 1011-2:2001, C.3, formula C.8 (Uwer and Hohne). <b>Valid for:</b> CET 0.2 to
 * 0.5 %, thickness 10 to 90 mm, hydrogen 1 to 20 ml/100 g, heat input 0.5 to 4 kJ/mm, yield to 1000
 * MPa. Outside it answers with a warning. A result at or below the ambient temperature means no
 * preheat. No scatter is published; treat as 25 K either way.
 */
public final class MethodBPreheat {
  /** Lower edge of its range of heat input, kJ/mm with the factor k. */
  public static final double LEAST_HEAT_INPUT_KJ_PER_MM = 0.5;

  public static final Formula FORMULA =
      new Formula(
          "preheat-cet",
          "least preheat and interpass temperature by method B",
          "C",
          "EN 1011-2:2001, C.3, formula C.8");

  /**
   * The same temperature split into what each cause adds; the sum is the result.
   *
   * @param compositionC 750 CET - 150
   * @param thicknessC 160 tanh(d/35) - 110
   * @param hydrogenC 62 HD^0.35 - 100
   * @param heatInputC (53 CET - 32) Q - 53 CET + 32
   */
  public record Terms(double compositionC, double thicknessC, double hydrogenC, double heatInputC) {

    /** The preheat temperature. */
    public double sumC() {
      return compositionC + thicknessC + hydrogenC + heatInputC;
    }
  }

  private MethodBPreheat() {}

  /**
   * Least preheat.
   *
   * @param cetPercent carbon equivalent CET of the parent metal
   * @param thicknessMm the thicker plate, not the combined thickness of method A
   * @param hydrogenMlPer100g diffusible hydrogen, ISO 3690
   * @param heatInputKJPerMm with the factor k of ISO/TR 17671-1
   */
  public static Computed of(
      double cetPercent, double thicknessMm, double hydrogenMlPer100g, double heatInputKJPerMm) {
    Limits limits =
        new Limits()
            .within("CET", cetPercent, 0.2, 0.5, "%")
            .within("thickness", thicknessMm, 10, 90, "mm")
            .within("hydrogen", hydrogenMlPer100g, 1, 20, "ml/100 g")
            .within("heat input", heatInputKJPerMm, LEAST_HEAT_INPUT_KJ_PER_MM, 4, "kJ/mm");
    return FORMULA.result(
        terms(cetPercent, thicknessMm, hydrogenMlPer100g, heatInputKJPerMm).sumC(),
        limits.outside());
  }

  /** What each cause adds. */
  public static Terms terms(
      double cetPercent, double thicknessMm, double hydrogenMlPer100g, double heatInputKJPerMm) {
    Require.notNegative("CET", cetPercent, "%");
    Require.positive("thickness", thicknessMm, "mm");
    Require.notNegative("hydrogen", hydrogenMlPer100g, "ml/100 g");
    Require.positive("heat input", heatInputKJPerMm, "kJ/mm");
    return new Terms(
        750 * cetPercent - 150,
        160 * Math.tanh(thicknessMm / 35) - 110,
        62 * Math.pow(hydrogenMlPer100g, 0.35) - 100,
        (53 * cetPercent - 32) * (heatInputKJPerMm - 1));
  }
}
