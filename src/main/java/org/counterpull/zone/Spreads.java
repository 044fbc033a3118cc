package org.counterpull.zone;

import java.util.List;
import java.util.function.DoubleBinaryOperator;

/**
 * Spreads of heat, 4 a t, at which a whole field is looked at: heat from a line is a product of one
 * factor for each direction, so that a table for each direction serves all cells.
 */
final class Spreads {
  private static final int COUNT = 160;
  private static final double NEAREST = 0.05;
  private static final double FARTHEST = 6;

  private final double[] spreadMm2 = new double[COUNT];

  /** From well below the nearest cell's peak to well beyond the farthest's. */
  Spreads(double nearestMm, double farthestMm) {
    double low = 2 * Math.log(NEAREST * nearestMm);
    double high = 2 * Math.log(FARTHEST * farthestMm);
    for (int i = 0; i < COUNT; i++) {
      spreadMm2[i] = Math.exp(low + (high - low) * i / (COUNT - 1));
    }
  }

  /** For each place (first number of each entry) its factor at each spread. */
  double[][] table(List<double[]> places, DoubleBinaryOperator factor) {
    double[][] table = new double[places.size()][COUNT];
    for (int p = 0; p < table.length; p++) {
      for (int i = 0; i < COUNT; i++) {
        table[p][i] = factor.applyAsDouble(places.get(p)[0], spreadMm2[i]);
      }
    }
    return table;
  }

  static double[] product(double[] one, double[] other) {
    double[] product = new double[COUNT];
    for (int i = 0; i < COUNT; i++) {
      product[i] = one[i] * other[i];
    }
    return product;
  }

  /** Highest product, between the spreads by a parabola through its logarithms. */
  static double peak(double[] one, double[] other) {
    int best = 0;
    double most = 0;
    for (int i = 0; i < COUNT; i++) {
      double value = one[i] * other[i];
      if (value > most) {
        most = value;
        best = i;
      }
    }
    if (best == 0 || best == COUNT - 1) {
      return most;
    }
    double before = Math.log(one[best - 1] * other[best - 1] / most);
    double after = Math.log(one[best + 1] * other[best + 1] / most);
    double bend = before + after;
    double slope = after - before;
    return bend < 0 && Double.isFinite(bend) ? most * Math.exp(-slope * slope / (8 * bend)) : most;
  }
}
