package org.counterpull.arc;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Require;

/**
 * Net heat: what goes into the metal per length of weld, with the efficiency that calorimeters
 * measured.
 *
 * <p><b>Formula:</b> H = eta E. <b>Source:</b> see {@link WeldingProcess}. <b>Valid for:</b>
 * temperature fields and shrinkage. Error without calorimetry about 10 % for consumable electrodes,
 * 15 to 20 % for TIG, which the band covers.
 */
public final class NetHeat {
  public static final Formula FORMULA =
      new Formula(
          "net-heat",
          "heat into the metal per length",
          "J/mm",
          "DuPont and Marder, Welding Journal 1995; Pepe et al. 2011; Stenbacka et al. 2012");

  private static final double J_PER_KJ = 1000;

  /**
   * What to expect and how far it may be off.
   *
   * @param lowJPerMm for "will it harden"
   * @param centralJPerMm to expect
   * @param highJPerMm for "will the seal get hot"
   */
  public record Band(double lowJPerMm, double centralJPerMm, double highJPerMm) {}

  private NetHeat() {}

  /** Net heat to expect. */
  public static Computed of(WeldingProcess process, double arcEnergyKJPerMm) {
    return FORMULA.result(band(process, arcEnergyKJPerMm).centralJPerMm());
  }

  /** Net heat with its band. */
  public static Band band(WeldingProcess process, double arcEnergyKJPerMm) {
    double arcJPerMm = Require.positive("arc energy", arcEnergyKJPerMm, "kJ/mm") * J_PER_KJ;
    return new Band(
        process.efficiencyLow() * arcJPerMm,
        process.efficiency() * arcJPerMm,
        process.efficiencyHigh() * arcJPerMm);
  }
}
