package org.counterpull.power;

import java.util.Locale;

/**
 * The conventional load lines of IEC 60974-1: {@code U2 = U0 + 0.04 or 0.05 I2}, level from the
 * capped voltage on (from memory).
 */
public enum LoadLine {
  /** Covered electrodes: 20 + 0.04 I, at most 44 V. */
  MMA(20, 0.04, 44),
  /** Solid and cored wire: 14 + 0.05 I, at most 44 V. */
  MAG(14, 0.05, 44),
  /** Tungsten electrode: 10 + 0.04 I, at most 34 V. */
  TIG(10, 0.04, 34);

  private final double zeroVoltageV;
  private final double slopeVPerA;
  private final double highestVoltageV;

  LoadLine(double zeroVoltageV, double slopeVPerA, double highestVoltageV) {
    this.zeroVoltageV = zeroVoltageV;
    this.slopeVPerA = slopeVPerA;
    this.highestVoltageV = highestVoltageV;
  }

  /** The line by its word: mma, mag or tig. */
  public static LoadLine of(String word) {
    try {
      return valueOf(word.toUpperCase(Locale.ROOT));
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException(
          "no load line for '" + word + "': write mma, mag or tig", e);
    }
  }

  /** Load voltage at a current, V. */
  double voltageV(double currentA) {
    return Math.min(highestVoltageV, zeroVoltageV + slopeVPerA * currentA);
  }

  /** Current at which the load takes a power, A: the line's own inverse. */
  double currentA(double powerW) {
    double slanted =
        (-zeroVoltageV + Math.sqrt(zeroVoltageV * zeroVoltageV + 4 * slopeVPerA * powerW))
            / (2 * slopeVPerA);
    double capA = (highestVoltageV - zeroVoltageV) / slopeVPerA;
    return slanted <= capA ? slanted : powerW / highestVoltageV;
  }

  /** Current at which the line reaches its highest voltage, A. */
  double levelFromA() {
    return (highestVoltageV - zeroVoltageV) / slopeVPerA;
  }
}
