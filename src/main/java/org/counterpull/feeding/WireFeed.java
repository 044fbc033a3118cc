package org.counterpull.feeding;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;

/**
 * Wire feed speed to set for a current: {@link BurnOff} times 0.92, which centres it on independent
 * readings; 12 % either way must be expected.
 *
 * <p>At spray currents of wires up to 1.2 mm the extension counts as 12 mm at most: the burn-off
 * relation reads 13 to 27 % high there with 15 mm.
 *
 * <p><b>Source:</b> from memory: J. Norrish, Advanced Welding Processes; the factor is derived from
 * eleven readings.
 *
 * <p><b>Valid for:</b> solid plain carbon steel wire of 0.6 to 1.6 mm, 30 to 400 A, extension 6 to
 * 25 mm, electrode positive; carbon dioxide and argon mixtures differ by less than 5 %.
 */
public final class WireFeed {
  public static final Formula FORMULA =
      new Formula(
          "wire-feed",
          "wire feed speed for a current, within 12 %",
          "m/min",
          "from memory: J. Norrish, Advanced Welding Processes (burn-off); scaled by 0.92, derived");

  /** Expect the true wire feed within this share of the value, either way. */
  public static final double BAND = 0.12;

  private static final double SCALE = 0.92;
  private static final double LONGEST_EXTENSION_IN_SPRAY_MM = 12;
  private static final double SMALL_WIRE_MM = 1.2;

  private WireFeed() {}

  /**
   * Wire feed speed with its warnings.
   *
   * @param diameterMm wire diameter, mm, above 0
   * @param currentA welding current, A, above 0
   * @param stickOutMm electrode extension, contact tip to arc, mm, 0 or above
   */
  public static Computed of(double diameterMm, double currentA, double stickOutMm) {
    return FORMULA.result(
        mPerMin(diameterMm, currentA, stickOutMm),
        new Limits()
            .within("wire diameter", diameterMm, 0.6, 1.6, "mm")
            .within("welding current", currentA, 30, 400, "A")
            .within("stick-out", stickOutMm, 6, 25, "mm")
            .outside());
  }

  /** Wire feed speed, m/min; arguments as for {@link #of}. */
  public static double mPerMin(double diameterMm, double currentA, double stickOutMm) {
    boolean smallWireSpray =
        diameterMm <= SMALL_WIRE_MM && currentA >= SprayCurrent.inArgonA(diameterMm);
    double extensionMm =
        smallWireSpray ? Math.min(stickOutMm, LONGEST_EXTENSION_IN_SPRAY_MM) : stickOutMm;
    return SCALE * BurnOff.mmPerS(diameterMm, currentA, extensionMm) * 60 / 1000;
  }
}
