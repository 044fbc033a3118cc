package org.counterpull.pulljob;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.counterpull.shrinkage.ShrinkZone;
import org.counterpull.shrinkage.ShrinkageMaterial;
import org.counterpull.zone.LinePeaks;
import org.counterpull.zone.Reach;
import org.counterpull.zone.ZoneRule;
import org.counterpull.zone.ZoneShrinkage;

/**
 * The zone rule on closed-form peak temperatures: what a run of narrow, short or edge walls wants.
 * Equal walls are worked out once. The field is that of a long run: what a short one loses at its
 * ends is left out.
 */
final class ZonePeaks {
  private static final double ENDLESS_IN_RADII = 60;

  private final Map<Case, ZoneShrinkage> known = new HashMap<>();

  /**
   * A wall and its heat.
   *
   * @param wall the wall; only its sizes count
   * @param heatJPerMm net heat into it
   * @param startC before the run
   * @param sectionMm2 section that holds it lengthwise
   * @param yieldMPa of the wall
   */
  record Case(Sizes wall, double heatJPerMm, double startC, double sectionMm2, double yieldMPa) {}

  /** Sizes of a wall. */
  record Sizes(
      double thicknessMm,
      boolean goesOn,
      double middleMm,
      double ahead,
      double behind,
      double around) {
    static Sizes of(Wall wall) {
      return new Sizes(
          rounded(wall.thicknessMm()),
          wall.goesOn(),
          rounded(wall.middleMm()),
          rounded(wall.aheadMm()),
          rounded(wall.behindMm()),
          rounded(wall.aroundMm()));
    }

    private static double rounded(double mm) {
      return Math.rint(mm * 10) / 10;
    }
  }

  ZoneShrinkage of(Case asked, ShrinkageMaterial material) {
    return known.computeIfAbsent(asked, c -> work(c, material));
  }

  private static ZoneShrinkage work(Case c, ShrinkageMaterial material) {
    double radius = ShrinkZone.thickRadiusMm(c.heatJPerMm, material);
    double far = ENDLESS_IN_RADII * radius;
    Sizes wall = c.wall;
    Reach across =
        wall.around > 0
            ? new Reach.Around(wall.around)
            : wall.ahead > far && wall.behind > far
                ? new Reach.Endless()
                : new Reach.Between(-Math.min(far, wall.behind), Math.min(far, wall.ahead));
    double low = wall.middleMm - wall.thicknessMm / 2;
    double high = wall.middleMm + wall.thicknessMm / 2;
    Reach.Between depth = new Reach.Between(Math.min(0, low), Math.max(0, high));
    LinePeaks peaks =
        new LinePeaks(
            c.heatJPerMm,
            material.heatCapacityJPerMm3K(),
            c.startC,
            across,
            depth,
            Optional.empty());
    double yieldRiseK = c.yieldMPa / (material.elasticModulusMPa() * material.expansionPerK());
    return ZoneRule.of(
        peaks.cells(yieldRiseK),
        1,
        new org.counterpull.zone.Wall(wall.thicknessMm, wall.middleMm, c.sectionMm2),
        c.startC,
        c.yieldMPa,
        material);
  }
}
