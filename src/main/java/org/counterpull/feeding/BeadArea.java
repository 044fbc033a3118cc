package org.counterpull.feeding;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Cross-section that a pass lays down: {@code A = WFS A_wire eta_d / v} for wire, {@code A = m' /
 * (rho v)} for a covered electrode.
 *
 * <p><b>Source:</b> derived, balance of volume.
 *
 * <p><b>Valid for:</b> steady welding; out of range at travel speeds beyond 0.5 to 30 mm/s.
 */
public final class BeadArea {
  public static final Formula FORMULA =
      new Formula("bead-area", "cross-section of a bead", "mm2", "derived: balance of volume");

  /** Density of steel, g/mm3. */
  public static final double STEEL_G_PER_MM3 = 7.85e-3;

  private BeadArea() {}

  /**
   * Area of a wire pass.
   *
   * @param wireFeedMmPerS wire feed speed, mm/s, above 0
   * @param wireMm wire diameter, mm, above 0
   * @param depositionEfficiency weld metal over wire, above 0 to 1
   * @param travelSpeedMmPerS travel speed, mm/s, above 0
   */
  public static Computed ofWire(
      double wireFeedMmPerS, double wireMm, double depositionEfficiency, double travelSpeedMmPerS) {
    return result(
        depositedMm3PerS(wireFeedMmPerS, wireMm, depositionEfficiency)
            / Require.positive("travel speed", travelSpeedMmPerS, "mm/s"),
        travelSpeedMmPerS);
  }

  /**
   * Area of an electrode's pass.
   *
   * @param depositionKgPerH deposition while the arc burns, kg/h, above 0
   * @param travelSpeedMmPerS travel speed, mm/s, above 0
   */
  public static Computed ofStick(double depositionKgPerH, double travelSpeedMmPerS) {
    Require.positive("deposition", depositionKgPerH, "kg/h");
    Require.positive("travel speed", travelSpeedMmPerS, "mm/s");
    double gramsPerS = depositionKgPerH / 3.6;
    return result(gramsPerS / (STEEL_G_PER_MM3 * travelSpeedMmPerS), travelSpeedMmPerS);
  }

  /** Volume that a wire deposits, mm3/s; arguments as for {@link #ofWire}. */
  public static double depositedMm3PerS(
      double wireFeedMmPerS, double wireMm, double depositionEfficiency) {
    Require.positive("wire feed", wireFeedMmPerS, "mm/s");
    Require.positive("wire diameter", wireMm, "mm");
    Require.within("deposition efficiency", depositionEfficiency, 0, 1, "1");
    return wireFeedMmPerS * Math.PI * wireMm * wireMm / 4 * depositionEfficiency;
  }

  /** Mass rate of a volume rate of steel, kg/h. */
  public static double kgPerH(double mm3PerS) {
    return mm3PerS * STEEL_G_PER_MM3 * 3.6;
  }

  private static Computed result(double areaMm2, double travelSpeedMmPerS) {
    return FORMULA.result(
        areaMm2, new Limits().within("travel speed", travelSpeedMmPerS, 0.5, 30, "mm/s").outside());
  }
}
