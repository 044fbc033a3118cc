package org.counterpull.pull;

import java.util.Arrays;
import java.util.stream.DoubleStream;

/**
 * The response of every coordinate to every other, with springs closed and opened by updates of low
 * rank; nothing is ever factorised anew.
 *
 * <p>A coordinate is open (its row tells how far it opens) or closed (a spring lies across it and
 * its row tells the tension of that spring). Closing is a principal pivot on the open block D with
 * the spring's compliance c:
 *
 * <pre>
 *   M = c + D,  H = M^-1 G_b,   G -= G_b^T H,   rows of the block: H,   block: -M^-1
 * </pre>
 *
 * and opening is the same pivot backwards, M = (M^-1)^-1. Because the block keeps M^-1 and not the
 * difference of two nearly equal flexibilities, taking out a spring that is much stiffer than the
 * structure costs no digits. The matrix is symmetric in both states and stored as its lower half.
 */
final class Flexibility {
  private final double[][] low;

  Flexibility(int size) {
    low = new double[size][];
    for (int i = 0; i < size; i++) {
      low[i] = new double[i + 1];
    }
  }

  private Flexibility(double[][] low) {
    this.low = low;
  }

  int size() {
    return low.length;
  }

  double get(int i, int j) {
    return i >= j ? low[i][j] : low[j][i];
  }

  void add(int i, int j, double value) {
    if (i >= j) {
      low[i][j] += value;
    } else {
      low[j][i] += value;
    }
  }

  private void set(int i, int j, double value) {
    if (i >= j) {
      low[i][j] = value;
    } else {
      low[j][i] = value;
    }
  }

  Flexibility copy() {
    double[][] copy = new double[low.length][];
    for (int i = 0; i < low.length; i++) {
      copy[i] = low[i].clone();
    }
    return new Flexibility(copy);
  }

  /** Only these coordinates, in the given ascending order. */
  Flexibility restrictedTo(int[] keep) {
    double[][] kept = new double[keep.length][];
    for (int i = 0; i < keep.length; i++) {
      double[] row = low[keep[i]];
      kept[i] = new double[i + 1];
      for (int j = 0; j <= i; j++) {
        kept[i][j] = row[keep[j]];
      }
    }
    return new Flexibility(kept);
  }

  /** The column of one coordinate. */
  double[] column(int coordinate) {
    double[] column = Arrays.copyOf(low[coordinate], low.length);
    for (int i = coordinate + 1; i < low.length; i++) {
      column[i] = low[i][coordinate];
    }
    return column;
  }

  double[][] columns(int[] block) {
    double[][] columns = new double[block.length][];
    for (int k = 0; k < block.length; k++) {
      columns[k] = column(block[k]);
    }
    return columns;
  }

  double[][] block(int[] block) {
    double[][] values = new double[block.length][block.length];
    for (int k = 0; k < block.length; k++) {
      for (int l = 0; l < block.length; l++) {
        values[k][l] = get(block[k], block[l]);
      }
    }
    return values;
  }

  /** Closes open coordinates with springs of the given compliances. */
  void close(int[] block, double[] compliance) {
    double[][] m = block(block);
    for (int k = 0; k < block.length; k++) {
      m[k][k] += compliance[k];
    }
    SmallCholesky factor = new SmallCholesky(m);
    if (!factor.definite()) {
      throw new IllegalStateException(
          "a locked connection doubles another one: give one of them a finite stiffness");
    }
    pivot(block, factor, -1);
    double[][] inverse = factor.inverse();
    for (double[] row : inverse) {
      for (int l = 0; l < row.length; l++) {
        row[l] = -row[l];
      }
    }
    setBlock(block, inverse);
  }

  /** True when the springs of that closed block are all that holds something: no opening then. */
  boolean holdsAlone(int[] block, double[] compliance) {
    return !openingFactor(block, compliance).definite();
  }

  /**
   * Opens closed coordinates and returns, for each of them, by how much every coordinate moves per
   * unit of tension that is let go; the opened coordinates' own entries hold the same.
   */
  double[][] open(int[] block, double[] compliance) {
    SmallCholesky factor = openingFactor(block, compliance);
    if (!factor.definite()) {
      throw new IllegalStateException("taking out the last connection would leave a part loose");
    }
    double[][] moved = pivot(block, factor, 1);
    double[][] inverse = factor.inverse();
    for (int k = 0; k < block.length; k++) {
      for (int l = 0; l < block.length; l++) {
        moved[k][block[l]] = inverse[k][l];
      }
      inverse[k][k] -= compliance[k];
    }
    setBlock(block, inverse);
    return moved;
  }

