package org.counterpull.power;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Voltage lost in a copper lead: {@code dU = rho L I / A}.
 *
 * <p><b>Source:</b> Ohm's law with the resistivity of copper at 20 C, 0.0178 ohm mm2/m.
 *
 * <p><b>Valid for:</b> a lead near 20 C; a warm one loses about 4 % more per 10 K. For a single
 * phase extension lead the length counts there and back.
 */
public final class LeadDrop {
  public static final Formula FORMULA =
      new Formula("lead-drop", "voltage lost in a copper lead", "V", "derived: Ohm's law, copper");

  /** Resistivity of copper at 20 C, ohm mm2/m. */
  public static final double COPPER_OHM_MM2_PER_M = 0.0178;

  private LeadDrop() {}

  /**
   * The drop.
   *
   * @param currentA current in the lead, A, above 0
   * @param conductorLengthM length of conductor passed, there and back, m, above 0
   * @param sectionMm2 copper section, mm2, above 0
   */
  public static Computed of(double currentA, double conductorLengthM, double sectionMm2) {
    Require.positive("current", currentA, "A");
    Require.positive("lead length", conductorLengthM, "m");
    Require.positive("copper section", sectionMm2, "mm2");
    double densityAPerMm2 = currentA / sectionMm2;
    return FORMULA.result(
        COPPER_OHM_MM2_PER_M * conductorLengthM * densityAPerMm2,
        new Limits().within("current density", densityAPerMm2, 0, 12, "A/mm2").outside());
  }
}
