package org.counterpull.strength;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * A pin through one middle plate and two outer ones, in double shear.
 *
 * <p>Shear of a plane 0.6 A f_up / gamma_M2; bearing 1.5 t d f_y / gamma_M0; bending F/8 (b + 4c +
 * 2a) against 1.5 W f_yp / gamma_M0; both together (M/M_R)2 + (F/F_R)2 up to 1. Plate of given
 * thickness: metal beyond the hole a = F gamma_M0/(2 t f_y) + 2 d0/3, beside it c = F gamma_M0/(2 t
 * f_y) + d0/3.
 *
 * <p><b>Source:</b> EN 1993-1-8:2005, 3.13, tables 3.9 (type A) and 3.10. <b>Valid for:</b> pins
 * that are not to be taken out again under load, plates of equal outer thickness; hole up to 10 %
 * wider than the pin, otherwise a warning.
 *
 * @param pinMm diameter of the pin, mm
 * @param holeMm diameter of the hole, mm
 * @param middleMm thickness of the middle plate, b, mm
 * @param outerMm thickness of each outer plate, a, mm
 * @param gapMm between middle and outer plate, c, mm
 * @param pinTensileMPa f_up
 * @param pinYieldMPa f_yp
 * @param plateYieldMPa f_y of the plates, the lower of pin and plate counts in bearing
 */
public record PinnedJoint(
    double pinMm,
    double holeMm,
    double middleMm,
    double outerMm,
    double gapMm,
    double pinTensileMPa,
    double pinYieldMPa,
    double plateYieldMPa) {
  private static final double GAMMA_M0 = 1.0;
  private static final double GAMMA_M2 = 1.25;
  private static final double LOOSE = 1.1;
  private static final String SOURCE = "EN 1993-1-8:2005, 3.13";

  public static final Formula SHEAR =
      new Formula("pin-shear", "design shear of one plane of a pin", "N", SOURCE + ", table 3.10");
  public static final Formula BEARING =
      new Formula("pin-bearing", "design bearing of plate and pin", "N", SOURCE + ", table 3.10");
  public static final Formula BENDING =
      new Formula("pin-bending", "design moment of a pin", "N mm", SOURCE + ", table 3.10");
  public static final Formula COMBINED =
      new Formula(
          "pin-combined", "use of a pin by shear and bending", "1", SOURCE + ", table 3.10");
  public static final Formula BEYOND =
      new Formula("pin-plate-end", "least metal beyond the hole", "mm", SOURCE + ", table 3.9");
  public static final Formula BESIDE =
      new Formula("pin-plate-side", "least metal beside the hole", "mm", SOURCE + ", table 3.9");

  public PinnedJoint {
    Require.positive("pin", pinMm, "mm");
    Require.positive("hole", holeMm, "mm");
    Require.positive("middle plate", middleMm, "mm");
    Require.positive("outer plate", outerMm, "mm");
    Require.notNegative("gap", gapMm, "mm");
    Require.positive("tensile strength of the pin", pinTensileMPa, "MPa");
    Require.positive("yield of the pin", pinYieldMPa, "MPa");
    Require.positive("yield of the plates", plateYieldMPa, "MPa");
    if (holeMm < pinMm) {
      throw new IllegalArgumentException(
          "hole " + holeMm + " mm is smaller than the pin " + pinMm + " mm");
    }
  }

  /** Design shear of one plane, N. */
  public Computed shear() {
    return SHEAR.result(0.6 * Math.PI / 4 * pinMm * pinMm * pinTensileMPa / GAMMA_M2);
  }

  /** Design bearing of a plate of that thickness, N. */
  public Computed bearing(double thicknessMm) {
    double yield = Math.min(plateYieldMPa, pinYieldMPa);
    return BEARING.result(1.5 * thicknessMm * pinMm * yield / GAMMA_M0);
  }

  /** Design moment, N mm. */
  public Computed bending() {
    double modulus = Math.PI * pinMm * pinMm * pinMm / 32;
    return BENDING.result(1.5 * modulus * pinYieldMPa / GAMMA_M0);
  }

  /** Moment in the pin under a design force on the middle plate, N mm. */
  public double momentNmm(double forceN) {
    return forceN / 8 * (middleMm + 4 * gapMm + 2 * outerMm);
  }

  /** Use by shear and bending together under a design force on the middle plate. */
  public Computed combined(double forceN) {
    double bent = momentNmm(forceN) / bending().value();
    double sheared = forceN / 2 / shear().value();
    return COMBINED.result(bent * bent + sheared * sheared, fit().outside());
  }

  /** The highest use of shear, bending, both and bearing under a design force. */
  public double use(double forceN) {
    double alone = Math.max(forceN / 2 / shear().value(), momentNmm(forceN) / bending().value());
    double pressed =
        Math.max(forceN / bearing(middleMm).value(), forceN / 2 / bearing(outerMm).value());
    return Math.max(Math.max(alone, pressed), combined(forceN).value());
  }

  /** Metal wanted from the hole's edge to the plate's end under a design force, mm. */
  public Computed beyondHole(double forceN, double thicknessMm) {
    return BEYOND.result(torn(forceN, thicknessMm) + 2 * holeMm / 3, fit().outside());
  }

  /** Metal wanted beside the hole under a design force, mm. */
  public Computed besideHole(double forceN, double thicknessMm) {
    return BESIDE.result(torn(forceN, thicknessMm) + holeMm / 3, fit().outside());
  }

  private double torn(double forceN, double thicknessMm) {
    Require.notNegative("force", forceN, "N");
    return forceN * GAMMA_M0 / (2 * Require.positive("plate", thicknessMm, "mm") * plateYieldMPa);
  }

  private Limits fit() {
    return new Limits().within("hole over pin", holeMm / pinMm, 1, LOOSE, "");
  }
}
