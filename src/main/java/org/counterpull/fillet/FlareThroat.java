package org.counterpull.fillet;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Require;

/**
 * Effective throat of a flare groove filled flush, from the outside radius: flare-bevel 5/16 R for
 * stick and self-shielded wire, 5/8 R for gas-shielded wire; flare-V 5/8 R and 3/4 R.
 *
 * <p><b>Source:</b> from memory: AWS D1.1, flare groove effective sizes.
 *
 * <p><b>Valid for:</b> spray, globular or cored wire and stick; not for short-circuit transfer. The
 * radius of cold-formed hollow sections counts as twice their wall.
 */
public final class FlareThroat {
  public static final Formula FORMULA =
      new Formula(
          "flare-throat",
          "effective throat of a flare groove",
          "mm",
          "from memory: AWS D1.1, flare groove effective sizes");

  private FlareThroat() {}

  /** Form of the flare groove. */
  public enum Flare {
    BEVEL(5.0 / 16, 5.0 / 8),
    V(5.0 / 8, 3.0 / 4);

    private final double stickShare;
    private final double gasShieldedShare;

    Flare(double stickShare, double gasShieldedShare) {
      this.stickShare = stickShare;
      this.gasShieldedShare = gasShieldedShare;
    }
  }

  /**
   * Throat.
   *
   * @param flare form of the groove
   * @param gasShieldedWire gas-shielded wire (not short-circuiting); otherwise stick or
   *     self-shielded wire
   * @param radiusMm outside radius, mm, above 0
   */
  public static Computed of(Flare flare, boolean gasShieldedWire, double radiusMm) {
    Require.positive("outside radius", radiusMm, "mm");
    double share = gasShieldedWire ? flare.gasShieldedShare : flare.stickShare;
    return FORMULA.result(share * radiusMm);
  }
}
