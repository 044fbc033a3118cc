package org.counterpull.feeding;

import org.counterpull.quantity.Require;

/**
 * A covered electrode as it is burnt.
 *
 * @param coreMm core wire diameter, mm
 * @param lengthMm whole length, mm
 * @param stubMm length thrown away, mm
 * @param recovery weld metal over core wire burnt
 */
public record StickElectrode(double coreMm, double lengthMm, double stubMm, double recovery) {
  public StickElectrode {
    Require.positive("core diameter", coreMm, "mm");
    Require.positive("electrode length", lengthMm, "mm");
    Require.within("stub", stubMm, 0, lengthMm, "mm");
    Require.positive("metal recovery", recovery, "1");
  }

  /** Weld metal from one electrode, mm3. */
  public double metalMm3() {
    return Math.PI * coreMm * coreMm / 4 * (lengthMm - stubMm) * recovery;
  }
}
