package org.counterpull.heatjob;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * How hot the metal around one run got while it was welded and until the next was begun: what the
 * shrink zone (peak above 500 C) and the yielded band (rise above yield strain over expansion) are
 * read from.
 *
 * @param run name of the run, all its passes together
 * @param fromS when its first arc was struck
 * @param toS when the next run's was, or the job ended
 * @param cells those whose peak is at least {@link #LEAST_C} and that this run warmed; others do
 *     not count
 */
public record PeakField(String run, double fromS, double toS, List<Cell> cells) {
  /** Cells that stayed colder are not kept: no structural steel yields there. */
  public static final double LEAST_C = 80;

  /** A cell that rose less was warm from earlier runs. */
  static final double LEAST_RISE_K = 5;

  public PeakField {
    cells = List.copyOf(cells);
  }

  /**
   * A piece of metal.
   *
   * @param part name of its part
   * @param at its middle, in weldment axes, mm
   * @param volumeMm3 of metal
   * @param beforeC when the run was begun
   * @param peakC highest since then
   */
  public record Cell(String part, Vector3D at, double volumeMm3, double beforeC, double peakC) {}

  /** Volume of a part whose peak passed a temperature in this run. */
  public double volumeAboveMm3(String part, double tempC) {
    return cells.stream()
        .filter(c -> c.part().equals(part) && c.peakC() >= tempC)
        .mapToDouble(Cell::volumeMm3)
        .sum();
  }
}
