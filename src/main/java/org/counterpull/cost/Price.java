package org.counterpull.cost;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Require;

/** Amounts of money: quantity times price. The unit of a result is the file's currency. */
final class Price {
  static final Formula LABOUR =
      new Formula(
          "labour-cost",
          "people's time: everything but cooling and fire watch",
          "money",
          "derived: time times rate");

  static final Formula MATERIAL =
      new Formula("material-cost", "what is used up", "money", "derived: quantity times price");

  static final Formula TOTAL =
      new Formula("total-cost", "sum of the parts", "money", "derived: sum");

  private Price() {}

  static Computed of(Formula formula, double quantity, double price, String currency) {
    Require.notNegative("quantity", quantity, "");
    Require.notNegative("price", price, currency);
    Computed plain = formula.result(quantity * price);
    return plain.formula().in(currency).result(plain.value(), plain.warnings());
  }
}
