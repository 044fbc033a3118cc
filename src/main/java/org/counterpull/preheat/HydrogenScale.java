package org.counterpull.preheat;

import org.counterpull.quantity.Require;

/** Diffusible hydrogen scales of EN 1011-2, in ml per 100 g of deposit. */
public enum HydrogenScale {
  /** Over 15. */
  A,
  /** Over 10 to 15. */
  B,
  /** Over 5 to 10. */
  C,
  /** Over 3 to 5. */
  D,
  /** To 3. */
  E;

  /** The scale of a hydrogen content. */
  public static HydrogenScale of(double hydrogenMlPer100g) {
    double hydrogen = Require.notNegative("hydrogen", hydrogenMlPer100g, "ml/100 g");
    if (hydrogen > 15) {
      return A;
    }
    if (hydrogen > 10) {
      return B;
    }
    if (hydrogen > 5) {
      return C;
    }
    return hydrogen > 3 ? D : E;
  }
}
