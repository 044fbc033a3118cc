package org.counterpull.drawing;

import java.util.List;
import org.counterpull.mount.MountCase;
import org.counterpull.mount.Sensitive;
import org.counterpull.mount.Sleeve;
import org.counterpull.mount.WayAnswer;

/**
 * Which piece of the tube is drawn, and how large.
 *
 * @param lowMm left end of what is drawn, along the tube
 * @param highMm right end
 * @param topMm highest point above the axis
 * @param bottomMm lowest point below it, positive
 * @param perMm pixels per mm
 */
record MountScale(double lowMm, double highMm, double topMm, double bottomMm, double perMm) {
  private static final double MARGIN_PX = 60;
  private static final double BESIDE_MM = 25;
  private static final double BELOW_PX = 66;
  private static final double LEAST_MM = 90;
  private static final double FARTHEST_MM = 170;
  private static final double MOST_PER_MM = 3.2;

  static MountScale of(MountCase mount, List<WayAnswer> ways, double widthPx) {
    double around = Math.max(LEAST_MM, mount.halfLengthMm() + BESIDE_MM);
    double low = -around;
    double high = around;
    for (Sensitive s : mount.near()) {
      double at = s.nearestMm(0);
      if (!s.sized() && Math.abs(at) < FARTHEST_MM) {
        low = Math.min(low, at - BESIDE_MM);
        high = Math.max(high, at + BESIDE_MM);
      }
    }
    double outer = mount.tube().outerRadiusMm();
    double base = outer;
    for (WayAnswer way : ways) {
      if (way.sleeve().isPresent()) {
        Sleeve sleeve = way.sleeve().get();
        low = Math.min(low, sleeve.fromZMm() - BESIDE_MM);
        high = Math.max(high, sleeve.toZMm() + BESIDE_MM);
        base = Math.max(base, outer + sleeve.gapMm() + sleeve.wallMm());
      }
    }
    low = Math.max(low, mount.tube().lowZMm());
    high = Math.min(high, mount.tube().highZMm());
    double per = Math.min(MOST_PER_MM, (widthPx - 2 * MARGIN_PX) / (high - low));
    return new MountScale(low, high, base + mount.partner().heightMm(), base, per);
  }

  double heightPx() {
    return (topMm + bottomMm) * perMm + BELOW_PX;
  }

  double x(double zMm) {
    return MARGIN_PX + (zMm - lowMm) * perMm;
  }

  /** Height of the axis below the top of its panel. */
  double y(double radiusMm) {
    return (topMm - radiusMm) * perMm + 8;
  }
}
