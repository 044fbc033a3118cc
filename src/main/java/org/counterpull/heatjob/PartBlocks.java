package org.counterpull.heatjob;

import java.util.ArrayList;
import java.util.List;
import org.counterpull.heat.block.Block;
import org.counterpull.heat.block.CartesianGrid;
import org.counterpull.heat.block.CylinderGrid;
import org.counterpull.heat.block.Grading;
import org.counterpull.heat.block.Outline;
import org.counterpull.heat.block.Side;
import org.counterpull.heat.link.Link;
import org.counterpull.heat.link.Links;
import org.counterpull.heat.material.HeatMaterials;
import org.counterpull.heat.material.ThermalMaterial;
import org.counterpull.solid.Solid;
import org.counterpull.stock.Plate;
import org.counterpull.stock.RoundBar;
import org.counterpull.stock.RoundTube;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.PartMetal;

/** Lays one part out in blocks. */
final class PartBlocks {
  private static final double DRAWN_MM = 1e-6;
  private static final int LEAST_SECTORS = 12;

  private final Part part;
  private final Spots spots;
  private final Resolution resolution;
  private final ThermalMaterial material;
  private final List<PartBlock> blocks = new ArrayList<>();
  private final List<Link> joined = new ArrayList<>();

  private PartBlocks(Part part, Spots weldmentSpots, Resolution resolution) {
    this.part = part;
    this.spots = weldmentSpots.in(part.frame());
    this.resolution = resolution;
    this.material =
        part.steel()
            .constants()
            .map(
                c ->
                    ThermalMaterial.constant(
                        part.name() + ", constant",
                        c.conductivityWPerMK(),
                        c.densityKgPerM3(),
                        c.specificHeatJPerKgK()))
            .orElseGet(() -> HeatMaterials.of(PartMetal.of(part)));
  }

  /** The blocks of a part, with fine cells where arcs pass. */
  static PartBlocks of(Part part, Spots spots, Resolution resolution) {
    PartBlocks made = new PartBlocks(part, spots, resolution);
    if (!part.outline().isEmpty()) {
      made.outlined();
    } else if (part.stock() instanceof RoundBar bar) {
      made.round(0, bar.diameterMm() / 2);
    } else if (part.stock() instanceof RoundTube tube) {
      made.round(tube.insideMm() / 2, tube.outsideMm() / 2);
    } else {
      made.straight();
    }
    return made;
  }

  List<PartBlock> blocks() {
    return blocks;
  }

  /** What makes them one piece. */
  List<Link> joined() {
    return joined;
  }

  private double[] edges(Spots near, int axis, double from, double to, double coarsestMm) {
    double fine = near.allAlong(axis) ? resolution.alongMm() : resolution.acrossMm();
    double coarse = Math.max(fine, Math.min(resolution.coarseMm(), coarsestMm));
    return Grading.graded(from, to, near.zones(axis), fine, resolution.growth(), coarse);
  }

  private void outlined() {
    double half = ((Plate) part.stock()).thicknessMm() / 2;
    double[][] corners =
        part.outline().stream()
            .map(c -> new double[] {c.getX(), c.getY()})
            .toArray(double[][]::new);
    double[] low = {Double.MAX_VALUE, Double.MAX_VALUE, -half};
    double[] high = {-Double.MAX_VALUE, -Double.MAX_VALUE, half};
    for (double[] corner : corners) {
      for (int d = 0; d < 2; d++) {
        low[d] = Math.min(low[d], corner[d]);
        high[d] = Math.max(high[d], corner[d]);
      }
    }
    Spots near = spots.near(low, high);
    double[][] e = new double[3][];
    for (int d = 0; d < 3; d++) {
      e[d] = edges(near, d, low[d], high[d], high[d] - low[d]);
    }
    CartesianGrid grid = new CartesianGrid(e[0], e[1], e[2], new Outline(corners));
    Block block = new Block(part.name(), material, Axes.of(part), grid);
    blocks.add(PartBlock.flat(part, block, new Wall("", low[1], high[1], -half, half, none())));
  }

  private static java.util.Optional<Side> none() {
    return java.util.Optional.empty();
  }

  /** Ends that are cut at a slant are square at mid-length. */
  private double[] ends() {
    Solid solid = Solid.of(part);
    return new double[] {solid.fromMm(), solid.toMm()};
  }

