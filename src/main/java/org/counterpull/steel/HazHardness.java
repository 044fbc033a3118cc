package org.counterpull.steel;

import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Greatest hardness of the coarse-grained zone beside a single bead, HV10: the median of three
 * formulas, with each and their spread beside it.
 *
 * <p><b>Source:</b> Duren 1985 (after Lorenz and Duren 1981); Yurioka et al., Metal Construction 19
 * (1987) p. 217R; Suzuki, IIW IX-1351-85 (BL70S); constants from memory of these. <b>Valid for:</b>
 * C-Mn to HT100 steels, C 0.017 to 0.33 %, t8/5 of about 1 to 100 s. The best such method has a
 * standard deviation of 28 HV. A spread over 60 HV is a warning; so is every limit left.
 */
public final class HazHardness {
  public static final Formula FORMULA =
      new Formula(
          "haz-hardness",
          "greatest hardness beside the weld, median of three methods",
          "HV10",
          "from memory: Duren 1985; Yurioka et al. 1987; Suzuki, IIW IX-1351-85");

  /** One of the three. */
  public static final Formula BY_ONE =
      new Formula(
          "haz-hardness-by",
          "greatest hardness beside the weld by one method",
          "HV10",
          "from memory: Duren 1985; Yurioka et al. 1987; Suzuki, IIW IX-1351-85");

  private static final double WIDE_SPREAD_HV = 60;
  private static final double PERCENT_PER_PPM = 1e-4;

  private HazHardness() {}

  /**
   * The three answers.
   *
   * @param durenHV Duren 1985
   * @param yuriokaHV Yurioka 1987
   * @param suzukiHV Suzuki's BL70S
   */
  public record Estimates(double durenHV, double yuriokaHV, double suzukiHV) {

    /** The middle one. */
    public double medianHV() {
      return sorted()[1];
    }

    /** The greatest less the least. */
    public double spreadHV() {
      double[] sorted = sorted();
      return sorted[2] - sorted[0];
    }

    /** By name of the method. */
    public Map<String, Double> byMethod() {
      Map<String, Double> methods = new LinkedHashMap<>();
      methods.put("duren", durenHV);
      methods.put("yurioka", yuriokaHV);
      methods.put("suzuki-bl70s", suzukiHV);
      return Collections.unmodifiableMap(methods);
    }

    private double[] sorted() {
      double[] sorted = {durenHV, yuriokaHV, suzukiHV};
      Arrays.sort(sorted);
      return sorted;
    }
  }

  /**
   * The median.
   *
   * @param steel composition
   * @param t85S cooling time from 800 to 500 C, greater than zero
   */
  public static Computed of(Composition steel, double t85S) {
    Estimates estimates = estimates(steel, t85S);
    Limits limits =
        new Limits()
            .within("C", steel.c(), 0.017, 0.33, "%")
            .within("t8/5", t85S, 1, 100, "s")
            .within("spread of the methods", estimates.spreadHV(), 0, WIDE_SPREAD_HV, "HV10");
    return FORMULA.result(estimates.medianHV(), limits.outside());
  }

  /** All three methods. */
  public static Estimates estimates(Composition steel, double t85S) {
    Require.positive("t8/5", t85S, "s");
    return new Estimates(durenHV(steel, t85S), yuriokaHV(steel, t85S), suzukiHV(steel, t85S));
  }

  /** Capped at all martensite. Below all bainite (long times) it no longer holds. */
  static double durenHV(Composition s, double t85S) {
    double lg = Math.log10(t85S);
    double hv =
        2019 * (s.c() * (1 - 0.5 * lg) + 0.3 * (bainiteEquivalent(s) - s.c()))
            + 66 * (1 - 0.8 * lg);
    return Math.min(hv, 802 * s.c() + 305);
  }

  static double bainiteEquivalent(Composition s) {
    return s.c()
        + s.si() / 11
        + s.mn() / 8
        + s.cu() / 9
        + s.cr() / 5
        + s.ni() / 17
        + s.mo() / 6
        + s.v() / 3;
  }

  static double yuriokaHV(Composition s, double t85S) {
    double cp = s.c() <= 0.3 ? s.c() : s.c() / 6 + 0.25;
    double ce1 =
        cp
            + s.si() / 24
            + s.mn() / 6
            + s.cu() / 15
            + s.ni() / 12
            + s.cr() * (1 - 0.16 * Math.sqrt(s.cr())) / 8
            + s.mo() / 4
            + boronTerm(s);
    double ce2 =
        s.c()
            + s.si() / 24
            + s.mn() / 5
            + s.cu() / 10
            + s.ni() / 18
            + s.cr() / 5
            + s.mo() / 2.5
            + s.v() / 5
            + s.nb() / 3;
    double ce3 = cp + s.mn() / 3.6 + s.cu() / 20 + s.ni() / 9 + s.cr() / 5 + s.mo() / 4;
    double martensiteS = Math.exp(10.6 * ce1 - 4.8);
    double bainiteS = Math.exp(6.2 * ce3 + 0.74);
    double martensiteHV = 884 * s.c() * (1 - 0.3 * s.c() * s.c()) + 294;
    double bainiteHV = 145 + 130 * Math.tanh(2.65 * ce2 - 0.69);
    double x = 4 * Math.log(t85S / martensiteS) / Math.log(bainiteS / martensiteS) - 2;
    return (martensiteHV + bainiteHV) / 2 - (martensiteHV - bainiteHV) * Math.atan(x) / 2.2;
  }

  /** Boron raises the first equivalent stepwise, the less the more nitrogen binds it. */
  private static double boronTerm(Composition s) {
    double ppm = s.b() / PERCENT_PER_PPM;
    double step = ppm < 2 ? 0 : ppm < 3 ? 0.03 : ppm < 4 ? 0.06 : 0.09;
    return step * Math.max(0, (0.02 - s.n()) / 0.02);
  }

  static double suzukiHV(Composition s, double t85S) {
    double pcm = CarbonEquivalent.pcmPercent(s);
    double k = 237 + 1633 * s.c() - 1157 * pcm;
    double a = (566 + 5532 * s.c() - 2880 * pcm) / k;
    double y5 = -0.03 - 6.00 * s.c() + 7.77 * pcm;
    double softest = 884 * s.c() + 287 - k;
    return softest + k / (1 + Math.exp(a * (Math.log10(t85S) - y5)));
  }
}
