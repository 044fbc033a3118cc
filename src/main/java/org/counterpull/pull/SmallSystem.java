package org.counterpull.pull;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;

/** Linear systems of a few unknowns that are not symmetric. */
final class SmallSystem {
  private SmallSystem() {}

  /** Solves matrix * x = rows, one right side in each column. */
  static double[][] solve(double[][] matrix, double[][] rows) {
    return new LUDecomposition(new Array2DRowRealMatrix(matrix, false), 0)
        .getSolver()
        .solve(new Array2DRowRealMatrix(rows, false))
        .getData();
  }

  /** Solves matrix * x = right. */
  static double[] solve(double[][] matrix, double[] right) {
    double[][] rows = new double[right.length][1];
    for (int i = 0; i < right.length; i++) {
      rows[i][0] = right[i];
    }
    double[][] x = solve(matrix, rows);
    double[] solution = new double[right.length];
    for (int i = 0; i < right.length; i++) {
      solution[i] = x[i][0];
    }
    return solution;
  }
}
