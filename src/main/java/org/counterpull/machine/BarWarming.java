package org.counterpull.machine;

import org.counterpull.cooling.Conductor;
import org.counterpull.cooling.InstantSources;
import org.counterpull.quantity.Require;

/**
 * How a bar that is welded across its width warms from pass to pass: plane sources in a bar with
 * loss from its faces, added up. The share of the heat is 2 over the number of ways that it can
 * leave: 1 in the middle of a bar, 2 at a free end.
 *
 * <p><b>Source:</b> textbook conduction (Carslaw and Jaeger), from memory; conductivity 0.045
 * W/mmK, heat capacity 0.004082 J/mm3K, film 20 W/m2K.
 *
 * <p><b>Valid for:</b> intervals after which the section has evened out, {@code 4 a t} above the
 * square of its larger side.
 */
public final class BarWarming {
  /** Steel at the mean temperature of a cooling bar. */
  public static final Conductor WARM_STEEL = new Conductor(0.045, 0.004082);

  private static final double FILM_W_PER_MM2K = 20e-6;

  private BarWarming() {}

  /** Loss rate of a bar, 1/s. */
  public static double lossPerS(BarSection bar) {
    double perimeterMm = 2 * (bar.thicknessMm() + bar.widthMm());
    return FILM_W_PER_MM2K * perimeterMm / (WARM_STEEL.heatCapacityJPerMm3K() * areaMm2(bar));
  }

  /**
   * Rise at the joint just before the next pass, after equal passes at equal intervals, K.
   *
   * @param bar section
   * @param share 2 over the number of ways that heat leaves
   * @param netHeatPerPassJ net heat of one pass, J, above 0
   * @param intervalS from one pass to the next, s, above 0
   * @param passes passes laid, 0 or more
   */
  public static double afterPassesK(
      BarSection bar, double share, double netHeatPerPassJ, double intervalS, int passes) {
    Require.positive("net heat", netHeatPerPassJ, "J");
    Require.positive("interval", intervalS, "s");
    double sumK = 0;
    for (int n = 1; n <= passes; n++) {
      sumK +=
          InstantSources.planeInBarK(
              share * netHeatPerPassJ, WARM_STEEL, areaMm2(bar), 0, n * intervalS, lossPerS(bar));
    }
    return sumK;
  }

  private static double areaMm2(BarSection bar) {
    return bar.thicknessMm() * bar.widthMm();
  }
}
