package org.counterpull.heat.solve;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.counterpull.heat.block.Block;
import org.counterpull.heat.block.Coarser;
import org.counterpull.heat.block.Patch;
import org.counterpull.heat.block.Side;
import org.counterpull.heat.link.Link;
import org.counterpull.heat.link.Pair;

/**
 * A block with its cells put together, and what belongs to a cell of the one in terms of the other.
 */
final class WiderCells {
  private final Block fine;
  private final Block wide;
  private final Coarser coarser;
  private final int[] parent;
  private final Map<Place, Patch> patches = new HashMap<>();

  private record Place(int cell, Side side) {}

  WiderCells(Block fine, double widestMm) {
    this.fine = fine;
    this.coarser = fine.grid().coarser(widestMm);
    this.wide = new Block(fine.name(), fine.material(), fine.frame(), coarser.grid());
    this.parent = coarser.parent();
    for (int n = 0; n < parent.length; n++) {
      parent[n] += wide.first();
    }
    for (Patch patch : wide.patches()) {
      patches.putIfAbsent(new Place(patch.cell(), patch.side()), patch);
    }
  }

  /** The block in wide cells. */
  Block wide() {
    return wide;
  }

  /** The wide cell that holds a cell. */
  int parent(int cell) {
    return parent[cell - fine.first()];
  }

  /** Middles of cells along an axis; of the block's own or of the wide ones. */
  double[] middles(int axis, boolean ofWide) {
    return ofWide ? coarser.widerMiddles()[axis] : coarser.middles()[axis];
  }

  /** Conduction length from the middle of the wide cell to a side of it. */
  double depthMm(int cell, Side side, double otherwiseMm) {
    Patch patch = patches.get(new Place(parent(cell), side));
    return patch == null ? otherwiseMm : patch.depthMm();
  }

  private Patch patch(Patch of) {
    int cell = parent(of.cell());
    Patch found = patches.get(new Place(cell, of.side()));
    return found != null
        ? found
        : new Patch(
            cell, of.side(), of.centre(), of.normal(), of.areaMm2(), of.depthMm(), of.corners());
  }

  /** The same link between wide cells where an end has them. */
  static Link link(Link link, Optional<WiderCells> a, Optional<WiderCells> b) {
    Map<List<Place>, Pair> pairs = new LinkedHashMap<>();
    for (Pair pair : link.pairs()) {
      Patch endA = a.map(w -> w.patch(pair.a())).orElse(pair.a());
      Patch endB = b.map(w -> w.patch(pair.b())).orElse(pair.b());
      List<Place> ends =
          List.of(new Place(endA.cell(), endA.side()), new Place(endB.cell(), endB.side()));
      Pair wide = new Pair(endA, endB, pair.areaMm2(), pair.distanceMm());
      pairs.merge(ends, wide, WiderCells::together);
    }
    return new Link(
        link.name(),
        a.map(w -> w.wide).orElse(link.a()),
        b.map(w -> w.wide).orElse(link.b()),
        link.law(),
        List.copyOf(pairs.values()),
        link.fromS());
  }

  private static Pair together(Pair one, Pair other) {
    double area = one.areaMm2() + other.areaMm2();
    double distance =
        (one.areaMm2() * one.distanceMm() + other.areaMm2() * other.distanceMm()) / area;
    return new Pair(one.a(), one.b(), area, distance);
  }
}
