package org.counterpull.mount;

import java.util.Optional;
import org.counterpull.quantity.Require;

/**
 * A tube slid over the tube, to weld on.
 *
 * @param fromZMm one end
 * @param toZMm the other end
 * @param wallMm its wall
 * @param gapMm between it and the tube, on radius
 * @param ringZMm the end that is welded round to the tube; empty where it is held by screws or glue
 */
public record Sleeve(
    double fromZMm, double toZMm, double wallMm, double gapMm, Optional<Double> ringZMm) {
  public Sleeve {
    Require.positive("wall of the sleeve", wallMm, "mm");
    Require.positive("gap under the sleeve", gapMm, "mm");
    Require.positive("length of the sleeve", toZMm - fromZMm, "mm");
  }

  public double lengthMm() {
    return toZMm - fromZMm;
  }

  /** Bore of the sleeve on a tube. */
  public double boreMm(BoredTube tube) {
    return tube.outsideMm() + 2 * gapMm;
  }

  double outerRadiusMm(BoredTube tube) {
    return tube.outerRadiusMm() + gapMm + wallMm;
  }

  /** Its own shape, as a tube that is welded to. */
  BoredTube asTube(BoredTube tube) {
    return new BoredTube(2 * outerRadiusMm(tube), wallMm, fromZMm, toZMm, tube.yieldMPa());
  }
}
