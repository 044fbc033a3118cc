package org.counterpull.weldment;

import org.counterpull.quantity.Require;

/**
 * How stock is bought and sawn.
 *
 * @param barMm length of a bar as sold
 * @param kerfMm what each saw cut takes
 */
public record StockRoom(double barMm, double kerfMm) {
  /** The usual bar of the trade and a band saw or thin disc. Common practice, no source. */
  public static final StockRoom USUAL = new StockRoom(6000, 3);

  public StockRoom {
    Require.within("bar length", barMm, 100, 30_000, "mm");
    Require.within("saw cut", kerfMm, 0, 20, "mm");
  }
}
