package org.counterpull.stock;

import org.counterpull.section.SectionArea;

/**
 * Round bar.
 *
 * @param diameterMm y and z
 */
public record RoundBar(double diameterMm) implements Stock {
  static final String EXAMPLE = "round bar 20";

  public RoundBar {
    Dimensions.plausible("round bar", EXAMPLE, diameterMm);
  }

  @Override
  public double areaMm2() {
    return SectionArea.roundMm2(diameterMm);
  }

  @Override
  public double acrossMm() {
    return diameterMm;
  }

  @Override
  public double upMm() {
    return diameterMm;
  }

  @Override
  public double thinnestMm() {
    return diameterMm;
  }

  @Override
  public double thickestMm() {
    return diameterMm;
  }

  @Override
  public String describe() {
    return "round bar " + Dimensions.print(diameterMm);
  }
}
