package org.counterpull.pull;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.space.Frame;
import org.ejml.data.DMatrixRMaj;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.interfaces.linsol.LinearSolverSparse;
import org.ejml.sparse.FillReducing;
import org.ejml.sparse.csc.factory.LinearSolverFactory_DSCC;

/**
 * What the search would cost without its updates: at every birth the stiffness of all bars and springs
 * is assembled and factorised by the same sparse Cholesky in the same numbering.
 */
final class SparseAnew {
  private final RandomFrame frame;
  private final int[] first;
  private final int unknowns;
  private final List<double[][]> beams = new ArrayList<>();
  private final SpringStiffness[] live;

  SparseAnew(RandomFrame frame) {
    this.frame = frame;
    this.live = new SpringStiffness[frame.links.size()];
    List<Vector3D> nodes = new ArrayList<>();
    List<Set<Integer>> neighbours = new ArrayList<>();
    for (int b = 0; b < frame.bars.size(); b++) {
      nodes.addAll(frame.bars.get(b));
      for (int e = 0; e < RandomFrame.NODES - 1; e++) {
        beams.add(AnewSolver.beamStiffness(frame, b, e));
      }
    }
    nodes.forEach(node -> neighbours.add(new TreeSet<>()));
    for (int n = 0; n < nodes.size(); n++) {
      if (n % RandomFrame.NODES > 0) {
        connect(neighbours, n, n - 1);
      }
    }
    for (int l = 0; l < live.length; l++) {
      connect(neighbours, node(frame.from.get(l)), node(frame.to.get(l)));
    }
    first = new int[nodes.size()];
    int next = 0;
    for (int node : NestedDissection.order(nodes, neighbours)) {
      first[node] = node == 0 ? -1 : next;
      next += node == 0 ? 0 : 6;
    }
    unknowns = next;
  }

  private static void connect(List<Set<Integer>> neighbours, int a, int b) {
    neighbours.get(a).add(b);
    neighbours.get(b).add(a);
  }

  private static int node(MaterialPoint point) {
    return RandomFrame.NODES * point.body() + point.node();
  }

  void join(int link, SpringStiffness stiffness) {
    live[link] = stiffness;
  }

  /** Lays a segment and returns the movement that it makes. */
  double[] weld(Segment segment) {
    live[segment.link()] = segment.pulling();
    DMatrixRMaj load = new DMatrixRMaj(unknowns, 1);
    double[][] rows = openings(segment.link());
    double[] pulling = segment.pulling().components();
    double[] wanted = segment.wanted();
    int[] at = places(segment.link());
    for (int c = 0; c < 6; c++) {
      for (int i = 0; i < 12; i++) {
        if (at[i] >= 0) {
          load.data[at[i]] += rows[c][i] * pulling[c] * wanted[c];
        }
      }
    }
    LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> cholesky =
        LinearSolverFactory_DSCC.cholesky(FillReducing.NONE);
    if (!cholesky.setA(assemble())) {
      throw new IllegalStateException("not positive definite");
    }
    DMatrixRMaj moved = new DMatrixRMaj(unknowns, 1);
    cholesky.solve(load, moved);
    live[segment.link()] = segment.cold();
    return moved.data;
  }

  private DMatrixSparseCSC assemble() {
    List<Map<Integer, Double>> columns = new ArrayList<>();
    for (int i = 0; i < unknowns; i++) {
      columns.add(new TreeMap<>());
    }
    for (int k = 0; k < beams.size(); k++) {
      int a = k / (RandomFrame.NODES - 1) * RandomFrame.NODES + k % (RandomFrame.NODES - 1);
      add(columns, beams.get(k), places(a, a + 1));
    }
    for (int l = 0; l < live.length; l++) {
      if (live[l] != null) {
        add(columns, spring(openings(l), live[l].components()), places(l));
      }
    }
    int entries = columns.stream().mapToInt(Map::size).sum();
    DMatrixSparseCSC matrix = new DMatrixSparseCSC(unknowns, unknowns, entries);
    int at = 0;
    for (int c = 0; c < unknowns; c++) {
      for (Map.Entry<Integer, Double> entry : columns.get(c).entrySet()) {
        matrix.nz_rows[at] = entry.getKey();
        matrix.nz_values[at++] = entry.getValue();
      }
      matrix.col_idx[c + 1] = at;
    }
    matrix.nz_length = at;
    matrix.indicesSorted = true;
    return matrix;
  }

  private static double[][] spring(double[][] rows, double[] stiffness) {
    double[][] k = new double[12][12];
    for (int i = 0; i < 12; i++) {
      for (int j = 0; j < 12; j++) {
        for (int c = 0; c < 6; c++) {
          k[i][j] += rows[c][i] * stiffness[c] * rows[c][j];
        }
      }
    }
    return k;
  }

  private static void add(List<Map<Integer, Double>> columns, double[][] k, int[] at) {
    for (int i = 0; i < 12; i++) {
      for (int j = 0; at[i] >= 0 && j < 12; j++) {
        if (at[j] >= 0) {
          columns.get(at[j]).merge(at[i], k[i][j], Double::sum);
        }
      }
    }
  }

  private int[] places(int link) {
    return places(node(frame.from.get(link)), node(frame.to.get(link)));
  }

  private int[] places(int a, int b) {
    int[] at = new int[12];
    for (int i = 0; i < 6; i++) {
      at[i] = first[a] < 0 ? -1 : first[a] + i;
      at[6 + i] = first[b] < 0 ? -1 : first[b] + i;
    }
    return at;
  }

  private double[][] openings(int link) {
    Frame axes = frame.axes.get(link);
    double[][] rows = new double[6][12];
    List<Vector3D> axis = List.of(axes.x(), axes.y(), axes.z());
    for (int c = 0; c < 3; c++) {
      put(rows[c], 0, frame.from.get(link), axis.get(c), -1);
      put(rows[c], 6, frame.to.get(link), axis.get(c), 1);
      System.arraycopy(axis.get(c).negate().toArray(), 0, rows[c + 3], 3, 3);
      System.arraycopy(axis.get(c).toArray(), 0, rows[c + 3], 9, 3);
    }
    return rows;
  }

  private void put(double[] row, int at, MaterialPoint point, Vector3D direction, double sign) {
    Vector3D node = frame.bars.get(point.body()).get(point.node());
    Vector3D moment = point.position().subtract(node).crossProduct(direction);
    System.arraycopy(direction.scalarMultiply(sign).toArray(), 0, row, at, 3);
    System.arraycopy(moment.scalarMultiply(sign).toArray(), 0, row, at + 3, 3);
  }
}
