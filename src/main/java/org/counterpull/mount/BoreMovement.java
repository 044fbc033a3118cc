package org.counterpull.mount;

/**
 * What a bore is moved by, at the place where it is moved most. All on diameter, mm, but for the
 * dent.
 *
 * @param atZMm where along the tube
 * @param changeMm greatest change of a diameter, as a size, with its band: what limits are compared
 *     with
 * @param inwardMm greatest decrease of a diameter, with its band: what must still go through
 * @param meanMm change of the mean diameter: what a seal feels
 * @param outOfRoundMm greatest less smallest diameter
 * @param dentMm depth of the local dent below the round, on radius
 */
public record BoreMovement(
    double atZMm, Span changeMm, Span inwardMm, double meanMm, double outOfRoundMm, double dentMm) {
  /** Nothing moves. */
  public static final BoreMovement NONE = new BoreMovement(0, Span.ZERO, Span.ZERO, 0, 0, 0);
}
