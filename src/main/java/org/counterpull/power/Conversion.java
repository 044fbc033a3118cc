package org.counterpull.power;

import org.counterpull.quantity.Require;

/**
 * How much of the supply's volt-amperes reaches the arc.
 *
 * @param efficiency power out over power in, above 0 to 1
 * @param powerFactor power in over volt-amperes in, above 0 to 1
 */
public record Conversion(double efficiency, double powerFactor) {
  /** Inverter with power factor correction; the usual assumption where a plate is silent. */
  public static final Conversion CORRECTED = new Conversion(0.85, 0.99);

  /** Inverter without correction. */
  public static final Conversion PLAIN = new Conversion(0.80, 0.70);

  public Conversion {
    Require.positive("efficiency", efficiency, "1");
    Require.within("efficiency", efficiency, 0, 1, "1");
    Require.positive("power factor", powerFactor, "1");
    Require.within("power factor", powerFactor, 0, 1, "1");
  }

  /** Arc watts per volt-ampere drawn. */
  public double wattsPerVoltAmpere() {
    return efficiency * powerFactor;
  }
}
