package org.counterpull.penetration;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Penetration of a bead: {@code P = K (I^4 / (v U^2))^(1/3)}.
 *
 * <p><b>Source:</b> from memory: C. E. Jackson and A. E. Shrubsall, Welding Journal, 1953, for the
 * form; the factors K are derived from published settings (see {@link PenetrationFactor}).
 *
 * <p><b>Valid for:</b> bead on plate, flat position, travel 3 to 10 mm/s, wire of 1.0 to 1.2 mm;
 * within 30 %. Slower than 3 mm/s the pool cushions the arc, so penetration stops growing there.
 */
public final class JacksonShrubsall {
  public static final Formula FORMULA =
      new Formula(
          "penetration",
          "depth that an arc melts, within 30 %",
          "mm",
          "from memory: Jackson and Shrubsall, Welding Journal, 1953; factor derived");

  /** Slowest travel that still deepens the penetration, mm/s. */
  public static final double SLOWEST_MM_PER_S = 3;

  private static final double FASTEST_MM_PER_S = 10;

  private JacksonShrubsall() {}

  /**
   * Penetration with its warnings.
   *
   * @param factor K in mm (mm/s V2 / A4)^(1/3), above 0; see {@link PenetrationFactor}
   * @param currentA welding current, A, above 0
   * @param voltageV arc voltage, V, above 0
   * @param travelSpeedMmPerS travel speed, mm/s, above 0
   */
  public static Computed of(
      double factor, double currentA, double voltageV, double travelSpeedMmPerS) {
    return FORMULA.result(
        mm(factor, currentA, voltageV, travelSpeedMmPerS),
        new Limits()
            .within("travel speed", travelSpeedMmPerS, SLOWEST_MM_PER_S, FASTEST_MM_PER_S, "mm/s")
            .within("welding current", currentA, 50, 450, "A")
            .outside());
  }

  /** Penetration, mm; arguments as for {@link #of}. */
  public static double mm(
      double factor, double currentA, double voltageV, double travelSpeedMmPerS) {
    Require.positive("penetration factor", factor, "mm");
    Require.positive("welding current", currentA, "A");
    Require.positive("voltage", voltageV, "V");
    Require.positive("travel speed", travelSpeedMmPerS, "mm/s");
    double speed = Math.max(SLOWEST_MM_PER_S, travelSpeedMmPerS);
    return factor * Math.cbrt(Math.pow(currentA, 4) / (speed * voltageV * voltageV));
  }
}
