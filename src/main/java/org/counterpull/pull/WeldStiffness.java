package org.counterpull.pull;

import org.counterpull.shrinkage.RestrainedShrinkage;

/**
 * First values for the stiffness of a piece of weld: while it pulls, and cold.
 *
 * <p>Pull: across, {@link RestrainedShrinkage#PULL_STIFFNESS_MPA_PER_MM} times thickness times
 * length; about the weld line that times h2 / 12; the other components near rigid, taken as {@value
 * #NEAR_RIGID} times as stiff. Cold: E a l / w with throat a, length l and gauge w, the distance
 * over which the weld hands its force on (about 10 mm); shear with G; turns by the same block.
 */
public final class WeldStiffness {
  /** Distance over which a weld or tack hands its force on, mm (derived, first value). */
  public static final double GAUGE_MM = 10;

  private static final double NEAR_RIGID = 30;

  private WeldStiffness() {}

  /** While it pulls; length of the segment and thickness of the plate in mm. */
  public static SpringStiffness pulling(double lengthMm, double thicknessMm) {
    double across = RestrainedShrinkage.PULL_STIFFNESS_MPA_PER_MM * thicknessMm * lengthMm;
    double stiff = NEAR_RIGID * across;
    return new SpringStiffness(
        stiff,
        across,
        stiff,
        across * thicknessMm * thicknessMm / 12,
        stiff * lengthMm * lengthMm / 12,
        stiff * lengthMm * lengthMm / 12);
  }

  /** Cold; length of the segment or tack, throat and gauge in mm. */
  public static SpringStiffness cold(
      double lengthMm, double throatMm, double gaugeMm, ElasticMaterial material) {
    double normal = material.elasticModulusMPa() * throatMm * lengthMm / gaugeMm;
    double shear = material.shearModulusMPa() * throatMm * lengthMm / gaugeMm;
    return new SpringStiffness(
        shear,
        normal,
        shear,
        normal * throatMm * throatMm / 12,
        shear * (lengthMm * lengthMm + throatMm * throatMm) / 12,
        normal * lengthMm * lengthMm / 12);
  }
}
