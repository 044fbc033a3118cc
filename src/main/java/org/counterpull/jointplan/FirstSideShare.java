package org.counterpull.jointplan;

import org.counterpull.groove.Groove;
import org.counterpull.groove.WeldSections;

/**
 * Depths of a groove from both sides that give the first side six tenths of the weld metal, caps
 * included: laid to the end before the second side is begun, it then leaves the least angle.
 *
 * <p><b>Source:</b> Watanabe and Satoh 1956: no angle where the side welded first holds about 60 %
 * of the deposit.
 */
final class FirstSideShare {
  static final double SHARE = 0.6;

  /** Depths are given to the bench in half millimetres. */
  private static final double STEP_MM = 0.5;

  private FirstSideShare() {}

  /**
   * The groove with its second side made shallower.
   *
   * @param capMm height of the caps
   * @param gougedMm2 what is ground out of the root and goes to the second side
   */
  static Groove balanced(Groove groove, double capMm, double gougedMm2) {
    double low = leastDepthMm(groove);
    double high = groove.thicknessMm() - groove.rootFaceMm() - low;
    if (high <= low) {
      return groove;
    }
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      if (firstShare(groove.withSecondDepth(middle), capMm, gougedMm2) > SHARE) {
        low = middle;
      } else {
        high = middle;
      }
    }
    double depths = groove.thicknessMm() - groove.rootFaceMm();
    double second = Math.round((low + high) / 2 / STEP_MM) * STEP_MM;
    return groove.withSecondDepth(
        Math.max(leastDepthMm(groove), Math.min(depths - leastDepthMm(groove), second)));
  }

  /** Share of the deposit that the first side takes. */
  static double firstShare(Groove groove, double capMm, double gougedMm2) {
    double first = groove.firstSide().areaMm2() + WeldSections.capMm2(groove.faceWidthMm(), capMm);
    double faceMm = groove.secondSide().widthMm(groove.secondSide().heightMm());
    double second = groove.secondSide().areaMm2() + WeldSections.capMm2(faceMm, capMm);
    return first / (first + second + gougedMm2);
  }

  private static double leastDepthMm(Groove groove) {
    double arcMm = groove.radiusMm() * (1 - Math.sin(Math.toRadians(groove.angleDegrees())));
    return Math.max(arcMm, 1);
  }
}
