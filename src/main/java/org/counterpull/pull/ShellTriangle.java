package org.counterpull.pull;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.space.Frame;

/**
 * A flat shell triangle of three nodes with six unknowns each: the discrete Kirchhoff triangle for
 * bending and an optimal membrane triangle with drilling turns.
 *
 * <p>Source: bending, J.-L. Batoz, K.-J. Bathe, L.-W. Ho, A study of three-node triangular plate
 * bending elements, Int. J. Numer. Meth. Eng. 15, 1980; membrane, C. A. Felippa, A study of optimal
 * membrane triangles with drilling freedoms, Comput. Methods Appl. Mech. Eng. 192, 2003, the OPT
 * instance of the template (both from memory, held by the patch tests). Valid for: thin plates;
 * transverse shear is left out.
 */
final class ShellTriangle {
  /** Natural deviatoric parameters of the OPT instance (Felippa 2003). */
  private static final double[][] OPT = {{1, 2, 1}, {0, 1, -1}, {-1, -1, -2}};

  private static final double DRILLING_SHARE = 1.5;

  private final Frame axes;
  private final double[] x = new double[3];
  private final double[] y = new double[3];
  private final double area;
  private final double thickness;
  private final double[][] plane;
  private final double poisson;

  ShellTriangle(Vector3D a, Vector3D b, Vector3D c, double thicknessMm, ElasticMaterial material) {
    Vector3D normal = b.subtract(a).crossProduct(c.subtract(a));
    axes = Frame.of(a, b.subtract(a), normal);
    Vector3D[] corners = {a, b, c};
    for (int i = 0; i < 3; i++) {
      Vector3D local = axes.into(corners[i]);
      x[i] = local.getX();
      y[i] = local.getY();
    }
    area = normal.getNorm() / 2;
    thickness = thicknessMm;
    poisson = material.poisson();
    double e = material.elasticModulusMPa() / (1 - poisson * poisson);
    plane =
        new double[][] {{e, poisson * e, 0}, {poisson * e, e, 0}, {0, 0, e * (1 - poisson) / 2}};
  }

  double areaMm2() {
    return area;
  }

  /** Stiffness of the 18 unknowns in the axes of the assembly. */
  double[][] stiffness() {
    double[][] local = new double[18][18];
    addMembrane(local);
    addBending(local);
    return outOfLocal(local);
  }

  /**
   * Forces on the 18 unknowns that an inherent strain makes.
   *
   * @param strain strain along {@code direction}, and nothing across it
   * @param curvature curvature along it, positive where the face towards the normal grows longer
   */
  double[] inherent(Vector3D direction, double strain, double curvature) {
    Vector3D d = axes.directionInto(direction);
    double norm = Math.hypot(d.getX(), d.getY());
    if (norm < 1e-6) {
      throw new IllegalArgumentException("shrinkage along the normal of a plate has no meaning");
    }
    double c = d.getX() / norm;
    double s = d.getY() / norm;
    double[] pattern = {c * c, s * s, 2 * c * s};
    double[] stress = times(plane, pattern);
    double[] local = new double[18];
    double[][] lumping = lumping();
    for (int i = 0; i < 9; i++) {
      for (int k = 0; k < 3; k++) {
        local[membraneIndex(i)] += lumping[i][k] * stress[k] * strain;
      }
    }
    for (double[] point : MID_SIDES) {
      double[][] b = curvatures(point);
      for (int i = 0; i < 9; i++) {
        for (int k = 0; k < 3; k++) {
          local[bendingIndex(i)] += area / 3 * bendingFactor() * b[k][i] * stress[k] * curvature;
        }
      }
    }
    return outOfLocal(local);
  }

  private double bendingFactor() {
    return thickness * thickness * thickness / 12;
  }

  private static int membraneIndex(int i) {
    return i % 3 == 2 ? 6 * (i / 3) + 5 : 6 * (i / 3) + i % 3;
  }

  private static int bendingIndex(int i) {
    return 6 * (i / 3) + 2 + i % 3;
  }

  private double dx(int i, int j) {
    return x[i] - x[j];
  }

  private double dy(int i, int j) {
    return y[i] - y[j];
  }

