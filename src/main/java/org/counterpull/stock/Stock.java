package org.counterpull.stock;

import org.counterpull.quantity.LengthUnit;

/**
 * A cross-section of stock; all dimensions in mm. The axes are those of the package: y across from
 * front to back, z up.
 *
 * <p>Corners are sharp unless the text gives a radius.
 */
public sealed interface Stock
    permits Flat, Plate, Angle, Channel, ISection, RectangularTube, RoundBar, SquareBar, RoundTube {

  /**
   * Reads stock as people write it: {@code flat 60 x 10}, {@code plate 8}, {@code angle 50 x 50 x
   * 6}, {@code channel 100 x 50 x 5 x 8}, {@code i-section 100 x 55 x 4.1 x 5.7}, {@code square
   * tube 50 x 3}, {@code rectangular tube 60 x 40 x 4}, {@code round bar 20}, {@code square bar
   * 12}, {@code round tube 48.3 x 3.2} (outside diameter x wall). Tube, angle, channel and I
   * section may end in {@code radius 7}.
   *
   * <p>Each dimension may carry its own unit; one that carries none takes the unit of the next that
   * does, so that {@code 1/2 x 2 in} is all inches; otherwise {@code bare}.
   *
   * @throws StockException when the text is no stock
   */
  static Stock parse(String text, LengthUnit bare) {
    return StockText.parse(text, bare);
  }

  /**
   * Area of the cross-section.
   *
   * @throws IllegalStateException for a plate without a width
   */
  double areaMm2();

  /** Extent in y. */
  double acrossMm();

  /** Extent in z. */
  double upMm();

  /** The thinnest wall, leg, web or flange; of a solid bar its smaller dimension. */
  double thinnestMm();

  /** The thickest wall, leg, web or flange; of a solid bar its smaller dimension. */
  double thickestMm();

  /** The stock in words and mm, in the form that {@link #parse} reads. */
  String describe();
}
