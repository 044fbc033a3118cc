package org.counterpull.heat.block;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.counterpull.heat.material.ThermalMaterial;

/**
 * One block of metal: a grid placed in space, laid out flat for the solver.
 *
 * <p>Cells are numbered {@code p = first() + linear number}; {@link #first()} empty places lie
 * before and after, so that a neighbour's number may be formed without asking whether it exists.
 * The conductance towards a neighbour that does not exist is 0.
 */
public final class Block {
  private final String name;
  private final ThermalMaterial material;
  private final Frame frame;
  private final Grid grid;
  private final int first;
  private final double[][] shapeMm;
  private final double[] volumeMm3;
  private final List<Edge> edges = new ArrayList<>();
  private final List<Patch> patches = new ArrayList<>();

  /** Lays a grid of a material into space under a name that is its own in the model. */
  public Block(String name, ThermalMaterial material, Frame frame, Grid grid) {
    this.name = name;
    this.material = material;
    this.frame = frame;
    this.grid = grid;
    this.first = grid.nx() * grid.ny();
    int size = grid.cells() + 2 * first;
    this.shapeMm = new double[3][size];
    this.volumeMm3 = new double[size];
    for (int k = 0; k < grid.nz(); k++) {
      for (int j = 0; j < grid.ny(); j++) {
        for (int i = 0; i < grid.nx(); i++) {
          int p = first + grid.cell(i, j, k);
          volumeMm3[p] = grid.volumeMm3(i, j, k);
          for (int d = 0; d < 3; d++) {
            shapeMm[d][p] = grid.shapeMm(d, i, j, k);
          }
        }
      }
    }
    for (Edge e : grid.edges()) {
      edges.add(new Edge(first + e.cellA(), first + e.cellB(), e.shapeMm()));
    }
    for (Patch patch : grid.patches()) {
      patches.add(patch.placed(frame, first));
    }
  }

  public String name() {
    return name;
  }

  public ThermalMaterial material() {
    return material;
  }

  public Frame frame() {
    return frame;
  }

  public Grid grid() {
    return grid;
  }

  /** Number of the first cell. */
  public int first() {
    return first;
  }

  /** Number after the last cell. */
  public int end() {
    return first + grid.cells();
  }

  /** Length of an array over the cells with the empty places around them. */
  public int size() {
    return volumeMm3.length;
  }

  /** Steps in cell number to the next cell along x, y, z. */
  public int[] strides() {
    return new int[] {1, grid.nx(), grid.nx() * grid.ny()};
  }

  /** Area over distance towards the next cell along x, y or z; not to be written to. */
  public double[] shapeMm(int direction) {
    return shapeMm[direction];
  }

  /** Volume of metal by cell, 0 where there is none; not to be written to. */
  public double[] volumeMm3() {
    return volumeMm3;
  }

  /** Volume of the whole block. */
  public double totalVolumeMm3() {
    double sum = 0;
    for (double v : volumeMm3) {
      sum += v;
    }
    return sum;
  }

  /** Conduction paths beyond the lattice's. */
  public List<Edge> edges() {
    return List.copyOf(edges);
  }

  /** The whole surface in world coordinates. */
  public List<Patch> patches() {
    return Collections.unmodifiableList(patches);
  }

  /** The part of the surface on one side. */
  public List<Patch> patches(Side side) {
    return patches.stream().filter(p -> p.side() == side).toList();
  }

  /** Weights for a value at a world point. */
  public Interpolation interpolation(Vec3 world) {
    Interpolation local = grid.interpolation(frame.toLocal(world));
    int[] cells = local.cells();
    for (int n = 0; n < cells.length; n++) {
      cells[n] += first;
    }
    return new Interpolation(cells, local.weights());
  }

  /** The cell that weighs most at a world point. */
  public int cellAt(Vec3 world) {
    Interpolation at = interpolation(world);
    int best = 0;
    for (int n = 1; n < at.cells().length; n++) {
      if (at.weights()[n] > at.weights()[best]) {
        best = n;
      }
    }
    return at.cells()[best];
  }

  /** Distance in mm from a world point to the block. */
  public double distanceMm(Vec3 world) {
    return grid.distanceMm(frame.toLocal(world));
  }

  /** World coordinates of the middle of a cell. */
  public Vec3 centre(int cell) {
    int n = cell - first;
    int i = n % grid.nx();
    int j = n / grid.nx() % grid.ny();
    int k = n / (grid.nx() * grid.ny());
    return frame.toWorld(grid.pointIn(i, j, k, 0.5, 0.5, 0.5));
  }

  @Override
  public String toString() {
    return name + " (" + grid.cells() + " cells of " + material.name() + ")";
  }
}
