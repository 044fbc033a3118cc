package org.counterpull.heat.block;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A graded box of cells, with an outline cut out of it if there is one. Cells that the outline cuts
 * keep their share of volume, of face area and of the outline's own edge.
 */
public final class CartesianGrid implements Grid {
  private static final double LEAST_FRACTION = 1e-4;

  /** A sliver conducts at most this many times what its volume would in a full cell. */
  private static final double SLIVER_CAP = 4;

  private final Axis[] axes;
  private final Optional<Outline> outline;
  private final double[][] fraction;

  /** A full box with the given cell edges in mm. */
  public CartesianGrid(double[] xMm, double[] yMm, double[] zMm) {
    this(xMm, yMm, zMm, Optional.empty());
  }

  /** A plate of the given outline in x and y, with the given cell edges in mm. */
  public CartesianGrid(double[] xMm, double[] yMm, double[] zMm, Outline outline) {
    this(xMm, yMm, zMm, Optional.of(outline));
  }

  private CartesianGrid(double[] xMm, double[] yMm, double[] zMm, Optional<Outline> outline) {
    this.axes = new Axis[] {new Axis("x", xMm), new Axis("y", yMm), new Axis("z", zMm)};
    this.outline = outline;
    this.fraction = new double[nx()][ny()];
    for (int i = 0; i < nx(); i++) {
      for (int j = 0; j < ny(); j++) {
        double f = outline.map(columnShare(i, j)).orElse(1.0);
        fraction[i][j] = f < LEAST_FRACTION ? 0 : Math.min(1, f);
      }
    }
  }

  private Function<Outline, Double> columnShare(int i, int j) {
    double[] x = axes[0].edges;
    double[] y = axes[1].edges;
    return o -> o.areaIn(x[i], x[i + 1], y[j], y[j + 1]) / (axes[0].size(i) * axes[1].size(j));
  }

  @Override
  public int nx() {
    return axes[0].cells;
  }

  @Override
  public int ny() {
    return axes[1].cells;
  }

  @Override
  public int nz() {
    return axes[2].cells;
  }

  @Override
  public boolean solid(int i, int j, int k) {
    return fraction[i][j] > 0;
  }

  @Override
  public double volumeMm3(int i, int j, int k) {
    return fraction[i][j] * axes[0].size(i) * axes[1].size(j) * axes[2].size(k);
  }

  @Override
  public double shapeMm(int direction, int i, int j, int k) {
    int[] at = {i, j, k};
    if (at[direction] + 1 >= axes[direction].cells) {
      return 0;
    }
    double distance =
        axes[direction].centre(at[direction] + 1) - axes[direction].centre(at[direction]);
    return switch (direction) {
      case 0 -> opening(0, i, j) * axes[1].size(j) * axes[2].size(k) / distance;
      case 1 -> opening(1, i, j) * axes[0].size(i) * axes[2].size(k) / distance;
      case 2 -> fraction[i][j] * axes[0].size(i) * axes[1].size(j) / distance;
      default -> throw new IllegalArgumentException("direction " + direction);
    };
  }

  /** Open share of the face between column (i, j) and the next one along x (0) or y (1). */
  private double opening(int axis, int i, int j) {
    double here = fraction[i][j];
    double next = axis == 0 ? fraction[i + 1][j] : fraction[i][j + 1];
    if (here == 0 || next == 0) {
      return 0;
    }
    if (outline.isEmpty()) {
      return 1;
    }
    int other = 1 - axis;
    int n = axis == 0 ? j : i;
    double place = axes[axis].edges[(axis == 0 ? i : j) + 1];
    double open =
        outline.get().lengthOn(axis, place, axes[other].edges[n], axes[other].edges[n + 1])
            / axes[other].size(n);
    return Math.min(open, SLIVER_CAP * Math.min(here, next));
  }

  @Override
  public Coarser coarser(double widestMm) {
    int[][] groups = new int[3][];
    double[][] edges = new double[3][];
    for (int d = 0; d < 3; d++) {
      groups[d] = axes[d].groups(0, widestMm);
      edges[d] = axes[d].edges(groups[d]);
    }
    CartesianGrid wide = new CartesianGrid(edges[0], edges[1], edges[2], outline);
    return Coarser.of(this, wide, axes, wide.axes, groups);
  }

  @Override
  public List<Edge> edges() {
    return List.of();
  }

  @Override
  public List<Patch> patches() {
    return new CartesianSurface(this, axes, fraction, outline).patches();
  }

  @Override
  public Vec3 pointIn(int i, int j, int k, double u, double v, double w) {
    return new Vec3(axes[0].at(i, u), axes[1].at(j, v), axes[2].at(k, w));
  }

  @Override
  public int[] near(Vec3 point, double radiusMm) {
    double[] at = {point.x(), point.y(), point.z()};
    int[] range = new int[6];
    for (int d = 0; d < 3; d++) {
      range[2 * d] = axes[d].cellAt(at[d] - radiusMm);
      range[2 * d + 1] = axes[d].cellAt(at[d] + radiusMm);
    }
    return range;
  }

  @Override
  public double distanceMm(Vec3 point) {
    double dx = axes[0].beyond(point.x());
    double dy = axes[1].beyond(point.y());
    double dz = axes[2].beyond(point.z());
    return Math.sqrt(dx * dx + dy * dy + dz * dz);
  }

  @Override
  public Interpolation interpolation(Vec3 point) {
    int i = axes[0].below(point.x());
    int j = axes[1].below(point.y());
    int k = axes[2].below(point.z());
    return Corners.blend(
        this,
        new int[][] {{i, i + 1}, {j, j + 1}, {k, k + 1}},
        axes[0].part(i, point.x()),
        axes[1].part(j, point.y()),
        axes[2].part(k, point.z()));
  }
}
