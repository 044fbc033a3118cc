package org.counterpull.pull;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.counterpull.space.Frame;

/**
 * The same physics the long way: stiffness matrices of classical Timoshenko beam elements and of
 * all springs are assembled and solved anew at every step; one node is held.
 */
final class AnewSolver {
  private final RandomFrame frame;
  private final int size;
  private final List<double[][]> rows = new ArrayList<>();
  private final double[][] live;
  private final double[][] tension;
  private double[] moved;

  AnewSolver(RandomFrame frame) {
    this.frame = frame;
    this.size = 6 * RandomFrame.NODES * frame.bars.size();
    this.moved = new double[size];
    this.live = new double[frame.links.size()][];
    this.tension = new double[frame.links.size()][6];
    for (int l = 0; l < frame.links.size(); l++) {
      rows.add(openings(l));
    }
  }

  void join(int link, SpringStiffness stiffness) {
    live[link] = stiffness.components();
    tension[link] = new double[6];
  }

  void weld(int link, SpringStiffness pulling, SpringStiffness cold, double[] wanted) {
    weld(List.of(new Pull(link, pulling, wanted)), List.of(cold));
  }

  /** Tacks go, all links are filled, then all pull at once with what is hot, then all are cold. */
  void weld(List<Pull> pulls, List<SpringStiffness> cold) {
    for (int p = 0; p < pulls.size(); p++) {
      if (live[pulls.get(p).link()] != null) {
        release(pulls.get(p).link());
      }
      // Filled with metal that carries: the next tack is let go with it in place.
      join(pulls.get(p).link(), cold.get(p));
    }
    double[][] carried = new double[pulls.size()][];
    double[] load = new double[size];
    for (int p = 0; p < pulls.size(); p++) {
      Pull pull = pulls.get(p);
      carried[p] = tension[pull.link()];
      live[pull.link()] = pull.pulling().components();
      tension[pull.link()] = new double[6];
      for (int c = 0; c < 6; c++) {
        double wants = live[pull.link()][c] * pull.wanted()[c];
        tension[pull.link()][c] = -wants;
        for (int i = 0; i < size; i++) {
          load[i] += rows.get(pull.link())[c][i] * wants;
        }
      }
    }
    move(solve(load));
    for (int p = 0; p < pulls.size(); p++) {
      int link = pulls.get(p).link();
      live[link] = cold.get(p).components();
      for (int c = 0; c < 6; c++) {
        tension[link][c] += carried[p][c];
      }
    }
  }

  void release(int link) {
    live[link] = null;
    double[] load = new double[size];
    for (int c = 0; c < 6; c++) {
      for (int i = 0; i < size; i++) {
        load[i] += rows.get(link)[c][i] * tension[link][c];
      }
    }
    move(solve(load));
  }

  double reading(int r) {
    MaterialPoint[] points = frame.readingPoints.get(r);
    return dot(row(points[1], frame.readingDirections.get(r), Vector3D.ZERO))
        - dot(row(points[0], frame.readingDirections.get(r), Vector3D.ZERO));
  }

  private double dot(double[] row) {
    double sum = 0;
    for (int i = 0; i < size; i++) {
      sum += row[i] * moved[i];
    }
    return sum;
  }

  private void move(double[] step) {
    for (int l = 0; l < live.length; l++) {
      for (int c = 0; live[l] != null && c < 6; c++) {
        double opening = 0;
        for (int i = 0; i < size; i++) {
          opening += rows.get(l)[c][i] * step[i];
        }
        tension[l][c] += live[l][c] * opening;
      }
    }
    for (int i = 0; i < size; i++) {
      moved[i] += step[i];
    }
  }

  private double[] solve(double[] load) {
    double[][] k = new double[size][size];
    for (int b = 0; b < frame.bars.size(); b++) {
      for (int e = 0; e < RandomFrame.NODES - 1; e++) {
        addBeam(k, b, e);
      }
    }
    for (int l = 0; l < live.length; l++) {
      for (int c = 0; live[l] != null && c < 6; c++) {
        addSpring(k, rows.get(l)[c], live[l][c]);
      }
    }
    RealMatrix free = new Array2DRowRealMatrix(k, false).getSubMatrix(6, size - 1, 6, size - 1);
    double[] solved =
        new LUDecomposition(free)
            .getSolver()
            .solve(new ArrayRealVector(load).getSubVector(6, size - 6))
            .toArray();
    double[] step = new double[size];
    System.arraycopy(solved, 0, step, 6, size - 6);
    return step;
  }

  private void addSpring(double[][] k, double[] row, double stiffness) {
    for (int i = 0; i < size; i++) {
      for (int j = 0; row[i] != 0 && j < size; j++) {
        k[i][j] += stiffness * row[i] * row[j];
      }
    }
  }

