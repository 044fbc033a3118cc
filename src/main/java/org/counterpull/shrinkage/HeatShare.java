package org.counterpull.shrinkage;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Require;

/**
 * The share of a weld's heat that goes into one of the two plates that it joins.
 *
 * <p>share = n h / (n h + n' h'), with n the number of half-plates that leave the weld: tee 2 for
 * the flange and 1 for the web, corner 1 and 1, lap 2 for the continuing plate and 1 for the one
 * that ends. A butt weld's heat is not shared: both halves are one plate.
 */
public final class HeatShare {
  public static final Formula FORMULA =
      new Formula(
          "heat-share",
          "share of the net heat that goes into this plate",
          "1",
          "from memory: the practice of Okerblom and Vinokurov and of the Osaka school");

  private HeatShare() {}

  /**
   * The share of this plate.
   *
   * @param halfPlates half-plates of this plate that leave the weld, 1 or 2
   * @param thicknessMm thickness of this plate, mm
   * @param otherHalfPlates half-plates of the other plate, 1 or 2
   * @param otherThicknessMm thickness of the other plate, mm
   */
  public static Computed of(
      int halfPlates, double thicknessMm, int otherHalfPlates, double otherThicknessMm) {
    return FORMULA.result(share(halfPlates, thicknessMm, otherHalfPlates, otherThicknessMm));
  }

  /** As {@link #of}, as a plain number. */
  public static double share(
      int halfPlates, double thicknessMm, int otherHalfPlates, double otherThicknessMm) {
    Require.positive("half-plates", halfPlates, "");
    Require.positive("other half-plates", otherHalfPlates, "");
    Require.positive("thickness", thicknessMm, "mm");
    Require.positive("other thickness", otherThicknessMm, "mm");
    double own = halfPlates * thicknessMm;
    return own / (own + otherHalfPlates * otherThicknessMm);
  }
}
