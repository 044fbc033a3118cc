package org.counterpull.penetration;

/**
 * Factors K of {@link JacksonShrubsall}, in mm (mm/s V2 / A4)^(1/3).
 *
 * <p>Derived from published settings of carbon dioxide MAG that are known to work: 0.0229 (0.0012
 * in inches) where the edges are tight, 0.034 over a gap of 1.2 mm and more. The classes of the
 * other processes are common practice, no source.
 */
public final class PenetrationFactor {
  /** Spray or globular wire, tight joint. */
  public static final double TIGHT = 0.0229;

  /** The same over a gap of 1.2 mm and more. */
  public static final double OVER_GAP = 0.034;

  /** Gap from which {@link #OVER_GAP} counts, mm. */
  public static final double GAP_FROM_MM = 1.2;

  /** Share of the factor that short-circuit transfer keeps. */
  public static final double SHORT_CIRCUIT_SHARE = 0.85;

  /** Share that rutile electrodes (E6013) keep. */
  public static final double RUTILE_SHARE = 0.7;

  /** Share that basic electrodes (E7018) keep. */
  public static final double BASIC_SHARE = 0.85;

  /** 25.4 mm/in over the cube root of 60/25.4 (in/min)/(mm/s). */
  private static final double INCH_TO_SI = 25.4 / Math.cbrt(60 / 25.4);

  private PenetrationFactor() {}

  /** Factor for a root gap. */
  public static double forGap(double gapMm) {
    return gapMm >= GAP_FROM_MM ? OVER_GAP : TIGHT;
  }

  /** Factor in mm and mm/s from one in inches and in/min. */
  public static double fromInch(double factorInch) {
    return INCH_TO_SI * factorInch;
  }
}
