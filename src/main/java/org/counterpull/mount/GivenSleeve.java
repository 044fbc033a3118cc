package org.counterpull.mount;

import org.counterpull.quantity.Require;

/**
 * A sleeve that is at hand.
 *
 * @param wallMm its wall
 * @param lengthMm along the tube, its middle under the lug; one that ends in a ring weld is cut to
 *     reach
 * @param gapMm air between it and the tube, on radius
 */
public record GivenSleeve(double wallMm, double lengthMm, double gapMm) {
  public GivenSleeve {
    Require.positive("wall of the sleeve", wallMm, "mm");
    Require.positive("length of the sleeve", lengthMm, "mm");
    Require.positive("gap under the sleeve", gapMm, "mm");
  }
}
