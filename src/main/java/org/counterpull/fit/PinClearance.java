package org.counterpull.fit;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * What is left for a straight pin in a row of bores.
 *
 * <pre>c = D - S/pi - d - 2 R</pre>
 *
 * <p>D bore, S what welding shortens the barrel's circumference by, d pin, R radius of the thinnest
 * cylinder that holds the middles of all bore ends. Below 0 a stiff pin binds. S/pi takes the bore
 * as round still; a single bead also makes it a little oval.
 *
 * <p><b>Source:</b> derived: a straight pin goes through where every bore's end leaves room for it.
 *
 * <p><b>Valid for:</b> one stiff straight pin through the whole row; short pins, one to a pair,
 * turn a little easier. A warning for a bore of more than 1.2 times the pin.
 */
public final class PinClearance {
  public static final Formula FORMULA =
      new Formula(
          "pin-clearance-left",
          "clearance left for a straight pin in a row of bores, on diameter",
          "mm",
          "derived: D - S/pi - d - 2 R");

  private static final double LOOSE = 1.2;

  private PinClearance() {}

  /**
   * Clearance left, on diameter.
   *
   * @param boreMm bore before welding, mm
   * @param shortenedMm how much the welds on one barrel shorten its circumference, mm
   * @param pinMm diameter of the pin, mm
   * @param zoneRadiusMm radius of the thinnest cylinder that holds all ends of the axis, mm
   */
  public static Computed of(double boreMm, double shortenedMm, double pinMm, double zoneRadiusMm) {
    Require.positive("bore", boreMm, "mm");
    Require.positive("pin", pinMm, "mm");
    Require.notNegative("shrinkage round the barrel", shortenedMm, "mm");
    Require.notNegative("radius of the zone", zoneRadiusMm, "mm");
    return FORMULA.result(
        boreMm - shortenedMm / Math.PI - pinMm - 2 * zoneRadiusMm,
        new Limits().within("bore over pin", boreMm / pinMm, 0, LOOSE, "").outside());
  }
}
