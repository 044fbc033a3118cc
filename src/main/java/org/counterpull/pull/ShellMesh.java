package org.counterpull.pull;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A triangulated mid-surface of constant thickness.
 *
 * @param nodes where the nodes are, mm
 * @param triangles three node numbers each
 * @param thicknessMm thickness, mm
 */
public record ShellMesh(List<Vector3D> nodes, List<int[]> triangles, double thicknessMm) {
  public ShellMesh {
    nodes = List.copyOf(nodes);
    triangles = triangles.stream().map(int[]::clone).toList();
    if (!(thicknessMm > 0)) {
      throw new IllegalArgumentException("thickness " + thicknessMm + " mm must be above zero");
    }
    for (int[] t : triangles) {
      Vector3D ab = nodes.get(t[1]).subtract(nodes.get(t[0]));
      Vector3D ac = nodes.get(t[2]).subtract(nodes.get(t[0]));
      if (t.length != 3 || !(ab.crossProduct(ac).getNorm() > 1e-9 * ab.getNorm() * ac.getNorm())) {
        throw new IllegalArgumentException("triangle " + triangles.indexOf(t) + " has no area");
      }
    }
  }

  /**
   * A rectangle or any surface that is one in two parameters: a grid of cells, each cut along a
   * diagonal; the diagonals lie symmetric to both middle lines when the counts are even.
   *
   * @param surface where grid point (i, j) lies
   * @param columns cells along i
   * @param rows cells along j
   */
  public static ShellMesh grid(Surface surface, int columns, int rows, double thicknessMm) {
    List<Vector3D> nodes = new ArrayList<>();
    for (int j = 0; j <= rows; j++) {
      for (int i = 0; i <= columns; i++) {
        nodes.add(surface.at(i, j));
      }
    }
    List<int[]> triangles = new ArrayList<>();
    for (int j = 0; j < rows; j++) {
      for (int i = 0; i < columns; i++) {
        int a = j * (columns + 1) + i;
        int b = a + 1;
        int c = a + columns + 2;
        int d = a + columns + 1;
        boolean rising = 2 * i < columns == 2 * j < rows;
        triangles.add(rising ? new int[] {a, b, c} : new int[] {a, b, d});
        triangles.add(rising ? new int[] {a, c, d} : new int[] {b, c, d});
      }
    }
    return new ShellMesh(nodes, triangles, thicknessMm);
  }

  /** Where a grid point lies. */
  @FunctionalInterface
  public interface Surface {
    Vector3D at(int i, int j);
  }
}
