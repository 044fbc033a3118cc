package org.counterpull.mount;

import java.util.Optional;
import org.counterpull.fit.ToleranceClass;
import org.counterpull.weldment.Feature;

/**
 * Something on the tube that heat or movement can spoil.
 *
 * @param name as the file calls it
 * @param kind what it is
 * @param fromZMm where it begins along the tube
 * @param toZMm where it ends
 * @param inside true in the bore, false on the outside
 * @param limit how warm it may get; empty where heat does not spoil it
 * @param tolerance of its bore; empty where none is asked for
 * @param clearanceMm between bore and what slides or turns in it, on diameter; empty where nothing
 *     does
 * @param removable whether it can be taken out before welding
 */
public record Sensitive(
    String name,
    Feature.Kind kind,
    double fromZMm,
    double toZMm,
    boolean inside,
    Optional<HeatLimit> limit,
    Optional<ToleranceClass> tolerance,
    Optional<Double> clearanceMm,
    boolean removable) {

  public Sensitive {
    if (fromZMm > toZMm) {
      throw new IllegalArgumentException(name + " from " + fromZMm + " to " + toZMm + " mm");
    }
  }

  /** Whether the size of a bore matters there. */
  public boolean sized() {
    return kind == Feature.Kind.BORE || kind == Feature.Kind.BEARING;
  }

  /** The place of it that is nearest to another along the tube. */
  public double nearestMm(double zMm) {
    return Math.max(fromZMm, Math.min(toZMm, zMm));
  }

  /** How far it is from another place along the tube, 0 where it covers it. */
  public double distanceMm(double zMm) {
    return Math.abs(nearestMm(zMm) - zMm);
  }
}
