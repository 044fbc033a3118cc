package org.counterpull.feeding;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * What a solid steel wire deposits by the unscaled burn-off form: {@code WFS pi d2/4 rho eta}.
 *
 * <p><b>Source:</b> from memory: Norrish, Advanced Welding Processes ({@link BurnOff}); density
 * 7.85 g/cm3. <b>Valid for:</b> wires of 0.6 to 1.6 mm; about 8 % high against shop readings, which
 * {@link WireFeed} takes off.
 */
public final class WireDeposition {
  public static final Formula FORMULA =
      new Formula(
          "wire-deposition",
          "weld metal of a solid steel wire for each hour of arc, unscaled burn-off",
          "kg/h",
          "from memory: Norrish, Advanced Welding Processes; other diameters derived");

  private static final double KG_PER_H_BY_MM3_PER_S = 7.85e-6 * 3600;

  private WireDeposition() {}

  /**
   * Deposition rate.
   *
   * @param diameterMm wire, mm
   * @param currentA welding current, A
   * @param extensionMm contact tip to arc, mm
   * @param efficiency weld metal over wire, above 0 to 1
   */
  public static Computed of(
      double diameterMm, double currentA, double extensionMm, double efficiency) {
    Require.positive("deposition efficiency", efficiency, "1");
    double sectionMm2 = Math.PI * diameterMm * diameterMm / 4;
    double feedMmPerS = BurnOff.mmPerS(diameterMm, currentA, extensionMm);
    return FORMULA.result(
        feedMmPerS * sectionMm2 * efficiency * KG_PER_H_BY_MM3_PER_S,
        new Limits()
            .within("wire diameter", diameterMm, 0.6, 1.6, "mm")
            .within("deposition efficiency", efficiency, 0.5, 1, "1")
            .outside());
  }
}
