package org.counterpull.fit;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Require;

/**
 * How much warmer one face of a bar may be than the other before a row of bores on it bows by what
 * the pin has left.
 *
 * <pre>dT = 8 h c / (alpha L^2)</pre>
 *
 * <p>A bar whose temperature falls evenly over its depth h bows to a circle of curvature alpha
 * dT/h; over the row's length L its middle is off by alpha dT L^2/(8 h), and a straight pin bears
 * twice the radius of the zone, which is that.
 *
 * <p><b>Source:</b> derived: beam with a linear temperature over its depth. <b>Valid for:</b> a bar
 * free to bow; alpha 12e-6 per K, carbon steel (from memory: EN 1993-1-1, 3.2.6).
 */
public final class WarmBow {
  public static final Formula FORMULA =
      new Formula(
          "warm-bow-limit",
          "difference in temperature over a bar's depth at which a pin binds",
          "K",
          "derived: beam with a linear temperature over its depth");

  public static final double EXPANSION_PER_K = 12e-6;

  private WarmBow() {}

  /**
   * The difference.
   *
   * @param clearanceMm left for the pin when cold, on diameter, mm
   * @param depthMm of the bar, in the direction from its cold face to its warm one, mm
   * @param lengthMm from the first bore to the last, mm
   */
  public static Computed kelvin(double clearanceMm, double depthMm, double lengthMm) {
    Require.notNegative("clearance left", clearanceMm, "mm");
    Require.positive("depth", depthMm, "mm");
    Require.positive("length", lengthMm, "mm");
    return FORMULA.result(8 * depthMm * clearanceMm / (EXPANSION_PER_K * lengthMm * lengthMm));
  }
}