  /**
   * What the springs of a closed block hold apart; no more than their own stiffness, against which
   * rounding is measured; a locked one has no such measure.
   */
  private SmallCholesky openingFactor(int[] block, double[] compliance) {
    double[][] m = block(block);
    for (double[] row : m) {
      for (int l = 0; l < row.length; l++) {
        row[l] = -row[l];
      }
    }
    double[] stiffness = DoubleStream.of(compliance).map(c -> c > 0 ? 1 / c : 0).toArray();
    return new SmallCholesky(m, stiffness);
  }

  /**
   * Changes the compliance of closed springs by the given amounts without letting their force go.
   */
  void soften(int[] block, double[] addedCompliance) {
    double[][] columns = columns(block);
    double[][] s = block(block);
    double[][] matrix = new double[block.length][block.length];
    for (int k = 0; k < block.length; k++) {
      for (int l = 0; l < block.length; l++) {
        matrix[k][l] = (k == l ? 1 : 0) - addedCompliance[k] * s[k][l];
      }
    }
    // G += C (1 - d S)^-1 d C^T with C the block's columns and d the added compliance.
    double[][] scaled = new double[block.length][];
    for (int k = 0; k < block.length; k++) {
      scaled[k] = columns[k].clone();
      for (int i = 0; i < scaled[k].length; i++) {
        scaled[k][i] *= addedCompliance[k];
      }
    }
    double[][] solved = SmallSystem.solve(matrix, scaled);
    for (int i = 0; i < low.length; i++) {
      for (int k = 0; k < block.length; k++) {
        addMultiple(low[i], solved[k], columns[k][i]);
      }
    }
  }

  /**
   * Closes one coordinate across which nothing but rigid motion of a loose part stands: the part
   * then hangs on that spring.
   *
   * @param coordinate the one to close
   * @param motion the rigid motion that opens it by one, of all coordinates
   * @param compliance of the spring
   */
  void hang(int coordinate, double[] motion, double compliance) {
    double[] w = column(coordinate);
    double half = (w[coordinate] + compliance) / 2;
    for (int i = 0; i < w.length; i++) {
      w[i] -= half * motion[i];
    }
    for (int i = 0; i < low.length; i++) {
      addMultiple(low[i], w, -motion[i]);
      addMultiple(low[i], motion, -w[i]);
    }
    for (int i = 0; i < low.length; i++) {
      set(coordinate, i, i == coordinate ? 0 : motion[i]);
    }
  }

  private static void addMultiple(double[] row, double[] other, double factor) {
    if (factor != 0) {
      for (int j = 0; j < row.length; j++) {
        row[j] += factor * other[j];
      }
    }
  }

  /**
   * Adds or takes off the outer product of the block's solved rows; returns M^-1 times the columns.
   */
  private double[][] pivot(int[] block, SmallCholesky factor, double sign) {
    double[][] rows = columns(block);
    factor.solveLower(rows);
    addOuter(rows, sign);
    factor.solveUpper(rows);
    for (int k = 0; k < block.length; k++) {
      for (int i = 0; i < low.length; i++) {
        set(block[k], i, rows[k][i]);
      }
    }
    return rows;
  }

  private void setBlock(int[] block, double[][] values) {
    for (int k = 0; k < block.length; k++) {
      for (int l = 0; l <= k; l++) {
        set(block[k], block[l], values[k][l]);
      }
    }
  }

  private void addOuter(double[][] rows, double sign) {
    int k = 0;
    for (; k + 6 <= rows.length; k += 6) {
      addSix(rows, k, sign);
    }
    for (; k < rows.length; k++) {
      for (int i = 0; i < low.length; i++) {
        addMultiple(low[i], rows[k], sign * rows[k][i]);
      }
    }
  }

  /** Six rows in one sweep over the matrix: this loop is where a search spends its time. */
  private void addSix(double[][] rows, int k, double sign) {
    double[] u0 = rows[k];
    double[] u1 = rows[k + 1];
    double[] u2 = rows[k + 2];
    double[] u3 = rows[k + 3];
    double[] u4 = rows[k + 4];
    double[] u5 = rows[k + 5];
    for (int i = 0; i < low.length; i++) {
      double[] row = low[i];
      double a0 = sign * u0[i];
      double a1 = sign * u1[i];
      double a2 = sign * u2[i];
      double a3 = sign * u3[i];
      double a4 = sign * u4[i];
      double a5 = sign * u5[i];
      for (int j = 0; j < row.length; j++) {
        row[j] += a0 * u0[j] + a1 * u1[j] + a2 * u2[j] + a3 * u3[j] + a4 * u4[j] + a5 * u5[j];
      }
    }
  }
}
