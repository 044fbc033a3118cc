package org.counterpull.preheat;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Dimension;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Least preheat and interpass temperature by the hydrogen control method of AWS D1.1.
 *
 * <p><b>Formula:</b> index 12 Pcm + lg HD with HD 5, 10 or 30; the index gives a group A to G, and
 * a table by restraint, thickness and group the temperature. <b>Source:</b> AWS D1.1, guideline on
 * alternative methods for preheat, hydrogen control; the table from memory, one cell confirmed:
 * treat as advisory. <b>Valid for:</b> index to 7.0. Above it the answer is that of group G, with a
 * warning. Zero C stands for "no preheat above the least temperature of the table".
 */
public final class HydrogenControlPreheat {
  public static final Formula FORMULA =
      new Formula(
          "preheat-hydrogen-control",
          "least preheat and interpass temperature by hydrogen control",
          "C",
          "from memory: AWS D1.1, alternative methods for preheat, hydrogen control");

  private static final double[] GROUP_UP_TO = {3.0, 3.5, 4.0, 4.5, 5.0, 5.5, 7.0};
  private static final double[] THICKNESS_UP_TO_IN = {3.0 / 8, 3.0 / 4, 1.5, 3};
  private static final double MM_PER_IN = 25.4;
  private static final int ROWS_PER_RESTRAINT = 5;

  /** Level of diffusible hydrogen. */
  public enum Hydrogen {
    /** Below 5 ml/100 g. */
    H1(5),
    /** Below 10 ml/100 g. */
    H2(10),
    /** Not controlled. */
    H3(30);

    private final double mlPer100g;

    Hydrogen(double mlPer100g) {
      this.mlPer100g = mlPer100g;
    }
  }

  /** How far the parts keep the weld from shrinking: a judgement. */
  public enum Restraint {
    LOW,
    MEDIUM,
    HIGH
  }

  private HydrogenControlPreheat() {}

  /** Least preheat. */
  public static Computed of(
      double pcmPercent, Hydrogen hydrogen, Restraint restraint, double thicknessMm) {
    Require.positive("thickness", thicknessMm, "mm");
    double index = index(pcmPercent, hydrogen);
    int row = restraint.ordinal() * ROWS_PER_RESTRAINT + thicknessRow(thicknessMm / MM_PER_IN);
    double preheatF = HydrogenControlTable.preheatF(row, groupColumn(index));
    double preheatC = Dimension.TEMPERATURE.convert(preheatF, "F", "C");
    Limits limits = new Limits().within("index", index, Double.NEGATIVE_INFINITY, 7.0, "1");
    return FORMULA.result(preheatC, limits.outside());
  }

  /** Susceptibility index. */
  public static double index(double pcmPercent, Hydrogen hydrogen) {
    return 12 * Require.notNegative("Pcm", pcmPercent, "%") + Math.log10(hydrogen.mlPer100g);
  }

  /** Susceptibility group, A to G. */
  public static char group(double index) {
    return (char) ('A' + groupColumn(index));
  }

  private static int groupColumn(double index) {
    int group = 0;
    while (group < GROUP_UP_TO.length - 1 && index > GROUP_UP_TO[group]) {
      group++;
    }
    return group;
  }

  private static int thicknessRow(double thicknessIn) {
    int row = thicknessIn < THICKNESS_UP_TO_IN[0] ? 0 : 1;
    while (row >= 1 && row < THICKNESS_UP_TO_IN.length && thicknessIn > THICKNESS_UP_TO_IN[row]) {
      row++;
    }
    return row;
  }
}