  /** Node forces of a constant stress, thickness included: the basic part's lumping matrix. */
  private double[][] lumping() {
    double[][] l = new double[9][3];
    double half = thickness / 2;
    for (int i = 0; i < 3; i++) {
      int j = (i + 1) % 3;
      int k = (i + 2) % 3;
      double yJk = dy(j, k);
      double xKj = dx(k, j);
      l[3 * i] = new double[] {half * yJk, 0, half * xKj};
      l[3 * i + 1] = new double[] {0, half * xKj, half * yJk};
      double yy = yJk * (dy(i, k) - dy(j, i));
      double xx = xKj * (dx(k, i) - dx(i, j));
      double xy = 2 * (dx(k, i) * dy(i, k) - dx(i, j) * dy(j, i));
      double share = half * DRILLING_SHARE / 6;
      l[3 * i + 2] = new double[] {share * yy, share * xx, share * xy};
    }
    return l;
  }

  private void addMembrane(double[][] local) {
    double[][] lumping = lumping();
    double[][] basic = congruent(transpose(lumping), plane, 1 / (area * thickness));
    double[][] higher = higherMembrane();
    for (int i = 0; i < 9; i++) {
      for (int j = 0; j < 9; j++) {
        local[membraneIndex(i)][membraneIndex(j)] += basic[i][j] + higher[i][j];
      }
    }
  }

  private double[][] higherMembrane() {
    double[] side = new double[3];
    for (int i = 0; i < 3; i++) {
      int j = (i + 1) % 3;
      side[i] = dx(j, i) * dx(j, i) + dy(j, i) * dy(j, i);
    }
    double[][] natural = congruent(naturalStrains(side), plane, 1);
    double[][][] q = new double[3][3][3];
    for (int corner = 0; corner < 3; corner++) {
      for (int r = 0; r < 3; r++) {
        for (int c = 0; c < 3; c++) {
          // Rows and columns of the first corner's matrix, turned round with the corner.
          double value = OPT[Math.floorMod(r - corner, 3)][Math.floorMod(c - corner, 3)];
          q[corner][r][c] = 2 * area / 3 * value / side[r];
        }
      }
    }
    double[][] theta = new double[3][3];
    for (int corner = 0; corner < 3; corner++) {
      double[][] mid = new double[3][3];
      for (int r = 0; r < 3; r++) {
        for (int c = 0; c < 3; c++) {
          mid[r][c] = (q[corner][r][c] + q[(corner + 1) % 3][r][c]) / 2;
        }
      }
      addTo(theta, congruent(mid, natural, area * thickness));
    }
    double factor = 0.75 * Math.max(0.5 * (1 - 4 * poisson * poisson), 0.01);
    return congruent(hierarchicalTurns(), theta, factor);
  }

  /** Cartesian strains from strains along the three sides. */
  private double[][] naturalStrains(double[] side) {
    double[][] t = new double[3][3];
    double scale = 1 / (4 * area * area);
    int[][] at = {{1, 2, 0, 2}, {2, 0, 1, 0}, {0, 1, 2, 1}};
    for (int c = 0; c < 3; c++) {
      double y1 = dy(at[c][0], at[c][1]);
      double y2 = dy(at[c][2], at[c][3]);
      double x1 = dx(at[c][0], at[c][1]);
      double x2 = dx(at[c][2], at[c][3]);
      t[0][c] = scale * y1 * y2 * side[c];
      t[1][c] = scale * x1 * x2 * side[c];
      t[2][c] = -scale * (y1 * x2 + x1 * y2) * side[c];
    }
    return t;
  }

  /** Drilling turns less the turn of the constant-strain triangle, from the nine unknowns. */
  private double[][] hierarchicalTurns() {
    double[][] t = new double[3][9];
    for (int row = 0; row < 3; row++) {
      for (int i = 0; i < 3; i++) {
        int j = (i + 1) % 3;
        int k = (i + 2) % 3;
        t[row][3 * i] = dx(k, j) / (4 * area);
        t[row][3 * i + 1] = dy(k, j) / (4 * area);
      }
      t[row][3 * row + 2] = 1;
    }
    return t;
  }

  private static final double[][] MID_SIDES = {{0.5, 0.5, 0}, {0, 0.5, 0.5}, {0.5, 0, 0.5}};

  private void addBending(double[][] local) {
    for (double[] point : MID_SIDES) {
      double[][] k = congruent(curvatures(point), plane, area / 3 * bendingFactor());
      for (int i = 0; i < 9; i++) {
        for (int j = 0; j < 9; j++) {
          local[bendingIndex(i)][bendingIndex(j)] += k[i][j];
        }
      }
    }
  }

