package org.counterpull.mount;

import org.counterpull.quantity.Require;

/**
 * The round tube that something is welded to. Its axis is z; zero is the middle of what is welded
 * on; angles are from there around.
 *
 * @param outsideMm outside diameter
 * @param wallMm wall
 * @param lowZMm one end
 * @param highZMm the other end
 * @param yieldMPa yield of its wall beside a weld
 */
public record BoredTube(
    double outsideMm, double wallMm, double lowZMm, double highZMm, double yieldMPa) {
  private static final double DECAY = 2.5;

  public BoredTube {
    Require.positive("wall", wallMm, "mm");
    Require.below("wall", 2 * wallMm, outsideMm, "mm");
    Require.positive("yield", yieldMPa, "MPa");
    if (!(lowZMm < highZMm)) {
      throw new IllegalArgumentException("tube from " + lowZMm + " to " + highZMm + " mm");
    }
  }

  /** Bore. */
  public double insideMm() {
    return outsideMm - 2 * wallMm;
  }

  public double outerRadiusMm() {
    return outsideMm / 2;
  }

  public double innerRadiusMm() {
    return outerRadiusMm() - wallMm;
  }

  /** Radius of the wall's middle. */
  public double meanRadiusMm() {
    return outerRadiusMm() - wallMm / 2;
  }

  /**
   * Distance at which a ring's disturbance has faded to 4 %: 2.5 sqrt(R t), by beta 1.285/sqrt(R t)
   * of a cylindrical shell. From memory: Timoshenko and Woinowsky-Krieger, Theory of Plates and
   * Shells.
   */
  public double fadingMm() {
    return DECAY * Math.sqrt(meanRadiusMm() * wallMm);
  }

  /** The same with other ends. */
  BoredTube between(double low, double high) {
    return new BoredTube(outsideMm, wallMm, low, high, yieldMPa);
  }
}