  private void straight() {
    List<Wall> walls = Wall.of(part.stock());
    double[] ends = ends();
    Spots whole =
        spots.near(
            new double[] {ends[0], -part.stock().acrossMm() / 2, -part.stock().upMm() / 2},
            new double[] {ends[1], part.stock().acrossMm() / 2, part.stock().upMm() / 2});
    List<double[]> pieces = pieces(edges(whole, 0, ends[0], ends[1], ends[1] - ends[0]));
    List<Block> before = List.of();
    for (int n = 0; n < pieces.size(); n++) {
      double[] x = pieces.get(n);
      List<Block> here = new ArrayList<>();
      for (Wall wall : walls) {
        here.add(wall(wall, x, walls.size() > 1 || pieces.size() > 1 ? label(wall, n) : ""));
      }
      for (int i = 0; i < walls.size(); i++) {
        for (int j = 0; j < walls.size(); j++) {
          if (walls.get(i).carries(walls.get(j))) {
            joined.add(Links.joined(here.get(i), Side.Z_HIGH, here.get(j), Side.Z_LOW, DRAWN_MM));
          }
        }
      }
      joinEnds(before, Side.X_HIGH, here, Side.X_LOW);
      before = here;
    }
  }

  private void joinEnds(List<Block> before, Side high, List<Block> here, Side low) {
    for (int i = 0; i < before.size(); i++) {
      joined.add(Links.joined(before.get(i), high, here.get(i), low, DRAWN_MM));
    }
  }

  private String label(Wall wall, int piece) {
    return (wall.name().isEmpty() ? "" : " " + wall.name()) + " " + (piece + 1);
  }

  private Block wall(Wall wall, double[] x, String label) {
    double[] low = {x[0], wall.lowYMm(), wall.lowZMm()};
    double[] high = {x[x.length - 1], wall.highYMm(), wall.highZMm()};
    Spots near = spots.near(low, high);
    CartesianGrid grid =
        new CartesianGrid(
            x,
            edges(near, 1, low[1], high[1], high[1] - low[1]),
            edges(near, 2, low[2], high[2], high[2] - low[2]));
    Block block = new Block(part.name() + label, material, Axes.of(part), grid);
    blocks.add(PartBlock.flat(part, block, wall));
    return block;
  }

  /** Edges cut into lengths at cell borders. */
  private static List<double[]> pieces(double[] edges) {
    double length = edges[edges.length - 1] - edges[0];
    int count = (int) Math.max(1, Math.round(length / Bench.value("block length")));
    List<double[]> pieces = new ArrayList<>();
    int from = 0;
    for (int n = 1; n <= count; n++) {
      double target = edges[0] + length * n / count;
      int to = from + 1;
      while (to < edges.length - 1 && edges[to] < target - 1e-9) {
        to++;
      }
      if (n == count) {
        to = edges.length - 1;
      }
      if (to > from) {
        pieces.add(java.util.Arrays.copyOfRange(edges, from, to + 1));
      }
      from = to;
      if (from >= edges.length - 1) {
        break;
      }
    }
    return pieces;
  }

  private void round(double insideMm, double outsideMm) {
    double[] ends = ends();
    double turn = 2 * Math.PI * outsideMm;
    Spots all = spots.round(outsideMm).repeated(2, turn);
    double[] low = {ends[0], insideMm, -turn / 2};
    double[] high = {ends[1], outsideMm, turn / 2};
    List<double[]> pieces =
        pieces(edges(all.near(low, high), 0, ends[0], ends[1], ends[1] - ends[0]));
    Block before = null;
    for (int n = 0; n < pieces.size(); n++) {
      double[] z = pieces.get(n);
      low[0] = z[0];
      high[0] = z[z.length - 1];
      Spots near = all.near(low, high);
      double[] around = edges(near, 2, low[2], high[2], turn / LEAST_SECTORS);
      double[] angles = new double[around.length];
      for (int i = 0; i < around.length; i++) {
        angles[i] = 2 * Math.PI * (i == around.length - 1 ? 0.5 : around[i] / turn);
      }
      CylinderGrid grid = new CylinderGrid(radii(near, insideMm, outsideMm), angles, z);
      String label = pieces.size() > 1 ? " " + (n + 1) : "";
      Block block = new Block(part.name() + label, material, Axes.ofRound(part), grid);
      blocks.add(PartBlock.round(part, block, outsideMm));
      if (before != null) {
        joinEnds(List.of(before), Side.Z_HIGH, List.of(block), Side.Z_LOW);
      }
      before = block;
    }
  }

  private double[] radii(Spots near, double insideMm, double outsideMm) {
    if (insideMm > 0) {
      return edges(near, 1, insideMm, outsideMm, outsideMm - insideMm);
    }
    double core = outsideMm / 3;
    double[] rings = edges(near, 1, core, outsideMm, outsideMm / 3);
    double[] radii = new double[rings.length + 1];
    System.arraycopy(rings, 0, radii, 1, rings.length);
    return radii;
  }
}
