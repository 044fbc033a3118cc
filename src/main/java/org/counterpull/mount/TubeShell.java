package org.counterpull.mount;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.pull.ElasticMaterial;
import org.counterpull.pull.FreeResponse;
import org.counterpull.pull.ShellBody;
import org.counterpull.pull.ShellMesh;

/**
 * The wall of a tube as a shell, and how it gives way when strips of it shrink. Sections along the
 * tube, places around it; fine under the welds.
 */
final class TubeShell {
  private static final double FINE_MM = 4;
  private static final double END_FADING = 3;

  private final BoredTube tube;
  private final double[] angles;
  private final double[] lengths;
  private final ShellBody body;

  /** The shell of a tube, fine where these welds lie; as long as the welds are felt. */
  TubeShell(BoredTube whole, List<Seam> seams) {
    this.tube = felt(whole, seams);
    this.angles = TubeGrid.angles(seams, tube.meanRadiusMm(), FINE_MM);
    this.lengths = TubeGrid.lengths(seams, tube.lowZMm(), tube.highZMm(), FINE_MM);
    List<Integer> all = new ArrayList<>();
    for (int n = 0; n < around() * lengths.length; n++) {
      all.add(n);
    }
    this.body = new ShellBody(mesh(), ElasticMaterial.STEEL, all);
  }

  /** Ovality spreads over R sqrt(R/t): beyond three times that the tube is cut off. */
  private static BoredTube felt(BoredTube whole, List<Seam> seams) {
    double spread =
        END_FADING * whole.meanRadiusMm() * Math.sqrt(whole.meanRadiusMm() / whole.wallMm());
    double low = Double.MAX_VALUE;
    double high = -Double.MAX_VALUE;
    for (Seam seam : seams) {
      low = Math.min(low, Math.min(seam.fromZMm(), seam.toZMm()));
      high = Math.max(high, Math.max(seam.fromZMm(), seam.toZMm()));
    }
    return whole.between(
        Math.max(whole.lowZMm(), low - spread), Math.min(whole.highZMm(), high + spread));
  }

  private int around() {
    return angles.length - 1;
  }

  private int node(int column, int row) {
    return row * around() + column % around();
  }

  private ShellMesh mesh() {
    double r = tube.meanRadiusMm();
    List<Vector3D> nodes = new ArrayList<>();
    for (double z : lengths) {
      for (int i = 0; i < around(); i++) {
        nodes.add(new Vector3D(r * Math.cos(angles[i]), r * Math.sin(angles[i]), z));
      }
    }
    List<int[]> triangles = new ArrayList<>();
    for (int j = 0; j + 1 < lengths.length; j++) {
      for (int i = 0; i < around(); i++) {
        int a = node(i, j);
        int b = node(i + 1, j);
        int c = node(i + 1, j + 1);
        int d = node(i, j + 1);
        // Diagonals mirror about the lug's middle; normals point outwards.
        boolean rising = angles[i] < 0 == lengths[j] < 0;
        triangles.add(rising ? new int[] {a, b, c} : new int[] {a, b, d});
        triangles.add(rising ? new int[] {a, c, d} : new int[] {b, c, d});
      }
    }
    return new ShellMesh(nodes, triangles, tube.wallMm());
  }

  double[] sections() {
    return lengths.clone();
  }

  double[] places() {
    return java.util.Arrays.copyOf(angles, around());
  }

  /**
   * Radial displacements by section and place around, mm, outwards.
   *
   * @param seam where the strip lies
   * @param acrossMm shrinkage across the seam
   * @param turnRad angle by which the wall turns across it, towards the outside
   * @param forceN shrinkage force along it
   */
  double[][] moved(Seam seam, double acrossMm, double turnRad, double forceN) {
    double[][] sum = new double[lengths.length][around()];
    for (Cells cells : strips(seam)) {
      double width = cells.widthMm;
      double share = cells.share;
      if (acrossMm != 0 || turnRad != 0) {
        add(
            sum,
            body.inherentStrain(
                cells.triangles,
                cells.across,
                -acrossMm / width * share,
                -turnRad / width * share));
      }
      if (forceN != 0) {
        double strain =
            forceN / (ElasticMaterial.STEEL.elasticModulusMPa() * tube.wallMm() * width);
        add(sum, body.inherentStrain(cells.triangles, cells.along, -strain * share, 0));
      }
    }
    return sum;
  }

  private void add(double[][] sum, FreeResponse response) {
    double[] u = response.displacements();
    for (int j = 0; j < lengths.length; j++) {
      for (int i = 0; i < around(); i++) {
        int n = 6 * node(i, j);
        sum[j][i] += u[n] * Math.cos(angles[i]) + u[n + 1] * Math.sin(angles[i]);
      }
    }
  }

  /**
   * Triangles under a stretch of weld.
   *
   * @param share of the strip that is welded, above 1 where cells are shorter than the weld
   */
  private record Cells(
      List<Integer> triangles, Vector3D across, Vector3D along, double widthMm, double share) {}

  private List<Cells> strips(Seam seam) {
    return seam.along() ? List.of(stripAlong(seam)) : stripsAcross(seam);
  }

  private Cells stripAlong(Seam seam) {
    int column = cell(angles, seam.fromRad());
    double low = Math.min(seam.fromZMm(), seam.toZMm());
    double high = Math.max(seam.fromZMm(), seam.toZMm());
    List<Integer> triangles = new ArrayList<>();
    double length = 0;
    for (int j = 0; j + 1 < lengths.length; j++) {
      double middle = (lengths[j] + lengths[j + 1]) / 2;
      if (middle > low && middle < high) {
        triangles.addAll(triangles(column, j));
        length += lengths[j + 1] - lengths[j];
      }
    }
    return new Cells(
        triangles,
        tangent(column),
        Vector3D.PLUS_K,
        (angles[column + 1] - angles[column]) * tube.meanRadiusMm(),
        (high - low) / length);
  }

  private List<Cells> stripsAcross(Seam seam) {
    int row = cell(lengths, seam.fromZMm());
    double low = Math.min(seam.fromRad(), seam.toRad());
    double high = Math.max(seam.fromRad(), seam.toRad());
    List<Integer> columns = new ArrayList<>();
    double arc = 0;
    for (int i = 0; i < around(); i++) {
      double middle = (angles[i] + angles[i + 1]) / 2;
      if (middle > low && middle < high) {
        columns.add(i);
        arc += angles[i + 1] - angles[i];
      }
    }
    double width = lengths[row + 1] - lengths[row];
    double share = (high - low) / arc;
    return columns.stream()
        .map(i -> new Cells(triangles(i, row), Vector3D.PLUS_K, tangent(i), width, share))
        .toList();
  }

  private List<Integer> triangles(int column, int row) {
    int first = 2 * (row * around() + column);
    return List.of(first, first + 1);
  }

  private Vector3D tangent(int column) {
    double a = (angles[column] + angles[column + 1]) / 2;
    return new Vector3D(-Math.sin(a), Math.cos(a), 0);
  }

  private static int cell(double[] edges, double at) {
    int i = 0;
    while (i + 2 < edges.length && edges[i + 1] <= at) {
      i++;
    }
    return i;
  }
}
