package org.counterpull.stock;

import org.counterpull.section.SectionArea;

/**
 * Round tube, written outside diameter x wall.
 *
 * @param outsideMm outside diameter
 * @param wallMm wall
 */
public record RoundTube(double outsideMm, double wallMm) implements Stock {
  static final String EXAMPLE = "round tube 48.3 x 3.2";

  public RoundTube {
    Dimensions.plausible("round tube", EXAMPLE, outsideMm, wallMm);
    Dimensions.require(
        2 * wallMm < outsideMm,
        "round tube: two walls of "
            + Dimensions.print(wallMm)
            + " mm do not fit in an outside diameter of "
            + Dimensions.print(outsideMm)
            + " mm; write outside diameter x wall",
        EXAMPLE);
  }

  /** Bore. */
  public double insideMm() {
    return outsideMm - 2 * wallMm;
  }

  @Override
  public double areaMm2() {
    return SectionArea.roundTubeMm2(outsideMm, wallMm);
  }

  @Override
  public double acrossMm() {
    return outsideMm;
  }

  @Override
  public double upMm() {
    return outsideMm;
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
    return "round tube " + Dimensions.times(outsideMm, wallMm);
  }
}
