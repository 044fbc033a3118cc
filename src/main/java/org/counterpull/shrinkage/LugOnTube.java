package org.counterpull.shrinkage;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * What a lug that is fillet-welded along a tube does to the tube.
 *
 * <p>Mean radius at mid-length of the lug: S / (2 pi) (1 - e^(-bL/2) cos(bL/2)) with S the hoop
 * shrinkage of the fillets and L the lug's length. Out of round: a kink phi at one generator of a
 * ring that doesn't stretch gives w(th) = (R phi / pi) sum over n from 2 of cos(n th) / (n2 - 1),
 * summed in closed form in {@link #outOfRound}. Bow: both fillets as one tendon at radius R; over a
 * short lug a kink F R L / (E I).
 *
 * <p>Valid for: an upper bound for lugs shorter than the tube, whose rest resists. The sign of out
 * of round is for a kink that tightens the curvature; an external fillet flattens it: opposite
 * sign.
 */
public final class LugOnTube {
  public static final Formula BORE =
      new Formula(
          "lug-bore-shrinkage",
          "mean radial shrinkage of the tube at mid-length of the lug",
          "mm",
          "derived from the ring-loaded cylindrical shell");

  private LugOnTube() {}

  /** Mean radial shrinkage; hoop shrinkage of all fillets, radius, wall and lug length in mm. */
  public static Computed boreShrinkage(
      double hoopShrinkageMm, double radiusMm, double thicknessMm, double lugLengthMm) {
    Require.finite("hoop shrinkage", hoopShrinkageMm, "mm");
    Require.positive("lug length", lugLengthMm, "mm");
    double half = RingLoad.betaPerMm(radiusMm, thicknessMm) * lugLengthMm / 2;
    return BORE.result(
        hoopShrinkageMm / (2 * Math.PI) * (1 - RingLoad.shearShape(half)),
        new Limits().within("radius over thickness", radiusMm / thicknessMm, 5, 100, "").outside());
  }

  /**
   * Radial displacement of a ring with a kink, over R times the kink.
   *
   * <p>The sum of cos(n th) / (n2 - 1) from n = 2 is 1/2 + cos(th)/4 - (pi - th) sin(th)/2 for th
   * from 0 to 2 pi.
   *
   * @param angleRad angle round the tube from the kink, 0 to 2 pi
   */
  public static double outOfRound(double angleRad) {
    Require.within("angle", angleRad, 0, 2 * Math.PI, "rad");
    double sum = 0.5 + Math.cos(angleRad) / 4 - (Math.PI - angleRad) * Math.sin(angleRad) / 2;
    return sum / Math.PI;
  }

  /** Angle by which a short lug kinks the tube's axis, rad; tendon force of both fillets in N. */
  public static double axisKinkRad(
      double forceN,
      double radiusMm,
      double lugLengthMm,
      double inertiaMm4,
      double elasticModulusMPa) {
    Require.positive("second moment of area", inertiaMm4, "mm4");
    Require.positive("modulus of elasticity", elasticModulusMPa, "N/mm2");
    return forceN * radiusMm * lugLengthMm / (elasticModulusMPa * inertiaMm4);
  }
}
