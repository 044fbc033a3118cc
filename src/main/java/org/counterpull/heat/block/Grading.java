package org.counterpull.heat.block;

import java.util.List;
import java.util.Locale;

/** Cell edges along a direction: fine where it matters, growing away from there. */
public final class Grading {
  private static final int SAMPLES_PER_CELL = 20;
  private static final int MOST_SAMPLES = 200_000;

  private Grading() {}

  /**
   * A stretch that wants fine cells.
   *
   * @param fromMm its start
   * @param toMm its end, not before the start
   */
  public record Zone(double fromMm, double toMm) {
    public Zone {
      if (!(toMm >= fromMm)) {
        throw new IllegalArgumentException("zone from " + fromMm + " to " + toMm + " mm");
      }
    }

    double distanceMm(double place) {
      return Math.max(0, Math.max(fromMm - place, place - toMm));
    }
  }

  /** Equal cells of at most the given size. */
  public static double[] uniform(double fromMm, double toMm, double cellMm) {
    return graded(fromMm, toMm, List.of(), cellMm, 1, cellMm);
  }

  /**
   * Graded cells.
   *
   * @param fromMm start of the direction
   * @param toMm its end, above the start
   * @param zones stretches with fine cells
   * @param fineMm cell size in the zones
   * @param growth size of a cell over that of its neighbour nearer to a zone, 1 to about 1.5
   * @param coarseMm largest cell
   */
  public static double[] graded(
      double fromMm, double toMm, List<Zone> zones, double fineMm, double growth, double coarseMm) {
    double length = toMm - fromMm;
    if (!(length > 0 && fineMm > 0 && growth >= 1 && coarseMm >= fineMm)) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "cannot grade %.4g mm with cells of %.4g to %.4g mm growing by %.4g",
              length,
              fineMm,
              coarseMm,
              growth));
    }
    int samples =
        (int) Math.min(MOST_SAMPLES, Math.max(200, Math.ceil(SAMPLES_PER_CELL * length / fineMm)));
    double[] count = new double[samples + 1];
    double step = length / samples;
    for (int s = 0; s < samples; s++) {
      double place = fromMm + (s + 0.5) * step;
      count[s + 1] = count[s] + step / wanted(place, zones, fineMm, growth, coarseMm);
    }
    // Rounded up, so that no cell is larger than asked; the margin forgives rounding of a fit.
    int cells = (int) Math.max(1, Math.ceil(count[samples] - 1e-6));
    double[] edges = new double[cells + 1];
    edges[0] = fromMm;
    edges[cells] = toMm;
    int s = 0;
    for (int i = 1; i < cells; i++) {
      double target = count[samples] * i / cells;
      while (count[s + 1] < target) {
        s++;
      }
      edges[i] = fromMm + step * (s + (target - count[s]) / (count[s + 1] - count[s]));
    }
    return edges;
  }

  private static double wanted(
      double place, List<Zone> zones, double fineMm, double growth, double coarseMm) {
    double wanted = coarseMm;
    for (Zone zone : zones) {
      // Cells that grow by a factor g reach size s at the distance s / ln g about.
      wanted = Math.min(wanted, fineMm + Math.log(growth) * zone.distanceMm(place));
    }
    return wanted;
  }
}