  private double[][] openings(int link) {
    Frame axes = frame.axes.get(link);
    List<Vector3D> axis = List.of(axes.x(), axes.y(), axes.z());
    double[][] six = new double[6][];
    for (int c = 0; c < 3; c++) {
      six[c] = difference(link, axis.get(c), Vector3D.ZERO);
      six[c + 3] = difference(link, Vector3D.ZERO, axis.get(c));
    }
    return six;
  }

  private double[] difference(int link, Vector3D displacement, Vector3D turn) {
    double[] to = row(frame.to.get(link), displacement, turn);
    double[] from = row(frame.from.get(link), displacement, turn);
    for (int i = 0; i < size; i++) {
      to[i] -= from[i];
    }
    return to;
  }

  private double[] row(MaterialPoint point, Vector3D displacement, Vector3D turn) {
    // Random frames solved this way expose their nodes in order.
    int at = 6 * (RandomFrame.NODES * point.body() + point.node());
    Vector3D arm = point.position().subtract(frame.bars.get(point.body()).get(point.node()));
    Vector3D moment = arm.crossProduct(displacement).add(turn);
    double[] row = new double[size];
    double[] six = {
      displacement.getX(), displacement.getY(), displacement.getZ(),
      moment.getX(), moment.getY(), moment.getZ()
    };
    System.arraycopy(six, 0, row, at, 6);
    return row;
  }

  private void addBeam(double[][] k, int bar, int element) {
    double[][] global = beamStiffness(frame, bar, element);
    int at = 6 * (RandomFrame.NODES * bar + element);
    for (int i = 0; i < 12; i++) {
      for (int j = 0; j < 12; j++) {
        k[at + i][at + j] += global[i][j];
      }
    }
  }

  static double[][] beamStiffness(RandomFrame frame, int bar, int element) {
    Vector3D a = frame.bars.get(bar).get(element);
    Vector3D b = frame.bars.get(bar).get(element + 1);
    double[][] local = timoshenko(b.distance(a));
    Frame axes = Frame.of(a, b.subtract(a), frame.ups.get(bar));
    double[][] t = new double[12][12];
    for (int block = 0; block < 4; block++) {
      List<Vector3D> axis = List.of(axes.x(), axes.y(), axes.z());
      for (int r = 0; r < 3; r++) {
        t[3 * block + r][3 * block] = axis.get(r).getX();
        t[3 * block + r][3 * block + 1] = axis.get(r).getY();
        t[3 * block + r][3 * block + 2] = axis.get(r).getZ();
      }
    }
    RealMatrix turn = new Array2DRowRealMatrix(t, false);
    return turn.transpose()
        .multiply(new Array2DRowRealMatrix(local, false))
        .multiply(turn)
        .getData();
  }

  /** Classical 12 x 12 stiffness of a doubly symmetric shear-flexible beam (Przemieniecki 1968). */
  private static double[][] timoshenko(double length) {
    SectionStiffness s = RandomFrame.SECTION;
    double e = RandomFrame.MATERIAL.elasticModulusMPa();
    double g = RandomFrame.MATERIAL.shearModulusMPa();
    double[][] k = new double[12][12];
    pair(k, 0, e * s.areaMm2() / length);
    pair(k, 3, g * s.torsionMm4() / length);
    bending(k, 1, 5, 1, e * s.izMm4(), g * s.shearAreaYMm2(), length);
    bending(k, 2, 4, -1, e * s.iyMm4(), g * s.shearAreaZMm2(), length);
    return k;
  }

  private static void pair(double[][] k, int i, double stiffness) {
    k[i][i] = stiffness;
    k[i + 6][i + 6] = stiffness;
    k[i][i + 6] = -stiffness;
    k[i + 6][i] = -stiffness;
  }

  private static void bending(
      double[][] k, int v, int th, int sign, double ei, double ga, double length) {
    double phi = 12 * ei / (ga * length * length);
    double f = ei / ((1 + phi) * length * length * length);
    int[] at = {v, th, v + 6, th + 6};
    double l = sign * length;
    double near = (4 + phi) * length * length;
    double far = (2 - phi) * length * length;
    double[][] block = {
      {12, 6 * l, -12, 6 * l}, {6 * l, near, -6 * l, far},
      {-12, -6 * l, 12, -6 * l}, {6 * l, far, -6 * l, near}
    };
    for (int i = 0; i < 4; i++) {
      for (int j = 0; j < 4; j++) {
        k[at[i]][at[j]] += f * block[i][j];
      }
    }
  }
}
