package org.counterpull.stock;

import org.counterpull.section.SectionArea;

/**
 * Channel with parallel flanges: web upright at the front, flanges to the back.
 *
 * @param heightMm z, over both flanges
 * @param widthMm y, over a flange
 * @param webMm web thickness
 * @param flangeMm flange thickness
 * @param filletRadiusMm between web and flange, 0 for sharp
 */
public record Channel(
    double heightMm, double widthMm, double webMm, double flangeMm, double filletRadiusMm)
    implements Stock {
  static final String EXAMPLE = "channel 100 x 50 x 5 x 8";

  public Channel {
    Dimensions.plausible("channel", EXAMPLE, heightMm, widthMm, webMm, flangeMm);
    Dimensions.require(
        webMm < widthMm,
        "channel: the web of "
            + Dimensions.print(webMm)
            + " mm must be less than the width of "
            + Dimensions.print(widthMm)
            + " mm; write height x width x web x flange",
        EXAMPLE);
    Dimensions.require(
        2 * flangeMm < heightMm,
        "channel: two flanges of "
            + Dimensions.print(flangeMm)
            + " mm do not fit in a height of "
            + Dimensions.print(heightMm)
            + " mm; write height x width x web x flange",
        EXAMPLE);
    Dimensions.radius("channel", filletRadiusMm, heightMm / 2 - flangeMm, EXAMPLE);
  }

  @Override
  public double areaMm2() {
    return SectionArea.channelMm2(heightMm, widthMm, webMm, flangeMm, filletRadiusMm);
  }

  @Override
  public double acrossMm() {
    return widthMm;
  }

  @Override
  public double upMm() {
    return heightMm;
  }

  @Override
  public double thinnestMm() {
    return Math.min(webMm, flangeMm);
  }

  @Override
  public double thickestMm() {
    return Math.max(webMm, flangeMm);
  }

  @Override
  public String describe() {
    return "channel "
        + Dimensions.times(heightMm, widthMm, webMm, flangeMm)
        + Dimensions.withRadius(filletRadiusMm);
  }
}
