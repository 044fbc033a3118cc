package org.counterpull.heat.block;

import java.util.ArrayList;
import java.util.List;

/**
 * Rings of a round tube or bar about its own z axis, with exact cylindrical volumes and faces:
 * lattice x is the radius, y the angle once around, z the length.
 *
 * <p>A bar that is solid to its axis has one undivided core cell per length, because sectors that
 * meet at the axis would be needlessly thin.
 */
public final class CylinderGrid implements Grid {
  private static final int LEAST_WIDE_SECTORS = 8;

  private final Axis radius;
  private final Axis angle;
  private final Axis length;
  private final boolean core;

  /**
   * A round tube or bar.
   *
   * @param radiusMm cell edges along the radius; the first is 0 for a solid bar
   * @param sectors number of equal sectors around, at least 3
   * @param zMm cell edges along the axis
   */
  public CylinderGrid(double[] radiusMm, int sectors, double[] zMm) {
    this(radiusMm, equalSectors(sectors), zMm);
  }

  /** The same with cell edges around in radians, from any start once around. */
  public CylinderGrid(double[] radiusMm, double[] angleRad, double[] zMm) {
    this.radius = new Axis("radius", radiusMm);
    this.angle = new Axis("angle", angleRad);
    this.length = new Axis("z", zMm);
    this.core = radiusMm[0] == 0;
    if (radiusMm[0] < 0) {
      throw new IllegalArgumentException("radius " + radiusMm[0] + " mm is negative");
    }
    if (angle.cells < 3 || Math.abs(angle.high() - angle.low() - 2 * Math.PI) > 1e-9) {
      throw new IllegalArgumentException("a round block goes once around in three sectors or more");
    }
    if (core && radius.cells < 2) {
      throw new IllegalArgumentException("a solid bar needs a core and at least one ring");
    }
  }

  private static double[] equalSectors(int sectors) {
    double[] edges = new double[sectors + 1];
    for (int j = 0; j <= sectors; j++) {
      edges[j] = 2 * Math.PI * j / sectors;
    }
    return edges;
  }

  @Override
  public int nx() {
    return radius.cells;
  }

  @Override
  public int ny() {
    return angle.cells;
  }

  @Override
  public int nz() {
    return length.cells;
  }

  /** Whether a ring is the undivided core. */
  boolean inCore(int i) {
    return core && i == 0;
  }

  @Override
  public boolean solid(int i, int j, int k) {
    return !inCore(i) || j == 0;
  }

  @Override
  public double volumeMm3(int i, int j, int k) {
    return solid(i, j, k) ? endArea(i, j) * length.size(k) : 0;
  }

  /** Area of a cell across the axis. */
  double endArea(int i, int j) {
    double inner = radius.edges[i];
    double outer = radius.edges[i + 1];
    double around = inCore(i) ? 2 * Math.PI : angle.size(j);
    return 0.5 * around * (outer - inner) * (outer + inner);
  }

  @Override
  public double shapeMm(int direction, int i, int j, int k) {
    return switch (direction) {
      case 0 -> i + 1 >= nx() || inCore(i) ? 0 : radialShape(i, j, k);
      case 1 -> j + 1 >= ny() || inCore(i) ? 0 : aroundShape(i, j, j + 1, k);
      case 2 ->
          k + 1 >= nz() || !solid(i, j, k)
              ? 0
              : endArea(i, j) / (length.centre(k + 1) - length.centre(k));
      default -> throw new IllegalArgumentException("direction " + direction);
    };
  }

  private double radialShape(int i, int j, int k) {
    double log = Math.log(radius.centre(i + 1) / radius.centre(i));
    return angle.size(j) * length.size(k) / log;
  }

  private double aroundShape(int i, int j, int next, int k) {
    double apart = 0.5 * (angle.size(j) + angle.size(next));
    double log = Math.log(radius.edges[i + 1] / radius.edges[i]);
    return length.size(k) * log / apart;
  }

  private Axis[] axes() {
    return new Axis[] {radius, angle, length};
  }

