package org.counterpull.section;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Mass of a length of stock.
 *
 * <p><b>Formula:</b> m = A l rho. <b>Source:</b> geometry; density of steel 7850 kg/m3 from EN
 * 1993-1-1, 3.2.6. <b>Valid for:</b> straight stock; sharp corners overstate rolled and cold-formed
 * sections by up to some percent. A density outside 1000 to 20000 kg/m3 is answered with a warning.
 */
public final class SectionMass {
  /** Density of carbon steel, EN 1993-1-1 3.2.6. */
  public static final double STEEL_KG_PER_M3 = 7850;

  public static final Formula FORMULA =
      new Formula(
          "section-mass",
          "mass of a length of stock",
          "kg",
          "geometry; density of steel 7850 kg/m3: EN 1993-1-1, 3.2.6");

  private static final double MM3_PER_M3 = 1e9;

  private SectionMass() {}

  /**
   * Mass of a piece.
   *
   * @param areaMm2 cross-section, greater than zero
   * @param lengthMm greater than zero
   * @param densityKgPerM3 greater than zero
   */
  public static Computed of(double areaMm2, double lengthMm, double densityKgPerM3) {
    return FORMULA.result(
        kg(areaMm2, lengthMm, densityKgPerM3),
        new Limits().within("density", densityKgPerM3, 1000, 20000, "kg/m3").outside());
  }

  /** Mass in kg without the trace. */
  public static double kg(double areaMm2, double lengthMm, double densityKgPerM3) {
    Require.positive("section", areaMm2, "mm2");
    Require.positive("length", lengthMm, "mm");
    Require.positive("density", densityKgPerM3, "kg/m3");
    return areaMm2 * lengthMm * densityKgPerM3 / MM3_PER_M3;
  }

  /** Mass per metre of steel stock in kg/m. */
  public static double steelKgPerM(double areaMm2) {
    return kg(areaMm2, 1000, STEEL_KG_PER_M3);
  }
}
