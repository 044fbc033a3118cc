package org.counterpull.shrinkage;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Share of the free transverse shrinkage that is left under restraint.
 *
 * <p>S / S_free = 1 / (1 + 0.086 k^0.87), with k the degree of restraint: the mean stress across
 * the weld for 1 mm of mean closure of the gap, kgf/mm2 per mm. A survey of ship butts found about
 * 60 % below 1 and none above 10.
 *
 * <p>An elastic spring of 15 kgf/mm2 per mm (147.1 N/mm2 per mm) in series follows it within 8 % up
 * to k = 20; that is the first value of a weld's pull stiffness.
 *
 * <p>Valid for: k from 0 to 50; beyond it a warning.
 */
public final class RestrainedShrinkage {
  public static final Formula FORMULA =
      new Formula(
          "restrained-shrinkage",
          "share of the free transverse shrinkage that is left under restraint",
          "1",
          "from memory: Watanabe and Satoh, 1961, in AWS Welding Handbook");

  /** One kilogram-force, N. */
  public static final double NEWTON_PER_KGF = 9.80665;

  /** Stiffness of the weld that stands for this relation, N/mm2 per mm of closure (derived). */
  public static final double PULL_STIFFNESS_MPA_PER_MM = 15 * NEWTON_PER_KGF;

  private RestrainedShrinkage() {}

  /**
   * The share.
   *
   * @param restraintKgfPerMm2PerMm degree of restraint, 0 to 50
   */
  public static Computed of(double restraintKgfPerMm2PerMm) {
    Require.notNegative("restraint", restraintKgfPerMm2PerMm, "kgf/mm2 per mm");
    return FORMULA.result(
        1 / (1 + 0.086 * Math.pow(restraintKgfPerMm2PerMm, 0.87)),
        new Limits()
            .within("restraint", restraintKgfPerMm2PerMm, 0, 50, "kgf/mm2 per mm")
            .outside());
  }

  /** The share that a weld of the given pull stiffness in series gives; same unit for both. */
  public static double bySpring(double restraint, double pullStiffness) {
    Require.notNegative("restraint", restraint, "");
    Require.positive("pull stiffness", pullStiffness, "");
    return 1 / (1 + restraint / pullStiffness);
  }
}
