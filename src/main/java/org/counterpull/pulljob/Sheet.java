package org.counterpull.pulljob;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.pull.ElasticBody;
import org.counterpull.pull.ElasticMaterial;
import org.counterpull.pull.FreeResponse;
import org.counterpull.pull.ShellBody;
import org.counterpull.pull.ShellMesh;
import org.counterpull.space.Frame;
import org.counterpull.stock.Stock;
import org.counterpull.weldment.Part;

/**
 * A part as a plate: a grid of shell triangles with lines through every point that is needed.
 *
 * <p>A plate with an outline is taken as the rectangle around it where the outline fills most of
 * it; see {@link Bodies}.
 */
final class Sheet implements Body {
  private static final int CELLS = 20;
  private static final double LEAST_CELL_MM = 6;
  private static final int STATIONS = 4;

  private final Frame axes;
  private final double[] us;
  private final double[] vs;
  private final List<Integer> exposed;
  private final ShellMesh mesh;
  private final ShellBody shell;
  private final String reason;

  Sheet(Part part, List<Vector3D> needed, ElasticMaterial material, String reason) {
    this.axes = part.frame();
    this.reason = reason;
    Extent extent = Extent.of(part);
    double cell =
        Math.max(
            LEAST_CELL_MM, Math.max(extent.toU - extent.fromU, extent.toV - extent.fromV) / CELLS);
    List<Vector3D> points = new ArrayList<>(needed);
    points.addAll(stations(extent));
    this.us =
        lines(
            extent.fromU, extent.toU, cell, points.stream().map(p -> axes.into(p).getX()).toList());
    this.vs =
        lines(
            extent.fromV, extent.toV, cell, points.stream().map(p -> axes.into(p).getY()).toList());
    this.mesh =
        ShellMesh.grid(
            (i, j) -> axes.outOf(new Vector3D(us[i], vs[j], 0)),
            us.length - 1,
            vs.length - 1,
            part.stock().upMm());
    TreeSet<Integer> nodes = new TreeSet<>();
    points.forEach(point -> nodes.add(meshNode(point)));
    this.exposed = List.copyOf(nodes);
    this.shell = new ShellBody(mesh, material, exposed);
  }

  private record Extent(double fromU, double toU, double fromV, double toV) {
    static Extent of(Part part) {
      if (part.outline().isEmpty()) {
        Stock stock = part.stock();
        return new Extent(0, part.lengthMm(), -stock.acrossMm() / 2, stock.acrossMm() / 2);
      }
      return new Extent(
          part.outline().stream().mapToDouble(p -> p.getX()).min().orElseThrow(),
          part.outline().stream().mapToDouble(p -> p.getX()).max().orElseThrow(),
          part.outline().stream().mapToDouble(p -> p.getY()).min().orElseThrow(),
          part.outline().stream().mapToDouble(p -> p.getY()).max().orElseThrow());
    }
  }

  /** Lines of the grid: the ends, those that are needed, and between them none too far apart. */
  private static double[] lines(double from, double to, double cell, List<Double> needed) {
    TreeSet<Double> sorted = new TreeSet<>(needed);
    List<Double> kept = new ArrayList<>(List.of(from));
    double least = cell / 3;
    for (double at : sorted) {
      if (at - kept.get(kept.size() - 1) > least && to - at > least) {
        kept.add(at);
      }
    }
    kept.add(to);
    List<Double> all = new ArrayList<>();
    for (int i = 0; i < kept.size() - 1; i++) {
      double gap = kept.get(i + 1) - kept.get(i);
      int pieces = Math.max(1, (int) Math.ceil(gap / cell - 1e-6));
      for (int k = 0; k < pieces; k++) {
        all.add(kept.get(i) + gap * k / pieces);
      }
    }
    all.add(to);
    return all.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private int meshNode(Vector3D point) {
    Vector3D local = axes.into(point);
    return nearest(vs, local.getY()) * us.length + nearest(us, local.getX());
  }

  private static int nearest(double[] lines, double at) {
    int nearest = 0;
    for (int i = 1; i < lines.length; i++) {
      if (Math.abs(lines[i] - at) < Math.abs(lines[nearest] - at)) {
        nearest = i;
      }
    }
    return nearest;
  }

  @Override
  public ElasticBody elastic() {
    return shell;
  }

  @Override
  public String reason() {
    return reason;
  }

  @Override
  public int nodeAt(Vector3D point) {
    int node = exposed.indexOf(meshNode(point));
    if (node < 0) {
      throw new IllegalStateException("a plate wasn't asked to show the point " + point);
    }
    return node;
  }

  /** Cells beside the run take up its shrinkage, so that as much is shrunk as it wants. */
  @Override
  public Optional<FreeResponse> shrunk(ShrunkStrip strip) {
    Vector3D normal = axes.z();
    double facing = strip.outward().dotProduct(normal);
    if (Math.abs(facing) < 0.5) {
      return Optional.empty();
    }
    List<Integer> triangles = beside(strip);
    double area = 0;
    for (int t : triangles) {
      int[] c = mesh.triangles().get(t);
      Vector3D a = mesh.nodes().get(c[0]);
      area +=
          mesh.nodes()
                  .get(c[1])
                  .subtract(a)
                  .crossProduct(mesh.nodes().get(c[2]).subtract(a))
                  .getNorm()
              / 2;
    }
    double perArea = strip.lengthMm() / area;
    double curvature = -Math.signum(facing) * strip.angleRad() * perArea;
    return Optional.of(
        shell.inherentStrain(triangles, strip.across(), -strip.acrossMm() * perArea, curvature));
  }

  private List<Integer> beside(ShrunkStrip strip) {
    List<Integer> found = new ArrayList<>();
    double reach = LEAST_CELL_MM;
    while (found.isEmpty()) {
      for (int t = 0; t < mesh.triangles().size(); t++) {
        int[] c = mesh.triangles().get(t);
        Vector3D centre =
            mesh.nodes()
                .get(c[0])
                .add(mesh.nodes().get(c[1]))
                .add(mesh.nodes().get(c[2]))
                .scalarMultiply(1.0 / 3)
                .subtract(strip.middle());
        boolean along =
            Math.abs(centre.dotProduct(strip.run())) < Math.max(strip.lengthMm() / 2, reach / 2);
        if (along && Math.abs(centre.dotProduct(strip.across())) < reach) {
          found.add(t);
        }
      }
      reach *= 1.5;
    }
    return found;
  }

  @Override
  public List<Vector3D> stations() {
    return exposed.stream().map(node -> mesh.nodes().get(node)).toList();
  }

  private List<Vector3D> stations(Extent extent) {
    List<Vector3D> stations = new ArrayList<>();
    for (int i = 0; i <= STATIONS; i++) {
      for (int j = 0; j <= STATIONS; j++) {
        double u = extent.fromU + (extent.toU - extent.fromU) * i / STATIONS;
        double v = extent.fromV + (extent.toV - extent.fromV) * j / STATIONS;
        stations.add(axes.outOf(new Vector3D(u, v, 0)));
      }
    }
    return stations;
  }
}
