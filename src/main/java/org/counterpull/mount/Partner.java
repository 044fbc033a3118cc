package org.counterpull.mount;

import org.counterpull.quantity.Require;

/**
 * What is welded to the tube.
 *
 * @param name as it is called
 * @param kind how it stands
 * @param alongMm its size along the tube
 * @param thicknessMm its thickness: across a lug, of a cap beside the weld, of the wall that a tube
 *     lies on
 * @param heightMm how far a lug stands off the tube; 0 for the others
 * @param tensileMPa tensile strength of the weaker of it and the tube
 * @param betaW correlation factor of EN 1993-1-8 of its steel
 */
public record Partner(
    String name,
    Kind kind,
    double alongMm,
    double thicknessMm,
    double heightMm,
    double tensileMPa,
    double betaW) {

  public Partner {
    Require.positive("size along the tube", alongMm, "mm");
    Require.positive("thickness", thicknessMm, "mm");
    Require.notNegative("height", heightMm, "mm");
    Require.positive("tensile strength", tensileMPa, "MPa");
    Require.positive("correlation factor", betaW, "1");
  }

  /** How it stands. */
  public enum Kind {
    /** A plate on edge along the tube. */
    LUG,
    /** All round, such as a cap or a flange: the weld goes round the tube. */
    RING,
    /** A wall or bar that the tube lies on, welded along both flanks. */
    RAIL
  }

  /** Half-plates that leave the weld on the tube's side and on the partner's. */
  int[] halfPlates() {
    return switch (kind) {
      case LUG -> new int[] {2, 1};
      case RING -> new int[] {1, 2};
      case RAIL -> new int[] {2, 2};
    };
  }
}
