package org.counterpull.strength;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Require;

/**
 * Length of a fillet that counts. EN: the length less a throat at each end that is not of full
 * size, and nothing where less than the larger of 30 mm and six throats is left. AISC: all of it
 * from four legs on, a shorter weld counts with a leg of a quarter of its length.
 *
 * <p><b>Source:</b> EN 1993-1-8:2005, 4.5.1; AISC 360, J2.2b (from memory).
 *
 * <p><b>Valid for:</b> fillets of one size along their length. Rings have no ends.
 */
public final class EffectiveLength {
  public static final Formula EN =
      new Formula(
          "effective-length", "length of a fillet that counts", "mm", "EN 1993-1-8:2005, 4.5.1");

  public static final Formula AISC =
      new Formula(
          "effective-leg",
          "leg that counts on a short fillet",
          "mm",
          "from memory: AISC 360, J2.2b");

  private static final double LEAST_MM = 30;
  private static final double LEAST_THROATS = 6;
  private static final double LEAST_LEGS = 4;

  private EffectiveLength() {}

  /**
   * Length that counts by EN; 0 where the weld is too short to count.
   *
   * @param lengthMm of the weld, above 0
   * @param throatMm above 0
   * @param openEnds ends that are not of full size: 0 for a ring or wrapped ends, else 1 or 2
   */
  public static Computed en(double lengthMm, double throatMm, int openEnds) {
    Require.positive("length of a weld", lengthMm, "mm");
    Require.positive("throat", throatMm, "mm");
    Require.within("number of open ends", openEnds, 0, 2, "1");
    double left = lengthMm - openEnds * throatMm;
    return EN.result(left < Math.max(LEAST_MM, LEAST_THROATS * throatMm) ? 0 : left);
  }

  /**
   * Leg that counts by AISC.
   *
   * @param lengthMm of the weld, above 0
   * @param legMm above 0
   */
  public static Computed aiscLeg(double lengthMm, double legMm) {
    Require.positive("length of a weld", lengthMm, "mm");
    Require.positive("leg", legMm, "mm");
    return AISC.result(Math.min(legMm, lengthMm / LEAST_LEGS));
  }
}
