package org.counterpull.stock;

import org.counterpull.section.SectionArea;

/**
 * Angle: one leg upright at the front, the other lying at the bottom.
 *
 * @param uprightMm leg in z, outside
 * @param lyingMm leg in y, outside
 * @param thicknessMm of both legs
 * @param rootRadiusMm fillet in the corner, 0 for sharp; the toes are rounded by half of it, as EN
 *     10056-1 has it
 */
public record Angle(double uprightMm, double lyingMm, double thicknessMm, double rootRadiusMm)
    implements Stock {
  static final String EXAMPLE = "angle 50 x 50 x 6";

  public Angle {
    Dimensions.plausible("angle", EXAMPLE, uprightMm, lyingMm, thicknessMm);
    double shorterMm = Math.min(uprightMm, lyingMm);
    Dimensions.require(
        thicknessMm < shorterMm,
        "angle: the thickness of "
            + Dimensions.print(thicknessMm)
            + " mm must be less than the shorter leg of "
            + Dimensions.print(shorterMm)
            + " mm; write leg x leg x thickness",
        EXAMPLE);
    Dimensions.radius(
        "angle", rootRadiusMm, Math.min(shorterMm - thicknessMm, 2 * thicknessMm), EXAMPLE);
  }

  @Override
  public double areaMm2() {
    return SectionArea.angleMm2(uprightMm, lyingMm, thicknessMm, rootRadiusMm, rootRadiusMm / 2);
  }

  @Override
  public double acrossMm() {
    return lyingMm;
  }

  @Override
  public double upMm() {
    return uprightMm;
  }

  @Override
  public double thinnestMm() {
    return thicknessMm;
  }

  @Override
  public double thickestMm() {
    return thicknessMm;
  }

  @Override
  public String describe() {
    return "angle "
        + Dimensions.times(uprightMm, lyingMm, thicknessMm)
        + Dimensions.withRadius(rootRadiusMm);
  }
}
