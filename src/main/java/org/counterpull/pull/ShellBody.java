package org.counterpull.pull;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.ejml.data.DMatrixRMaj;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.interfaces.linsol.LinearSolverSparse;
import org.ejml.sparse.FillReducing;
import org.ejml.sparse.csc.factory.LinearSolverFactory_DSCC;

/**
 * A plate or a tube wall as a shell of {@link ShellTriangle}s, condensed once: one sparse Cholesky
 * factorisation in {@link NestedDissection} order with the first exposed node held, one solution
 * for each exposed unknown. What is condensed away is exact, not approximated.
 */
public final class ShellBody implements ElasticBody {
  private final ShellMesh mesh;
  private final ElasticMaterial material;
  private final int[] exposed;
  private final int[] firstUnknown;
  private final LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> solver;
  private final int unknowns;
  private double[][] flexibility;

  /**
   * A plate.
   *
   * @param mesh its mid-surface
   * @param material of the plate
   * @param exposed node numbers that the outside needs; the first is the held one
   */
  public ShellBody(ShellMesh mesh, ElasticMaterial material, List<Integer> exposed) {
    this.mesh = mesh;
    this.material = material;
    this.exposed = exposed.stream().mapToInt(Integer::intValue).toArray();
    this.unknowns = 6 * (mesh.nodes().size() - 1);
    this.firstUnknown = number();
    this.solver = factorise();
  }

  @Override
  public int exposedCount() {
    return exposed.length;
  }

  @Override
  public Vector3D exposed(int node) {
    return mesh.nodes().get(exposed[node]);
  }

  /** Worked out when it is first asked for: who only strains the body doesn't pay for it. */
  @Override
  public double[][] flexibility() {
    if (flexibility == null) {
      flexibility = condense();
    }
    return flexibility;
  }

  /**
   * What an inherent strain of some triangles does: the shrinkage of a weld across a strip of its
   * plate.
   *
   * @param triangles triangle numbers of the strip
   * @param direction in which it shrinks
   * @param strain strain in that direction: minus the shrinkage over the strip's width
   * @param curvaturePerMm curvature: angle over the strip's width, positive where the face towards
   *     the triangles' normal grows longer
   */
  public FreeResponse inherentStrain(
      List<Integer> triangles, Vector3D direction, double strain, double curvaturePerMm) {
    DMatrixRMaj right = new DMatrixRMaj(unknowns, 1);
    for (int t : triangles) {
      int[] corners = mesh.triangles().get(t);
      double[] forces = triangle(corners).inherent(direction, strain, curvaturePerMm);
      for (int i = 0; i < 18; i++) {
        int row = unknown(corners[i / 6], i % 6);
        if (row >= 0) {
          right.data[row] += forces[i];
        }
      }
    }
    DMatrixRMaj solution = new DMatrixRMaj(unknowns, 1);
    solver.solve(right, solution);
    double[] response = new double[6 * exposed.length];
    for (int i = 0; i < response.length; i++) {
      int row = unknown(exposed[i / 6], i % 6);
      response[i] = row < 0 ? 0 : solution.data[row];
    }
    return new FreeResponse(response);
  }

  private ShellTriangle triangle(int[] corners) {
    return new ShellTriangle(
        mesh.nodes().get(corners[0]),
        mesh.nodes().get(corners[1]),
        mesh.nodes().get(corners[2]),
        mesh.thicknessMm(),
        material);
  }

  private int[] number() {
    List<Set<Integer>> neighbours = new ArrayList<>();
    for (int i = 0; i < mesh.nodes().size(); i++) {
      neighbours.add(new TreeSet<>());
    }
    for (int[] corners : mesh.triangles()) {
      for (int a : corners) {
        for (int b : corners) {
          neighbours.get(a).add(b);
        }
      }
    }
    int[] first = new int[mesh.nodes().size()];
    int next = 0;
    for (int node : NestedDissection.order(mesh.nodes(), neighbours)) {
      first[node] = node == exposed[0] ? -1 : next;
      next += node == exposed[0] ? 0 : 6;
    }
    return first;
  }

  private int unknown(int node, int component) {
    return firstUnknown[node] < 0 ? -1 : firstUnknown[node] + component;
  }

  private LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> factorise() {
    LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> cholesky =
        LinearSolverFactory_DSCC.cholesky(FillReducing.NONE);
    if (!cholesky.setA(assemble())) {
      throw new IllegalArgumentException(
          "the mesh of a plate is not in one piece: a part of it is loose");
    }
    return cholesky;
  }

  private DMatrixSparseCSC assemble() {
    List<Map<Integer, Double>> columns = new ArrayList<>();
    for (int i = 0; i < unknowns; i++) {
      columns.add(new TreeMap<>());
    }
    int entries = 0;
    for (int[] corners : mesh.triangles()) {
      double[][] k = triangle(corners).stiffness();
      for (int i = 0; i < 18; i++) {
        int row = unknown(corners[i / 6], i % 6);
        for (int j = 0; row >= 0 && j < 18; j++) {
          int column = unknown(corners[j / 6], j % 6);
          if (column >= 0) {
            columns.get(column).merge(row, k[i][j], Double::sum);
          }
        }
      }
    }
    for (Map<Integer, Double> column : columns) {
      entries += column.size();
    }
    DMatrixSparseCSC matrix = new DMatrixSparseCSC(unknowns, unknowns, entries);
    int at = 0;
    for (int c = 0; c < unknowns; c++) {
      for (Map.Entry<Integer, Double> entry : columns.get(c).entrySet()) {
        matrix.nz_rows[at] = entry.getKey();
        matrix.nz_values[at] = entry.getValue();
        at++;
      }
      matrix.col_idx[c + 1] = at;
    }
    matrix.nz_length = at;
    matrix.indicesSorted = true;
    return matrix;
  }

  private double[][] condense() {
    int size = 6 * exposed.length;
    DMatrixRMaj right = new DMatrixRMaj(unknowns, size);
    for (int i = 6; i < size; i++) {
      right.set(unknown(exposed[i / 6], i % 6), i, 1);
    }
    DMatrixRMaj solution = new DMatrixRMaj(unknowns, size);
    solver.solve(right, solution);
    double[][] f = new double[size][size];
    for (int i = 6; i < size; i++) {
      for (int j = 6; j < size; j++) {
        f[i][j] = solution.get(unknown(exposed[i / 6], i % 6), j);
      }
    }
    return f;
  }
}
