package org.counterpull.pull;

/** Cholesky factor of a matrix of a few rows. */
final class SmallCholesky {
  /** A pivot smaller than this share of its diagonal entry, or of its scale, counts as none. */
  private static final double NO_PIVOT = 1e-12;

  private final double[][] factor;
  private final boolean definite;

  SmallCholesky(double[][] matrix) {
    this(matrix, new double[matrix.length]);
  }

  /**
   * Factor of a matrix whose entries may be nothing but rounding.
   *
   * @param scale for each row what its diagonal entry is to be measured against, where that is more
   *     than the entry itself
   */
  SmallCholesky(double[][] matrix, double[] scale) {
    int n = matrix.length;
    factor = new double[n][n];
    boolean good = true;
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) {
        double sum = matrix[i][j];
        for (int k = 0; k < j; k++) {
          sum -= factor[i][k] * factor[j][k];
        }
        if (i == j) {
          good &= sum > NO_PIVOT * Math.max(matrix[i][i], scale[i]);
          factor[i][i] = Math.sqrt(sum);
        } else {
          factor[i][j] = sum / factor[j][j];
        }
      }
    }
    definite = good;
  }

  boolean definite() {
    return definite;
  }

  /** Overwrites the rows with L^-1 rows. */
  void solveLower(double[][] rows) {
    for (int i = 0; i < rows.length; i++) {
      for (int k = 0; k < i; k++) {
        subtract(rows[i], rows[k], factor[i][k]);
      }
      divide(rows[i], factor[i][i]);
    }
  }

  /** Overwrites the rows with L^-T rows. */
  void solveUpper(double[][] rows) {
    for (int i = rows.length - 1; i >= 0; i--) {
      for (int k = i + 1; k < rows.length; k++) {
        subtract(rows[i], rows[k], factor[k][i]);
      }
      divide(rows[i], factor[i][i]);
    }
  }

  /** The inverse of the matrix. */
  double[][] inverse() {
    int n = factor.length;
    double[][] rows = new double[n][n];
    for (int i = 0; i < n; i++) {
      rows[i][i] = 1;
    }
    solveLower(rows);
    solveUpper(rows);
    return rows;
  }

  private static void subtract(double[] from, double[] row, double factor) {
    for (int j = 0; j < from.length; j++) {
      from[j] -= factor * row[j];
    }
  }

  private static void divide(double[] row, double divisor) {
    for (int j = 0; j < row.length; j++) {
      row[j] /= divisor;
    }
  }
}