  @Override
  public Coarser coarser(double widestMm) {
    double widestRad = Math.min(widestMm / radius.high(), 2 * Math.PI / LEAST_WIDE_SECTORS);
    int[][] groups = {
      radius.groups(core ? 1 : 0, widestMm), angle.groups(0, widestRad), length.groups(0, widestMm)
    };
    CylinderGrid wider =
        new CylinderGrid(radius.edges(groups[0]), angle.edges(groups[1]), length.edges(groups[2]));
    Coarser coarser = Coarser.of(this, wider, axes(), wider.axes(), groups);
    for (int n = 0; core && n < cells(); n++) {
      if (n % nx() == 0) {
        // The core is undivided around.
        coarser.parent()[n] = wider.cell(0, 0, groups[2][n / (nx() * ny())]);
      }
    }
    return coarser;
  }

  @Override
  public List<Edge> edges() {
    List<Edge> edges = new ArrayList<>();
    for (int k = 0; k < nz(); k++) {
      for (int i = core ? 1 : 0; i < nx(); i++) {
        edges.add(new Edge(cell(i, ny() - 1, k), cell(i, 0, k), aroundShape(i, ny() - 1, 0, k)));
      }
      for (int j = 0; core && j < ny(); j++) {
        double r1 = radius.edges[1];
        double ring = radius.centre(1);
        // The core holds the mean of a parabola over the disc: its conduction length to the ring.
        double distance = (ring * ring - 0.5 * r1 * r1) / (2 * r1);
        edges.add(
            new Edge(cell(0, 0, k), cell(1, j, k), angle.size(j) * r1 * length.size(k) / distance));
      }
    }
    return edges;
  }

  @Override
  public List<Patch> patches() {
    return new CylinderSurface(this, radius, angle, length).patches();
  }

  @Override
  public Vec3 pointIn(int i, int j, int k, double u, double v, double w) {
    double inner = radius.edges[i];
    double outer = radius.edges[i + 1];
    // Even in area, so that equal fractions stand for equal volumes.
    double r = Math.sqrt(inner * inner + u * (outer * outer - inner * inner));
    double a = inCore(i) ? 2 * Math.PI * v : angle.at(j, v);
    return CylinderSurface.polar(r, a, length.at(k, w));
  }

  @Override
  public int[] near(Vec3 point, double radiusMm) {
    double r = Math.hypot(point.x(), point.y());
    return new int[] {
      radius.cellAt(r - radiusMm),
      radius.cellAt(r + radiusMm),
      0,
      ny() - 1,
      length.cellAt(point.z() - radiusMm),
      length.cellAt(point.z() + radiusMm)
    };
  }

  @Override
  public double distanceMm(Vec3 point) {
    return Math.hypot(radius.beyond(Math.hypot(point.x(), point.y())), length.beyond(point.z()));
  }

  @Override
  public Interpolation interpolation(Vec3 point) {
    double r = Math.hypot(point.x(), point.y());
    int i = radius.below(r);
    double u = radius.part(i, r);
    if (inCore(i)) {
      u = Math.min(1, r / radius.centre(1));
    }
    int k = length.below(point.z());
    double w = length.part(k, point.z());
    double place = Math.atan2(point.y(), point.x()) - angle.low();
    place = angle.low() + place - 2 * Math.PI * Math.floor(place / (2 * Math.PI));
    int j = angle.cellAt(place);
    int first = place < angle.centre(j) ? (j + ny() - 1) % ny() : j;
    int second = (first + 1) % ny();
    double behind = place - angle.centre(first);
    behind -= 2 * Math.PI * Math.floor(behind / (2 * Math.PI));
    double v = behind / (0.5 * (angle.size(first) + angle.size(second)));
    int[] inner = inCore(i) ? new int[] {0, 1} : new int[] {i, Math.min(i + 1, nx() - 1)};
    if (inCore(i)) {
      return withCore(u, first, second, v, k, w);
    }
    return Corners.blend(this, new int[][] {inner, {first, second}, {k, k + 1}}, u, v, w);
  }

  /** Between the core, which has one cell around, and the first ring. */
  private Interpolation withCore(double u, int first, int second, double v, int k, double w) {
    int up = Math.min(k + 1, nz() - 1);
    int[] cells = {
      cell(0, 0, k), cell(0, 0, up),
      cell(1, first, k), cell(1, second, k),
      cell(1, first, up), cell(1, second, up)
    };
    double[] weights = {
      (1 - u) * (1 - w), (1 - u) * w,
      u * (1 - v) * (1 - w), u * v * (1 - w),
      u * (1 - v) * w, u * v * w
    };
    return new Interpolation(cells, weights);
  }
}
