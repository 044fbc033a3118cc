package org.counterpull.heat.block;

import java.util.Arrays;

/** Blends the eight cells around a point. */
final class Corners {
  private Corners() {}

  /**
   * Straight-line weights in three directions; cells without metal give theirs to the others.
   *
   * @param index the two indices in each direction
   * @param u weight of the second index along x
   * @param v the same along y
   * @param w the same along z
   */
  static Interpolation blend(Grid grid, int[][] index, double u, double v, double w) {
    int[] cells = new int[8];
    double[] weights = new double[8];
    double sum = 0;
    int used = 0;
    for (int n = 0; n < 8; n++) {
      int a = n & 1;
      int b = n >> 1 & 1;
      int c = n >> 2;
      double weight = (a == 0 ? 1 - u : u) * (b == 0 ? 1 - v : v) * (c == 0 ? 1 - w : w);
      if (weight != 0 && grid.solid(index[0][a], index[1][b], index[2][c])) {
        cells[used] = grid.cell(index[0][a], index[1][b], index[2][c]);
        weights[used++] = weight;
        sum += weight;
      }
    }
    if (used == 0 || Math.abs(sum) < 1e-6) {
      throw new IllegalArgumentException("no metal near the point");
    }
    for (int n = 0; n < used; n++) {
      weights[n] /= sum;
    }
    return new Interpolation(Arrays.copyOf(cells, used), Arrays.copyOf(weights, used));
  }
}
