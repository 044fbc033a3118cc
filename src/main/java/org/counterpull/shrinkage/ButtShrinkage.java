package org.counterpull.shrinkage;

import java.util.List;
import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Transverse shrinkage of a butt weld by two handbook area forms that bound it.
 *
 * <p>High: S = 0.20 A / h + 0.05 d. Low: S = 0.10 A / h. A is the area of deposited metal, h the
 * thickness, d the root opening. The high form describes heavy stick work, the low one low-heat
 * MAG; the heat form of {@link FreeShrinkage} with the real heat lies between.
 *
 * <p>Valid for: 6 to 25 mm, low restraint. Outside it the value is returned with a warning.
 */
public final class ButtShrinkage {
  public static final Formula HIGH =
      new Formula(
          "butt-shrinkage-high",
          "transverse shrinkage of a butt weld, high handbook value",
          "mm",
          "from memory: W. Spraragen and W. G. Ettinger, 1950; also AWS Welding Handbook vol. 1");

  public static final Formula LOW =
      new Formula(
          "butt-shrinkage-low",
          "transverse shrinkage of a butt weld, low handbook value",
          "mm",
          "from memory: O. W. Blodgett, Design of Welded Structures, 1966, 7.7");

  public static final Formula MIDDLE =
      new Formula(
          "butt-shrinkage-middle",
          "transverse shrinkage of a butt weld, middle handbook value",
          "mm",
          "from memory: quoted in reviews, author not certain");

  private ButtShrinkage() {}

  /**
   * The high value.
   *
   * @param weldAreaMm2 area of deposited metal, mm2
   * @param thicknessMm plate thickness, mm, 6 to 25
   * @param gapMm root opening, mm
   */
  public static Computed high(double weldAreaMm2, double thicknessMm, double gapMm) {
    check(weldAreaMm2, thicknessMm, gapMm);
    return HIGH.result(0.20 * weldAreaMm2 / thicknessMm + 0.05 * gapMm, limits(thicknessMm));
  }

  /** The low value; the root opening has no part in it beyond the area that it adds. */
  public static Computed low(double weldAreaMm2, double thicknessMm, double gapMm) {
    check(weldAreaMm2, thicknessMm, gapMm);
    return LOW.result(0.10 * weldAreaMm2 / thicknessMm, limits(thicknessMm));
  }

  /** S = 0.18 A / h. */
  public static Computed middle(double weldAreaMm2, double thicknessMm, double gapMm) {
    check(weldAreaMm2, thicknessMm, gapMm);
    return MIDDLE.result(0.18 * weldAreaMm2 / thicknessMm, limits(thicknessMm));
  }

  private static void check(double weldAreaMm2, double thicknessMm, double gapMm) {
    Require.notNegative("weld area", weldAreaMm2, "mm2");
    Require.positive("thickness", thicknessMm, "mm");
    Require.notNegative("gap", gapMm, "mm");
  }

  private static List<String> limits(double thicknessMm) {
    return new Limits().within("thickness", thicknessMm, 6, 25, "mm").outside();
  }
}
