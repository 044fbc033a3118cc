package org.counterpull.contact;

/**
 * What counts as touching, flush, a line, an overlap. Common practice, no source.
 *
 * @param closeMm faces at most this much further apart than the joint's gap are fitted to each
 *     other
 * @param flushMm edges at most this far from each other are flush
 * @param shortestMm shorter lines are left out
 * @param overlapMm solids in each other by more than this overlap
 */
public record FitUp(double closeMm, double flushMm, double shortestMm, double overlapMm) {
  /** 1 mm of fit-up, 1.5 mm for flush, lines from 3 mm, overlaps from 0.5 mm. */
  public static final FitUp USUAL = new FitUp(1, 1.5, 3, 0.5);

  public FitUp {
    if (!(closeMm > 0 && flushMm >= 0 && shortestMm >= 0 && overlapMm > 0)) {
      throw new IllegalArgumentException(
          "fit-up of " + closeMm + ", " + flushMm + ", " + shortestMm + ", " + overlapMm + " mm");
    }
  }
}
