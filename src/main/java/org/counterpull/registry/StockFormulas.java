package org.counterpull.registry;

import java.util.List;
import org.counterpull.quantity.Computed;
import org.counterpull.quantity.LengthUnit;
import org.counterpull.quantity.QuantityException;
import org.counterpull.quantity.QuantityParser;
import org.counterpull.section.SectionMass;
import org.counterpull.stock.Plate;
import org.counterpull.stock.Stock;
import org.counterpull.stock.StockException;

/** Published formulas of stock. */
final class StockFormulas {
  private StockFormulas() {}

  static List<PublishedFormula> all() {
    return List.of(
        PublishedFormula.of(
            SectionMass.FORMULA,
            List.of(
                Argument.text("stock", "stock as in weldment files, such as flat 60 x 10"),
                Argument.quantity("length", "mm", "length of the piece"),
                Argument.text("width", "width of a plate in mm, where the stock has none")
                    .orElse("")),
            StockFormulas::mass));
  }

  private static Computed mass(Arguments a) {
    try {
      Stock stock = cut(Stock.parse(a.text("stock"), LengthUnit.MM), a.text("width"));
      return SectionMass.of(stock.areaMm2(), a.value("length"), SectionMass.STEEL_KG_PER_M3);
    } catch (StockException e) {
      throw new ArgumentException("stock: " + e.problem(), e.tryThis());
    }
  }

  private static Stock cut(Stock stock, String width) {
    boolean needsWidth = stock instanceof Plate plate && plate.widthMm().isEmpty();
    if (width.isEmpty()) {
      if (needsWidth) {
        throw new ArgumentException("a plate needs a width", "stock=\"plate 300 x 8\"");
      }
      return stock;
    }
    if (!needsWidth) {
      throw new ArgumentException(stock.describe() + " has its width already", "leave width out");
    }
    try {
      return ((Plate) stock).withWidth(QuantityParser.parseSizeMm(width, LengthUnit.MM));
    } catch (QuantityException e) {
      throw new ArgumentException("width: " + e.problem(), e.tryThis());
    }
  }
}
