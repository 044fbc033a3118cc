package org.counterpull.power;

import org.counterpull.quantity.Require;

/**
 * The socket a machine hangs on.
 *
 * @param voltageV line voltage, V (between phases where there are three)
 * @param breakerA rating of the breaker or fuse, A
 * @param phases 1 or 3
 */
public record Supply(double voltageV, double breakerA, int phases) {
  public Supply {
    Require.positive("supply voltage", voltageV, "V");
    Require.positive("breaker rating", breakerA, "A");
    if (phases != 1 && phases != 3) {
      throw new IllegalArgumentException("phases is " + phases + ": it must be 1 or 3");
    }
  }

  /** Apparent power per ampere of line current, VA/A: the voltage, times root 3 on three phases. */
  public double voltAmperesPerAmpere() {
    return phases == 3 ? Math.sqrt(3) * voltageV : voltageV;
  }
}
