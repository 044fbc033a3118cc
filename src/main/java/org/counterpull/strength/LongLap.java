package org.counterpull.strength;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Reduction of a long fillet in a lap joint that is pulled along: its middle carries less than its
 * ends. EN {@code 1.2 - 0.2 l/(150 a)} and AISC {@code 1.2 - 0.002 l/z}, at most 1.
 *
 * <p><b>Source:</b> EN 1993-1-8:2005, 4.11; AISC 360, J2.2b (from memory).
 *
 * <p><b>Valid for:</b> EN to 900 throats; AISC to 300 legs, longer ones are answered with the value
 * at 300 and a warning.
 */
public final class LongLap {
  private static final double EN_FROM_THROATS = 150;
  private static final double AISC_TO_LEGS = 300;

  public static final Formula EN =
      new Formula(
          "long-lap-factor", "reduction of a long fillet in a lap", "1", "EN 1993-1-8:2005, 4.11");

  public static final Formula AISC =
      new Formula(
          "long-lap-factor-aisc",
          "reduction of a long end-loaded fillet",
          "1",
          "from memory: AISC 360, J2.2b");

  private LongLap() {}

  /** Factor by EN. */
  public static Computed en(double lengthMm, double throatMm) {
    double throats = ratio(lengthMm, "throat", throatMm);
    return EN.result(
        Math.max(0, Math.min(1, 1.2 - 0.2 * throats / EN_FROM_THROATS)),
        new Limits().within("length over throat", throats, 0, 6 * EN_FROM_THROATS, "1").outside());
  }

  /** Factor by AISC. */
  public static Computed aisc(double lengthMm, double legMm) {
    double legs = ratio(lengthMm, "leg", legMm);
    return AISC.result(
        Math.min(1, 1.2 - 0.002 * Math.min(legs, AISC_TO_LEGS)),
        new Limits().within("length over leg", legs, 0, AISC_TO_LEGS, "1").outside());
  }

  private static double ratio(double lengthMm, String what, double sizeMm) {
    return Require.positive("length of a weld", lengthMm, "mm")
        / Require.positive(what, sizeMm, "mm");
  }
}
