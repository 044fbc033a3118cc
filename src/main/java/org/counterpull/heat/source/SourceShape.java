package org.counterpull.heat.source;

/**
 * How the power is spread around the source's point: along its travel, and over the plane across.
 * Only proportions count, because the power is normalised over the metal that it meets.
 */
public sealed interface SourceShape permits UniformBox, DoubleEllipsoid {

  /** Share of the power that lies behind a place along the travel (positive ahead), 0 to 1. */
  double shareBehind(double alongMm);

  /** Density along the travel, per mm. */
  double alongPerMm(double alongMm);

  /** Density over the plane across, in any unit, at a place across and into the metal. */
  double across(double acrossMm, double intoMm);

  /** How far it reaches along the travel, ahead or behind. */
  double reachAlongMm();

  /** How far it reaches across or in. */
  double reachAcrossMm();

  /** Length along the travel over which the power is felt to be spread. */
  double lengthMm();

  /** Size of the finest detail; cells are sampled at a quarter of it or finer. */
  double detailMm();
}
