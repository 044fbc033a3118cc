package org.counterpull.cooling;

/**
 * Shape factors of the EN formula for t8/5.
 *
 * <p><b>Source:</b> EN 1011-2, table D.1 (from memory). A range stands where the real value depends
 * on heat input and thickness: the low end gives short times, the safe side for hardness; the high
 * end long times, the safe side for toughness.
 */
public enum WeldShape {
  BEAD_ON_PLATE(1, 1, 1),
  BUTT_FILL(0.9, 0.9, 0.9),
  CORNER_FILLET(0.67, 0.9, 0.67),
  TEE_FILLET(0.45, 0.67, 0.67);

  private final double f2Low;
  private final double f2High;
  private final double f3;

  WeldShape(double f2Low, double f2High, double f3) {
    this.f2Low = f2Low;
    this.f2High = f2High;
    this.f3 = f3;
  }

  /** F2 that is safe when hardness is asked. */
  public double f2ForHardness() {
    return f2Low;
  }

  /** F2 that is safe when toughness or softening is asked. */
  public double f2ForToughness() {
    return f2High;
  }

  /** F3. */
  public double f3() {
    return f3;
  }
}
