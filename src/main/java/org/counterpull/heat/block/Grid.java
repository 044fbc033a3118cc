package org.counterpull.heat.block;

import java.util.List;

/**
 * A lattice of cells in a block's own coordinates. Cells are addressed by three indices; the linear
 * number is {@code (k*ny + j)*nx + i}.
 */
public sealed interface Grid permits CartesianGrid, CylinderGrid {
  int nx();

  int ny();

  int nz();

  /** Whether there is metal in the cell. */
  boolean solid(int i, int j, int k);

  /** Volume of metal in the cell, mm3. */
  double volumeMm3(int i, int j, int k);

  /** Area over distance to the next cell along x, y and z (0, 1, 2), mm; 0 where there is none. */
  double shapeMm(int direction, int i, int j, int k);

  /** Conduction paths beyond the lattice's own, by linear cell number. */
  List<Edge> edges();

  /** The surface in own coordinates, by linear cell number. */
  List<Patch> patches();

  /** Own coordinates of the point at fractions u, v, w of a cell. */
  Vec3 pointIn(int i, int j, int k, double u, double v, double w);

  /** Lowest and highest index (closed) in each direction of cells within a distance of a point. */
  int[] near(Vec3 point, double radiusMm);

  /** Distance in mm from a point to the nearest place in the block. */
  double distanceMm(Vec3 point);

  /** Weights for a value at a point, by linear cell number; outside, the nearest place counts. */
  Interpolation interpolation(Vec3 point);

  /** The same metal in cells that are put together up to a width. */
  Coarser coarser(double widestMm);

  default int cells() {
    return nx() * ny() * nz();
  }

  default int cell(int i, int j, int k) {
    return (k * ny() + j) * nx() + i;
  }
}
