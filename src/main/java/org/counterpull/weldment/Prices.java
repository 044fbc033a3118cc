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
 */
public record Prices(
    String currency,
    double labourPerHour,
    double wirePerKg,
    double electrodePerKg,
    double gasPerM3,
    double energyPerKWh) {}
