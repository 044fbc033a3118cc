package org.counterpull.stock;

import org.counterpull.section.SectionArea;

/**
 * Square or rectangular tube.
 *
 * @param acrossMm y, outside
 * @param upMm z, outside
 * @param wallMm wall
 * @param outsideRadiusMm outside corner radius, 0 for sharp; the inside one is smaller by the wall
 */
public record RectangularTube(double acrossMm, double upMm, double wallMm, double outsideRadiusMm)
    implements Stock {
  static final String EXAMPLE = "rectangular tube 60 x 40 x 4";

  public RectangularTube {
    Dimensions.plausible("tube", EXAMPLE, acrossMm, upMm, wallMm);
    double smallerMm = Math.min(acrossMm, upMm);
    Dimensions.require(
        2 * wallMm < smallerMm,
        "tube: two walls of "
            + Dimensions.print(wallMm)
            + " mm do not fit in "
            + Dimensions.print(smallerMm)
            + " mm; write width x height x wall",
        EXAMPLE);
    Dimensions.radius("tube", outsideRadiusMm, smallerMm / 2, EXAMPLE);
  }

  @Override
  public double areaMm2() {
    return SectionArea.rectangularTubeMm2(acrossMm, upMm, wallMm, outsideRadiusMm);
  }

  @Override
  public double thinnestMm() {
    return wallMm;
  }

  @Override
  public double thickestMm() {
    return wallMm;
  }

  @Override
  public String describe() {
    String dimensions =
        acrossMm == upMm
            ? "square tube " + Dimensions.times(acrossMm, wallMm)
            : "rectangular tube " + Dimensions.times(acrossMm, upMm, wallMm);
    return dimensions + Dimensions.withRadius(outsideRadiusMm);
  }
}
