package org.counterpull.weldment;

/**
 * What things cost, in one currency.
 *
 * @param currency as printed behind an amount
 * @param labourPerHour labour and overhead
 * @param wirePerKg solid and cored wire
 * @param electrodePerKg covered electrodes
 * @param gasPerM3 shielding gas
 * @param energyPerKWh electricity
 * @param stockPerKg bars, tubes and plate
 */
public record Prices(
    String currency,
    double labourPerHour,
    double wirePerKg,
    double electrodePerKg,
    double gasPerM3,
    double energyPerKWh,
    double stockPerKg) {

  /** Prices without that of the stock. */
  public Prices(
      String currency,
      double labourPerHour,
      double wirePerKg,
      double electrodePerKg,
      double gasPerM3,
      double energyPerKWh) {
    this(currency, labourPerHour, wirePerKg, electrodePerKg, gasPerM3, energyPerKWh, 0);
  }
}
