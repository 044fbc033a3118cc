package org.counterpull.stock;

import org.counterpull.section.SectionArea;

/**
 * Flat bar.
 *
 * @param widthMm y
 * @param thicknessMm z
 */
public record Flat(double widthMm, double thicknessMm) implements Stock {
  static final String EXAMPLE = "flat 60 x 10";

  public Flat {
    Dimensions.plausible("flat", EXAMPLE, widthMm, thicknessMm);
  }

  @Override
  public double areaMm2() {
    return SectionArea.rectangleMm2(widthMm, thicknessMm);
  }

  @Override
  public double acrossMm() {
    return widthMm;
  }

  @Override
  public double upMm() {
    return thicknessMm;
  }

  @Override
  public double thinnestMm() {
    return Math.min(widthMm, thicknessMm);
  }

  @Override
  public double thickestMm() {
    return thinnestMm();
  }

  @Override
  public String describe() {
    return "flat " + Dimensions.times(widthMm, thicknessMm);
  }
}