  /**
   * Curvatures at a point in area coordinates from deflection and turns of the three corners: the
   * section's turns are quadratic, tied to the deflection along each side (discrete Kirchhoff).
   */
  private double[][] curvatures(double[] l) {
    double[][] b = new double[3][9];
    for (int i = 0; i < 3; i++) {
      double factor = 4 * l[i] - 1;
      double[] turnX = new double[9];
      double[] turnY = new double[9];
      turnX[3 * i + 2] = 1;
      turnY[3 * i + 1] = -1;
      addGradient(b, turnX, turnY, factor * gradX(i), factor * gradY(i));
    }
    for (int i = 0; i < 3; i++) {
      int j = (i + 1) % 3;
      double[][] mid = midSideTurns(i, j);
      double gx = 4 * (l[i] * gradX(j) + l[j] * gradX(i));
      double gy = 4 * (l[i] * gradY(j) + l[j] * gradY(i));
      addGradient(b, mid[0], mid[1], gx, gy);
    }
    return b;
  }

  private double gradX(int i) {
    return dy((i + 1) % 3, (i + 2) % 3) / (2 * area);
  }

  private double gradY(int i) {
    return dx((i + 2) % 3, (i + 1) % 3) / (2 * area);
  }

  private static void addGradient(
      double[][] b, double[] turnX, double[] turnY, double gx, double gy) {
    for (int k = 0; k < 9; k++) {
      b[0][k] += gx * turnX[k];
      b[1][k] += gy * turnY[k];
      b[2][k] += gy * turnX[k] + gx * turnY[k];
    }
  }

  /** Section turns half-way along a side; across it linear, along it from a cubic deflection. */
  private double[][] midSideTurns(int i, int j) {
    double length = Math.hypot(dx(j, i), dy(j, i));
    double c = dx(j, i) / length;
    double s = dy(j, i) / length;
    double[] along = new double[9];
    double[] across = new double[9];
    along[3 * i] = 1.5 / length;
    along[3 * j] = -1.5 / length;
    for (int node : new int[] {i, j}) {
      // Section turns of a node: about x by its y-turn, about y by its negative x-turn.
      along[3 * node + 2] = -0.25 * c;
      along[3 * node + 1] = 0.25 * s;
      across[3 * node + 2] = -0.5 * s;
      across[3 * node + 1] = -0.5 * c;
    }
    double[][] turns = new double[2][9];
    for (int k = 0; k < 9; k++) {
      turns[0][k] = c * along[k] - s * across[k];
      turns[1][k] = s * along[k] + c * across[k];
    }
    return turns;
  }

  private double[][] outOfLocal(double[][] local) {
    double[][] r = rotation();
    double[][] global = new double[18][18];
    for (int bi = 0; bi < 6; bi++) {
      for (int bj = 0; bj < 6; bj++) {
        for (int i = 0; i < 3; i++) {
          for (int j = 0; j < 3; j++) {
            double sum = 0;
            for (int k = 0; k < 3; k++) {
              for (int m = 0; m < 3; m++) {
                sum += r[k][i] * local[3 * bi + k][3 * bj + m] * r[m][j];
              }
            }
            global[3 * bi + i][3 * bj + j] = sum;
          }
        }
      }
    }
    return global;
  }

  private double[] outOfLocal(double[] local) {
    double[] global = new double[18];
    double[][] r = rotation();
    for (int b = 0; b < 6; b++) {
      for (int i = 0; i < 3; i++) {
        for (int k = 0; k < 3; k++) {
          global[3 * b + i] += r[k][i] * local[3 * b + k];
        }
      }
    }
    return global;
  }

  private double[][] rotation() {
    return new double[][] {axes.x().toArray(), axes.y().toArray(), axes.z().toArray()};
  }

  private static double[] times(double[][] a, double[] v) {
    double[] product = new double[a.length];
    for (int i = 0; i < a.length; i++) {
      for (int j = 0; j < v.length; j++) {
        product[i] += a[i][j] * v[j];
      }
    }
    return product;
  }

  /** factor * B^T D B. */
  private static double[][] congruent(double[][] b, double[][] d, double factor) {
    int n = b[0].length;
    double[][] product = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        double sum = 0;
        for (int k = 0; k < 3; k++) {
          for (int m = 0; m < 3; m++) {
            sum += b[k][i] * d[k][m] * b[m][j];
          }
        }
        product[i][j] = factor * sum;
      }
    }
    return product;
  }

  private static double[][] transpose(double[][] a) {
    double[][] t = new double[a[0].length][a.length];
    for (int i = 0; i < a.length; i++) {
      for (int j = 0; j < a[0].length; j++) {
        t[j][i] = a[i][j];
      }
    }
    return t;
  }

  private static void addTo(double[][] sum, double[][] other) {
    for (int i = 0; i < sum.length; i++) {
      for (int j = 0; j < sum.length; j++) {
        sum[i][j] += other[i][j];
      }
    }
  }
}
