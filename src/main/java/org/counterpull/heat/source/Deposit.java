package org.counterpull.heat.source;

import java.util.ArrayList;
import java.util.List;
import org.counterpull.heat.block.Block;
import org.counterpull.heat.block.Frame;
import org.counterpull.heat.block.Grid;
import org.counterpull.heat.block.Vec3;

/** Shares the energy of an arc between two times over the cells that it meets. */
public final class Deposit {
  private static final int MOST_SAMPLES = 5;

  private final List<Block> blocks;
  private final MovingSource source;

  /**
   * Energy that goes into one cell.
   *
   * @param block index of the block in the list that was given
   * @param cell number of the cell in it
   * @param energyJ the energy
   */
  public record Share(int block, int cell, double energyJ) {}

  private Deposit(List<Block> blocks, MovingSource source) {
    this.blocks = blocks;
    this.source = source;
  }

  /**
   * The shares between two times; their sum is the source's energy between these times.
   *
   * @throws IllegalArgumentException when the source meets no metal
   */
  public static List<Share> between(
      List<Block> blocks, MovingSource source, double fromS, double toS) {
    return new Deposit(blocks, source).shares(fromS, toS);
  }

  /** Whether an arc comes within its reach of a block between two times. */
  public static boolean meets(Block block, MovingSource source, double fromS, double toS) {
    return near(block, source, fromS, toS, 0);
  }

  /** Whether an arc's reach comes as near to a block as that between two times. */
  public static boolean near(
      Block block, MovingSource source, double fromS, double toS, double apartMm) {
    for (TravelPath.Stretch stretch : source.stretches(fromS, toS)) {
      double reach = radius(stretch, source.shape()) + apartMm;
      if (block.distanceMm(middle(stretch)) <= reach) {
        return true;
      }
    }
    return false;
  }

  private List<Share> shares(double fromS, double toS) {
    List<Share> all = new ArrayList<>();
    List<TravelPath.Stretch> stretches = source.stretches(fromS, toS);
    double length = stretches.stream().mapToDouble(TravelPath.Stretch::lengthMm).sum();
    double energy = source.energyJ(fromS, toS);
    for (TravelPath.Stretch stretch : stretches) {
      double part = length > 0 ? stretch.lengthMm() / length : 1;
      all.addAll(normalised(weights(stretch), energy * part, fromS));
    }
    return all;
  }

  private List<Share> normalised(List<Share> weights, double energyJ, double fromS) {
    double sum = 0;
    for (Share share : weights) {
      sum += share.energyJ();
    }
    if (!(sum > 0)) {
      throw new IllegalArgumentException(
          "the arc of " + source.name() + " meets no metal at " + fromS + " s");
    }
    List<Share> shares = new ArrayList<>(weights.size());
    for (Share share : weights) {
      shares.add(new Share(share.block(), share.cell(), share.energyJ() / sum * energyJ));
    }
    return shares;
  }

  private List<Share> weights(TravelPath.Stretch stretch) {
    List<Share> weights = new ArrayList<>();
    for (int b = 0; b < blocks.size(); b++) {
      if (within(blocks.get(b), stretch, source.shape())) {
        addWeights(weights, b, stretch);
      }
    }
    return weights;
  }

  private static boolean within(Block block, TravelPath.Stretch stretch, SourceShape shape) {
    return block.distanceMm(middle(stretch)) <= radius(stretch, shape);
  }

  private static Vec3 middle(TravelPath.Stretch stretch) {
    return stretch.from().plus(stretch.along().times(0.5 * stretch.lengthMm()));
  }

  private static double radius(TravelPath.Stretch stretch, SourceShape shape) {
    return Math.hypot(0.5 * stretch.lengthMm() + shape.reachAlongMm(), shape.reachAcrossMm());
  }

  private void addWeights(List<Share> weights, int b, TravelPath.Stretch stretch) {
    Block block = blocks.get(b);
    Frame frame = block.frame();
    Grid grid = block.grid();
    Local local =
        new Local(
            frame.toLocal(stretch.from()),
            frame.directionToLocal(stretch.along()),
            frame.directionToLocal(stretch.into()),
            stretch.lengthMm(),
            source.shape());
    int[] near = grid.near(frame.toLocal(middle(stretch)), radius(stretch, source.shape()));
    for (int k = near[4]; k <= near[5]; k++) {
      for (int j = near[2]; j <= near[3]; j++) {
        for (int i = near[0]; i <= near[1]; i++) {
          if (grid.solid(i, j, k) && local.near(grid, i, j, k)) {
            double mean = mean(grid, i, j, k, local);
            if (mean > 0) {
              double weight = mean * grid.volumeMm3(i, j, k);
              weights.add(new Share(b, block.first() + grid.cell(i, j, k), weight));
            }
          }
        }
      }
    }
  }

  /** Mean density over a cell, by midpoints of a regular split. */
  private double mean(Grid grid, int i, int j, int k, Local local) {
    double wanted = source.shape().detailMm() / 4;
    int nu = samples(grid, i, j, k, 0, wanted);
    int nv = samples(grid, i, j, k, 1, wanted);
    int nw = samples(grid, i, j, k, 2, wanted);
    double sum = 0;
    for (int c = 0; c < nw; c++) {
      for (int b = 0; b < nv; b++) {
        for (int a = 0; a < nu; a++) {
          sum +=
              local.density(grid.pointIn(i, j, k, (a + 0.5) / nu, (b + 0.5) / nv, (c + 0.5) / nw));
        }
      }
    }
    return sum / (nu * nv * nw);
  }

  private static int samples(Grid grid, int i, int j, int k, int direction, double wantedMm) {
    Vec3 low = grid.pointIn(i, j, k, 0, 0, 0);
    Vec3 high =
        grid.pointIn(
            i, j, k, direction == 0 ? 1 : 0, direction == 1 ? 1 : 0, direction == 2 ? 1 : 0);
    double size = high.minus(low).norm();
    return (int) Math.max(2, Math.min(MOST_SAMPLES, Math.ceil(size / wantedMm)));
  }

  /** A stretch in a block's own coordinates. */
  private record Local(Vec3 from, Vec3 along, Vec3 into, double lengthMm, SourceShape shape) {

    /** Whether the source may reach into a cell. */
    boolean near(Grid grid, int i, int j, int k) {
      Vec3 middle = grid.pointIn(i, j, k, 0.5, 0.5, 0.5);
      Vec3 corner = grid.pointIn(i, j, k, 0, 0, 0);
      double half = corner.minus(middle).norm();
      Vec3 rel = middle.minus(from);
      double x = rel.dot(along);
      double off = rel.minus(along.times(x)).norm();
      return off <= shape.reachAcrossMm() + half
          && x >= -shape.reachAlongMm() - half
          && x <= lengthMm + shape.reachAlongMm() + half;
    }

    double density(Vec3 at) {
      Vec3 rel = at.minus(from);
      double in = rel.dot(into);
      double side = rel.dot(along.cross(into));
      double plane = shape.across(side, in);
      if (plane == 0) {
        return 0;
      }
      double x = rel.dot(along);
      // While the source travels the stretch, a place sees it from x ahead to x - length behind.
      double line =
          lengthMm > 0
              ? (shape.shareBehind(x) - shape.shareBehind(x - lengthMm)) / lengthMm
              : shape.alongPerMm(x);
      return plane * line;
    }
  }
}
