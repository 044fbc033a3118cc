package org.counterpull.machine;

import org.counterpull.quantity.Require;

/**
 * Section of a bar that is welded across its width.
 *
 * @param thicknessMm smaller side, mm
 * @param widthMm larger side, mm
 */
public record BarSection(double thicknessMm, double widthMm) {
  private static final double WIDEST_OVER_THICKNESS = 5;
  private static final double WIDEST_MM = 65;

  public BarSection {
    Require.positive("bar thickness", thicknessMm, "mm");
    Require.positive("bar width", widthMm, "mm");
    if (widthMm < thicknessMm) {
      throw new IllegalArgumentException(
          "bar of " + thicknessMm + " x " + widthMm + " mm: the width must be the larger side");
    }
  }

  /** Narrow enough to warm as a whole; wider is a plate. */
  public boolean isNarrow() {
    return widthMm <= WIDEST_MM && widthMm <= WIDEST_OVER_THICKNESS * thicknessMm;
  }
}
