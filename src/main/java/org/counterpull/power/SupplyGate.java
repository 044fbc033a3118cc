package org.counterpull.power;

/**
 * Whether a socket feeds a machine at a current: the effective supply current stays within the
 * breaker and the current while the arc burns within 1.45 times the breaker.
 *
 * <p><b>Source:</b> common practice, no source; 1.45 is the conventional tripping current of type B
 * and C breakers.
 *
 * @param peakA supply current while the arc burns, A
 * @param effectiveA supply current over the duty cycle, A
 * @param breakerA rating of the breaker, A
 */
public record SupplyGate(double peakA, double effectiveA, double breakerA) {
  /** Times its rating that a breaker carries for the minutes of an arc. */
  public static final double PEAK_OVER_BREAKER = 1.45;

  /**
   * The gate for a machine at a current.
   *
   * @param line load line of the process
   * @param conversion efficiency and power factor
   * @param supply the socket
   * @param currentA welding current, A, above 0
   * @param dutyPercent duty cycle kept at that current, %
   */
  public static SupplyGate at(
      LoadLine line, Conversion conversion, Supply supply, double currentA, double dutyPercent) {
    double peakA =
        SupplyCurrent.amperes(LoadVoltage.volts(line, currentA), currentA, conversion, supply);
    return new SupplyGate(
        peakA, SupplyCurrent.effectiveA(peakA, 0, dutyPercent), supply.breakerA());
  }

  /** Both currents are within the breaker's means. */
  public boolean open() {
    return effectiveA <= breakerA && peakA <= PEAK_OVER_BREAKER * breakerA;
  }

  /**
   * Largest welding current at which the gate is open, A. The plate's duty cycle falls with current
   * at least as fast as the effective current rises, so where the peak fits and the duty is the
   * plate's, only the duty range up to 100 % can still close the gate; there the sustained limit
   * rules.
   */
  public static double largestCurrentA(
      LoadLine line, Conversion conversion, Supply supply, PlateDuty plate) {
    double peakLimitA =
        WeldingCurrentLimit.amperes(
            line, conversion, supply, PEAK_OVER_BREAKER * supply.breakerA());
    double sustainedA = WeldingCurrentLimit.amperes(line, conversion, supply, supply.breakerA());
    double currentA = peakLimitA;
    if (at(line, conversion, supply, currentA, plate.percentAt(currentA)).open()) {
      return currentA;
    }
    double low = sustainedA;
    double high = peakLimitA;
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      boolean open = at(line, conversion, supply, middle, plate.percentAt(middle)).open();
      if (open) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
