package org.counterpull.zone;

import java.util.List;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;
import org.counterpull.shrinkage.ShrinkZone;
import org.counterpull.shrinkage.ShrinkageMaterial;

/**
 * Shrinkage of a run from the peak temperatures around it.
 *
 * <p>Across: a strain of -0.012 wherever the peak reached 500 C. With V the zone's volume per
 * length of run, S = 0.012 V / h; with M its first moment about the wall's middle, phi = 12 x 0.012
 * M / h3.
 *
 * <p>Along: what yielded in compression at its peak and stays shorter, alpha dT - e - eY, at most
 * eY because it yields back in tension as it cools; F = E times its integral over the section. e is
 * by how much the section that holds the hot metal gives way as a plane ({@link LengthwiseYield}):
 * nothing in a wide plate, so that narrow strips and bars get less.
 *
 * <p>Valid for: carbon steel; cells much smaller than the zone (its edge is a staircase of cells).
 * Where the zone goes through the wall (from Q / h2 = 5.5 J/mm3) only what is lopsided in it turns
 * the wall: six measured tees (P. Ferro et al., Procedia Structural Integrity 33, 2021) turned more
 * than that and as the closed form says, so that the angle is given with a warning.
 */
public final class ZoneRule {
  private static final String MURAKAMI =
      "zone rule of H. Murakami et al., ISIJ International 61(7), 2021, p. 2143, on peak"
          + " temperatures";

  public static final Formula ACROSS =
      new Formula("zone-shrinkage", "free transverse shrinkage of the wall", "mm", MURAKAMI);
  public static final Formula ANGLE =
      new Formula("zone-angle", "free angle of the wall", "rad", MURAKAMI);
  public static final Formula TENDON =
      new Formula(
          "zone-tendon-force",
          "shrinkage force along the weld",
          "N",
          "yield-limited strain of Okerblom on peak temperatures, derived");

  /** Peak from which metal shrinks across, deg C (Murakami et al. 2021). */
  public static final double SHRINKS_FROM_C = 500;

  /** A zone within this share of the thickness of the far face has gone through. */
  private static final double FAR_SIDE = 0.4;

  private static final String NOTHING = "no metal reached 500 C: the run or the cells are missing";

  private ZoneRule() {}

  /**
   * Applies the rule.
   *
   * @param cells metal around the run, at least all that got warm enough to yield
   * @param lengthMm length of run that the cells belong to: the slice of a long run, or all of a
   *     short one
   * @param wall the wall that they are part of
   * @param startC temperature before welding, deg C
   * @param yieldMPa yield stress of the wall, N/mm2
   * @param material of the wall
   */
  public static ZoneShrinkage of(
      List<PeakCell> cells,
      double lengthMm,
      Wall wall,
      double startC,
      double yieldMPa,
      ShrinkageMaterial material) {
    Require.positive("length", lengthMm, "mm");
    Require.positive("yield stress", yieldMPa, "N/mm2");
    double volume = 0;
    double summed = 0;
    for (PeakCell cell : cells) {
      if (cell.peakC() >= SHRINKS_FROM_C) {
        volume += cell.volumeMm3();
        summed += cell.volumeMm3() * (cell.bMm() - wall.middleBMm());
      }
    }
    double moment = summed;
    double h = wall.thicknessMm();
    boolean through =
        cells.stream()
            .anyMatch(
                c ->
                    c.peakC() >= SHRINKS_FROM_C
                        && Math.signum(moment) * (c.bMm() - wall.middleBMm())
                            < -FAR_SIDE * wall.thicknessMm());
    Limits limits = new Limits().expect(volume > 0, NOTHING);
    LengthwiseYield along =
        LengthwiseYield.of(
            cells,
            lengthMm,
            wall.sectionMm2(),
            startC,
            yieldMPa / material.elasticModulusMPa(),
            material);
    return new ZoneShrinkage(
        ACROSS.result(ShrinkZone.STRAIN * volume / (lengthMm * h), limits.outside()),
        ANGLE.result(
            12 * ShrinkZone.STRAIN * moment / (lengthMm * h * h * h),
            new Limits()
                .expect(volume > 0, NOTHING)
                .expect(!through, "the zone goes through the wall: its angle is a lower bound")
                .outside()),
        TENDON.result(along.forceN(), limits.outside()),
        along.atNMm(),
        along.atBMm());
  }
}
