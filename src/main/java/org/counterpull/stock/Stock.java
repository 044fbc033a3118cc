package org.counterpull.stock;

/** A section, dimensions in mm; y runs across it from front to back, z up. */
public sealed interface Stock {
  record Flat(double widthMm, double thicknessMm) implements Stock {}

  record Plate(double thicknessMm, double widthMm) implements Stock {}

  record Angle(double uprightMm, double lyingMm, double thicknessMm) implements Stock {}

  record Channel(double heightMm, double widthMm, double webMm, double flangeMm) implements Stock {}

  record ISection(double heightMm, double widthMm, double webMm, double flangeMm)
      implements Stock {}

  record RectangularTube(double widthMm, double heightMm, double wallMm) implements Stock {}

  record RoundBar(double diameterMm) implements Stock {}

  record SquareBar(double sideMm) implements Stock {}

  record RoundTube(double outsideMm, double wallMm) implements Stock {}
}
