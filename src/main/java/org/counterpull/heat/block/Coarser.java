package org.counterpull.heat.block;

/**
 * A grid of the same metal with several cells put together.
 *
 * @param grid the wider cells
 * @param parent which of them holds each cell of the finer grid, both by linear number
 * @param middles middles of the finer cells along each axis, in the axis' own measure
 * @param widerMiddles middles of the wider cells
 */
public record Coarser(Grid grid, int[] parent, double[][] middles, double[][] widerMiddles) {

  /** Numbers the parents from how cells are put together along each axis. */
  static Coarser of(Grid fine, Grid wide, Axis[] axes, Axis[] wider, int[][] groups) {
    int[] parent = new int[fine.cells()];
    for (int k = 0; k < fine.nz(); k++) {
      for (int j = 0; j < fine.ny(); j++) {
        for (int i = 0; i < fine.nx(); i++) {
          parent[fine.cell(i, j, k)] = wide.cell(groups[0][i], groups[1][j], groups[2][k]);
        }
      }
    }
    double[][] middles = new double[3][];
    double[][] widerMiddles = new double[3][];
    for (int d = 0; d < 3; d++) {
      middles[d] = axes[d].middles();
      widerMiddles[d] = wider[d].middles();
    }
    return new Coarser(wide, parent, middles, widerMiddles);
  }
}
