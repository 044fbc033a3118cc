package org.counterpull.feeding;

import java.util.OptionalDouble;

/**
 * How metal crosses the arc of a solid wire. Spray only at or above the spray current and with
 * enough argon; whatever lies below is treated as short-circuit, which is the cautious reading of
 * the globular range.
 */
public enum TransferMode {
  SHORT_CIRCUIT("short-circuit"),
  SPRAY("spray");

  private final String word;

  TransferMode(String word) {
    this.word = word;
  }

  /** The mode as printed. */
  public String word() {
    return word;
  }

  /**
   * Mode of a wire at a current.
   *
   * @param wireMm wire diameter, mm, above 0
   * @param gas shielding gas
   * @param currentA welding current, A
   */
  public static TransferMode of(double wireMm, ShieldingGas gas, double currentA) {
    OptionalDouble spray = SprayCurrent.amperes(wireMm, gas);
    boolean sprays = spray.isPresent() && currentA >= spray.getAsDouble();
    return sprays ? SPRAY : SHORT_CIRCUIT;
  }
}
