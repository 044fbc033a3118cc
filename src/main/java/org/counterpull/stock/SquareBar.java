package org.counterpull.stock;

import org.counterpull.section.SectionArea;

/**
 * Square bar.
 *
 * @param sideMm y and z
 */
public record SquareBar(double sideMm) implements Stock {
  static final String EXAMPLE = "square bar 20";

  public SquareBar {
    Dimensions.plausible("square bar", EXAMPLE, sideMm);
  }

  @Override
  public double areaMm2() {
    return SectionArea.rectangleMm2(sideMm, sideMm);
  }

  @Override
  public double acrossMm() {
    return sideMm;
  }

  @Override
  public double upMm() {
    return sideMm;
  }

  @Override
  public double thinnestMm() {
    return sideMm;
  }

  @Override
  public double thickestMm() {
    return sideMm;
  }

  @Override
  public String describe() {
    return "square bar " + Dimensions.print(sideMm);
  }
}
