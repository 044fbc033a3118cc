package org.counterpull.feeding;

import org.counterpull.quantity.Require;

/**
 * Shielding gas by volume; what is neither argon nor carbon dioxide is oxygen, helium or the like.
 *
 * @param argonPercent share of argon, %
 * @param co2Percent share of carbon dioxide, %
 */
public record ShieldingGas(double argonPercent, double co2Percent) {
  /** The usual mixture for steel. */
  public static final ShieldingGas ARGON_18_CO2 = new ShieldingGas(82, 18);

  public static final ShieldingGas ARGON_25_CO2 = new ShieldingGas(75, 25);
  public static final ShieldingGas CO2 = new ShieldingGas(0, 100);
  public static final ShieldingGas ARGON = new ShieldingGas(100, 0);

  /** No gas from a bottle: covered electrodes and self-shielded wire. */
  public static final ShieldingGas NONE = new ShieldingGas(0, 0);

  public ShieldingGas {
    Require.within("argon", argonPercent, 0, 100, "%");
    Require.within("carbon dioxide", co2Percent, 0, 100 - argonPercent, "%");
  }
}
