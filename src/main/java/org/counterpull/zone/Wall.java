package org.counterpull.zone;

import org.counterpull.quantity.Require;

/**
 * The wall that a run lies on.
 *
 * @param thicknessMm thickness
 * @param middleBMm where its mid-surface lies on the run's b axis, mm
 * @param sectionMm2 section across the run that holds the hot metal lengthwise; infinite for a wide
 *     plate
 */
public record Wall(double thicknessMm, double middleBMm, double sectionMm2) {
  public Wall {
    Require.positive("thickness", thicknessMm, "mm");
    if (!(sectionMm2 > 0)) {
      throw new IllegalArgumentException(
          "section is " + sectionMm2 + " mm2: it must be a number above 0");
    }
  }

  /** A wide plate with the run on its face. */
  public static Wall wide(double thicknessMm) {
    return new Wall(thicknessMm, -thicknessMm / 2, Double.POSITIVE_INFINITY);
  }
}
