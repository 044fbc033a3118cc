package org.counterpull.heat.block;

import java.util.function.IntToDoubleFunction;

/**
 * Cells and weights that give a value at a point; the weights add up to 1, some may be negative.
 */
public record Interpolation(int[] cells, double[] weights) {

  public Interpolation {
    cells = cells.clone();
    weights = weights.clone();
  }

  /** The value at the point of a field over the cells. */
  public double of(IntToDoubleFunction field) {
    double sum = 0;
    for (int i = 0; i < cells.length; i++) {
      sum += weights[i] * field.applyAsDouble(cells[i]);
    }
    return sum;
  }
}
