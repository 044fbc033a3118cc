package org.counterpull.heat.block;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The surface of a Cartesian block: its outer faces, or faces and the edge of its outline. */
final class CartesianSurface {
  private final CartesianGrid grid;
  private final Axis[] axes;
  private final double[][] fraction;
  private final Optional<Outline> outline;

  CartesianSurface(
      CartesianGrid grid, Axis[] axes, double[][] fraction, Optional<Outline> outline) {
    this.grid = grid;
    this.axes = axes;
    this.fraction = fraction;
    this.outline = outline;
  }

  List<Patch> patches() {
    List<Patch> patches = new ArrayList<>();
    for (int k = 0; k < grid.nz(); k++) {
      for (int j = 0; j < grid.ny(); j++) {
        for (int i = 0; i < grid.nx(); i++) {
          if (grid.solid(i, j, k)) {
            addPatches(patches, i, j, k);
          }
        }
      }
    }
    return patches;
  }

  private void addPatches(List<Patch> patches, int i, int j, int k) {
    addOuter(patches, 2, i, j, k, fraction[i][j]);
    if (outline.isEmpty()) {
      addOuter(patches, 0, i, j, k, 1);
      addOuter(patches, 1, i, j, k, 1);
      return;
    }
    double[] x = axes[0].edges;
    double[] y = axes[1].edges;
    double z0 = axes[2].edges[k];
    double z1 = axes[2].edges[k + 1];
    for (double[] e : outline.get().edgesIn(x[i], x[i + 1], y[j], y[j + 1])) {
      Vec3 normal = new Vec3(e[2], e[3], 0);
      Vec3 half = new Vec3(-e[3], e[2], 0).times(e[4] / 2);
      Vec3 low = new Vec3(e[0], e[1], z0);
      Vec3 high = new Vec3(e[0], e[1], z1);
      double depth = 0.5 * (Math.abs(e[2]) * axes[0].size(i) + Math.abs(e[3]) * axes[1].size(j));
      patches.add(
          new Patch(
              grid.cell(i, j, k),
              Side.OUTLINE,
              low.plus(high).times(0.5),
              normal,
              e[4] * (z1 - z0),
              depth,
              List.of(low.minus(half), low.plus(half), high.plus(half), high.minus(half))));
    }
  }

  private void addOuter(List<Patch> patches, int direction, int i, int j, int k, double share) {
    int at = direction == 0 ? i : direction == 1 ? j : k;
    if (at == 0) {
      patches.add(outer(direction, 0, i, j, k, share));
    }
    if (at == axes[direction].cells - 1) {
      patches.add(outer(direction, 1, i, j, k, share));
    }
  }

  private Patch outer(int direction, int end, int i, int j, int k, double share) {
    Side side = Side.values()[2 * direction + end];
    int u = (direction + 1) % 3;
    int v = (direction + 2) % 3;
    double[] unit = new double[3];
    unit[direction] = end == 0 ? -1 : 1;
    List<Vec3> corners = new ArrayList<>();
    double[][] ring = {{0, 0}, {1, 0}, {1, 1}, {0, 1}};
    for (double[] c : ring) {
      double[] f = new double[3];
      f[direction] = end;
      f[u] = c[0];
      f[v] = c[1];
      corners.add(grid.pointIn(i, j, k, f[0], f[1], f[2]));
    }
    double[] middle = {0.5, 0.5, 0.5};
    middle[direction] = end;
    int[] at = {i, j, k};
    return new Patch(
        grid.cell(i, j, k),
        side,
        grid.pointIn(i, j, k, middle[0], middle[1], middle[2]),
        new Vec3(unit[0], unit[1], unit[2]),
        share * axes[u].size(at[u]) * axes[v].size(at[v]),
        0.5 * axes[direction].size(at[direction]),
        corners);
  }
}
