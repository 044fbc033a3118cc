package org.counterpull.heat.solve;

import org.counterpull.heat.block.Block;
import org.counterpull.heat.block.Grid;

/**
 * A block that is stepped on wider cells while its temperature is smooth.
 *
 * <p>Its own cells are kept: in each wide cell they follow a straight line between its neighbours,
 * shifted so that the heat of the wide cell is theirs exactly.
 */
final class RestingBlock {
  private final BlockField fine;
  private final BlockField wide;
  private final WiderCells cells;
  private final double[] metalMm3;
  private final double[] heldJ;
  private final double[] heat;
  private final double[][] slope = new double[3][];
  private final double[] line;

  RestingBlock(BlockField fine, WiderCells cells) {
    this.fine = fine;
    this.cells = cells;
    this.wide = new BlockField(cells.wide(), fine.surface().on(cells), 0);
    int size = cells.wide().size();
    this.metalMm3 = new double[size];
    this.heldJ = new double[size];
    this.heat = new double[size];
    this.line = new double[fine.block().size()];
    for (int d = 0; d < 3; d++) {
      slope[d] = new double[size];
    }
    double[] volume = fine.block().volumeMm3();
    for (int p = fine.block().first(), end = fine.block().end(); p < end; p++) {
      metalMm3[cells.parent(p)] += volume[p];
    }
  }

  /** The block in its own cells. */
  BlockField fine() {
    return fine;
  }

  /** The block in wide cells. */
  BlockField wide() {
    return wide;
  }

  WiderCells cells() {
    return cells;
  }

  /** Takes the means of the present state. */
  private void takeMeans() {
    sum(fine.now(), heldJ);
    for (int q = 0; q < heldJ.length; q++) {
      wide.now()[q] = metalMm3[q] > 0 ? heldJ[q] / metalMm3[q] : 0;
      heat[q] = wide.now()[q];
    }
  }

  private void sum(double[] values, double[] into) {
    java.util.Arrays.fill(into, 0);
    double[] volume = fine.block().volumeMm3();
    for (int p = fine.block().first(), end = fine.block().end(); p < end; p++) {
      into[cells.parent(p)] += volume[p] * values[p];
    }
  }

  /** Begins to rest if the present state is smooth. */
  boolean begin(double evenK, double bentK) {
    takeMeans();
    if (bentK() > bentK) {
      return false;
    }
    lines();
    double most = 0;
    double[] volume = fine.block().volumeMm3();
    for (int p = fine.block().first(), end = fine.block().end(); p < end; p++) {
      most = volume[p] > 0 ? Math.max(most, Math.abs(line[p] - fine.now()[p])) : most;
    }
    if (most * fine.material().greatestKPerJMm3() > evenK) {
      return false;
    }
    wide.rateOf(fine);
    return true;
  }

  /** Lets the block's own cells follow the wide ones. */
  void follow() {
    double[] wideVolume = cells.wide().volumeMm3();
    double[] now = wide.now();
    for (int q = 0; q < heat.length; q++) {
      // What a cut cell leaves out of a sliver of metal is made up for, so that the sums agree.
      heldJ[q] += (now[q] - heat[q]) * wideVolume[q];
      heat[q] = now[q];
    }
    lines();
    double[] own = fine.now();
    double[] peak = fine.peak();
    for (int p = fine.block().first(), end = fine.block().end(); p < end; p++) {
      own[p] = line[p];
      peak[p] = Math.max(peak[p], own[p]);
    }
  }

  /** Straight lines between wide cells, at the block's own cells, with the heat that is held. */
  private void lines() {
    for (int d = 0; d < 3; d++) {
      slopes(d);
    }
    Grid grid = fine.block().grid();
    Block of = fine.block();
    int p = of.first();
    for (int k = 0; k < grid.nz(); k++) {
      for (int j = 0; j < grid.ny(); j++) {
        for (int i = 0; i < grid.nx(); i++, p++) {
          int q = cells.parent(p);
          line[p] =
              heat[q]
                  + slope[0][q] * off(0, i, q)
                  + slope[1][q] * off(1, j, q)
                  + slope[2][q] * off(2, k, q);
        }
      }
    }
    double[] sums = new double[heldJ.length];
    sum(line, sums);
    double[] volume = of.volumeMm3();
    for (int n = of.first(), end = of.end(); n < end; n++) {
      int q = cells.parent(n);
      line[n] = volume[n] > 0 ? line[n] + (heldJ[q] - sums[q]) / metalMm3[q] : 0;
    }
  }

  /** How far a cell's middle lies from that of its wide cell. */
  private double off(int axis, int i, int q) {
    return cells.middles(axis, false)[i] - cells.middles(axis, true)[at(axis, q)];
  }

  private int at(int axis, int q) {
    Grid grid = cells.wide().grid();
    int n = q - cells.wide().first();
    return switch (axis) {
      case 0 -> n % grid.nx();
      case 1 -> n / grid.nx() % grid.ny();
      default -> n / (grid.nx() * grid.ny());
    };
  }

  private void slopes(int axis) {
    double[] middles = cells.middles(axis, true);
    double[] shape = cells.wide().shapeMm(axis);
    int stride = cells.wide().strides()[axis];
    for (int q = cells.wide().first(), end = cells.wide().end(); q < end; q++) {
      int i = at(axis, q);
      double up = shape[q] > 0 ? (heat[q + stride] - heat[q]) / (middles[i + 1] - middles[i]) : 0;
      double down =
          shape[q - stride] > 0 ? (heat[q] - heat[q - stride]) / (middles[i] - middles[i - 1]) : 0;
      slope[axis][q] = 0.5 * (up + down);
    }
  }

  /** Largest bend between wide cells that are neighbours, level at the faces, K. */
  double bentK() {
    double most = 0;
    double[] now = wide.now();
    for (int d = 0; d < 3; d++) {
      double[] shape = cells.wide().shapeMm(d);
      int stride = cells.wide().strides()[d];
      for (int q = cells.wide().first(), end = cells.wide().end(); q < end; q++) {
        double up = shape[q] > 0 ? now[q + stride] - now[q] : 0;
        double down = shape[q - stride] > 0 ? now[q] - now[q - stride] : 0;
        most = Math.max(most, Math.abs(up - down));
      }
    }
    return most * fine.material().greatestKPerJMm3();
  }
}
