package org.counterpull.zone;

import org.counterpull.quantity.Require;

/**
 * A piece of metal and the highest temperature that it reached while a run was welded.
 *
 * @param tMm its middle along the run, from the run's start
 * @param nMm its middle across the run, from the weld line
 * @param bMm its middle out of the metal on the side of the weld, from the weld line: negative
 *     inside
 * @param volumeMm3 its volume
 * @param peakC highest temperature, deg C; infinite at a source is allowed
 */
public record PeakCell(double tMm, double nMm, double bMm, double volumeMm3, double peakC) {
  public PeakCell {
    Require.positive("volume of a cell", volumeMm3, "mm3");
    if (Double.isNaN(tMm + nMm + bMm + peakC)) {
      throw new IllegalArgumentException("a cell at (" + tMm + ", " + nMm + ", " + bMm + ") mm");
    }
  }
}
